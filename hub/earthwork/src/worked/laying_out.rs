//! Worked examples of layout: stakes, tapes, ties, diagonals, and lines that must not be crossed.

use super::inputs::Inputs;
use super::{Outputs, Quantity, outputs, refused, word, yes};
use crate::layout::no_cross::{self, line_text};
use crate::layout::square::{CornerMove, Diagonals, corner_degrees, squareness};
use crate::layout::stake::{OffsetHub, letter};
use crate::layout::step_window::{self, Forms};
use crate::layout::string::BatterString;
use crate::layout::tape::level_distance;
use crate::layout::tie::{self, Tape};
use crate::layout::width::{WidthRule, WidthVerdict, judge_width};
use words::Language;

/// What is lettered on an offset hub.
pub(super) fn offset_hub(inputs: &mut Inputs) -> Outputs {
    let station = if inputs.optional_text("station").is_some() {
        Some(inputs.station("station")?)
    } else {
        None
    };
    let lettered = letter(&OffsetHub {
        top: inputs.length("top")?,
        dig_to: inputs.length("dig_to")?,
        offset: inputs.length("offset")?,
        station,
    })
    .map_err(refused)?;
    let mut all = outputs([
        ("cut", Quantity::Length(lettered.cut)),
        ("offset", Quantity::Word(lettered.offset)),
        ("cut_or_fill", Quantity::Word(lettered.cut_or_fill)),
    ]);
    if let Some(station) = lettered.station {
        all.insert("station".into(), Quantity::Word(station));
    }
    Ok(all)
}

/// How far the dig lies below a string between two batter boards, and whether their heights agree.
pub(super) fn batter_string(inputs: &mut Inputs) -> Outputs {
    let string = BatterString {
        first: inputs.length("first_board")?,
        second: inputs.length("second_board")?,
        length: inputs.length("apart")?,
    };
    let along = inputs.length("along")?;
    let at = string.elevation(along).map_err(refused)?;
    let down = string
        .down_to(inputs.length("dig_to")?, along)
        .map_err(refused)?;
    Ok(outputs([
        ("string_at", Quantity::Length(at)),
        ("down", Quantity::Length(down)),
        ("boards_level", yes(string.check_level().is_ok())),
    ]))
}

/// A width from both edges' distances to the line of the run; the strict edge may not lie further out than drawn.
pub(super) fn width(inputs: &mut Inputs) -> Outputs {
    let (strict_edge, free_edge) = (inputs.length("strict_edge")?, inputs.length("free_edge")?);
    let judged = judge_width(
        strict_edge,
        free_edge,
        &WidthRule {
            least: inputs.length("least_width")?,
            strict: inputs.length("strict_drawn")?,
        },
    )
    .map_err(refused)?;
    let (says, by) = match judged {
        WidthVerdict::Enough { spare } => ("enough", spare),
        WidthVerdict::TooNarrow { by } => ("too_narrow", by),
        WidthVerdict::StrictEdgeOut { by } => ("strict_edge_out", by),
        WidthVerdict::TooWide { by } => ("too_wide", by),
    };
    Ok(outputs([
        ("width", Quantity::Length(strict_edge + free_edge)),
        ("says", Quantity::Word(says.to_owned())),
        ("by", Quantity::Length(by)),
    ]))
}

/// The level distance under a tape on a slope.
pub(super) fn slope_tape(inputs: &mut Inputs) -> Outputs {
    let level = level_distance(inputs.length("slope")?, inputs.length("rise")?).map_err(refused)?;
    Ok(outputs([("level", Quantity::Length(level))]))
}

/// Both places where two tapes meet.
pub(super) fn swing_tie(inputs: &mut Inputs) -> Outputs {
    let first = Tape {
        from: inputs.point("first")?,
        distance: inputs.length("first_tape")?,
    };
    let second = Tape {
        from: inputs.point("second")?,
        distance: inputs.length("second_tape")?,
    };
    let tie = tie::swing_tie(first, second).map_err(refused)?;
    Ok(outputs([
        ("left", Quantity::Lengths(vec![tie.left.x, tie.left.y])),
        ("right", Quantity::Lengths(vec![tie.right.x, tie.right.y])),
        ("angle_degrees", Quantity::Number(tie.angle_degrees)),
        ("weak", yes(tie.weak())),
    ]))
}

/// A rectangle by its diagonals.
pub(super) fn diagonals(inputs: &mut Inputs) -> Outputs {
    let square = squareness(&Diagonals {
        base: inputs.length("base")?,
        across: inputs.length("across")?,
        a_to_c: inputs.length("a_to_c")?,
        b_to_d: inputs.length("b_to_d")?,
    })
    .map_err(refused)?;
    let mut all = outputs([
        ("wanted", Quantity::Length(square.wanted)),
        ("skew_degrees", Quantity::Number(square.skew_degrees)),
        ("side_error", Quantity::Length(square.side_error)),
    ]);
    let (toward, by) = match square.moves {
        CornerMove::None => ("none", None),
        CornerMove::TowardA { by } => ("a", Some(by)),
        CornerMove::TowardB { by } => ("b", Some(by)),
    };
    all.insert("toward".into(), Quantity::Word(toward.into()));
    if let Some(by) = by {
        all.insert("move".into(), Quantity::Length(by));
    }
    Ok(all)
}

/// The angle of a corner from three tapes.
pub(super) fn corner(inputs: &mut Inputs) -> Outputs {
    let degrees = corner_degrees(
        inputs.length("one")?,
        inputs.length("other")?,
        inputs.length("between")?,
    )
    .map_err(refused)?;
    Ok(outputs([("degrees", Quantity::Number(degrees))]))
}

/// A distance from a no-cross line with its guard.
pub(super) fn no_cross_line(inputs: &mut Inputs) -> Outputs {
    let shot = no_cross::judge(inputs.length("distance")?, inputs.size("guard")?);
    Ok(outputs([
        ("standing", word(shot.standing)),
        ("told", Quantity::Word(line_text(&shot, Language::English))),
    ]))
}

/// Where a step may fall, with forms of these widths and as many as it takes.
pub(super) fn step_forms(inputs: &mut Inputs) -> Outputs {
    let forms: Vec<Forms> = inputs
        .lengths("widths")?
        .into_iter()
        .map(|width| Forms {
            width,
            at_hand: None,
        })
        .collect();
    let window = step_window::step_window(
        &forms,
        inputs.size("filler")?,
        inputs.size("drawn")?,
        inputs.size("allowed")?,
    )
    .map_err(refused)?;
    Ok(outputs([
        ("nearest", Quantity::Length(window.nearest.length)),
        ("off", Quantity::Length(window.off)),
        ("from", Quantity::Length(window.from)),
        ("to", Quantity::Length(window.to)),
    ]))
}

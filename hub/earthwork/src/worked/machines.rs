//! Worked examples of machines: two of them, the tail, the slope's line, the truck's side, lines overhead.

use super::inputs::Inputs;
use super::{Outputs, Quantity, outputs, refused, word, yes};
use crate::figure::Figure;
use crate::keep_out::{Reach, keep_out_radius};
use crate::length::Length;
use crate::machine;

fn reach(inputs: &mut Inputs, prefix: &str) -> Result<Reach, super::WorkedError> {
    let mut or_nothing = |name: &str| inputs.length_or(&format!("{prefix}{name}"), Length::ZERO);
    Reach {
        tail_radius: or_nothing("tail")?,
        track_width: or_nothing("width")?,
        reach_at_ground: inputs.length(&format!("{prefix}reach"))?,
    }
    .checked()
    .map_err(refused)
}

/// How near two machines can meet, and whether these do.
pub(super) fn two_machines(inputs: &mut Inputs) -> Outputs {
    let (one, other) = (reach(inputs, "")?, reach(inputs, "other_")?);
    let needs = machine::can_meet_within(&one, &other);
    let apart = inputs.size("apart")?;
    Ok(outputs([
        ("needs", Quantity::Length(needs)),
        ("can_meet", yes(apart < needs)),
    ]))
}

/// What a place is to a machine.
pub(super) fn machine_zone(inputs: &mut Inputs) -> Outputs {
    let reach = reach(inputs, "")?;
    let away = inputs.size("away")?;
    let zone = machine::zone(away, &reach, keep_out_radius(&reach));
    Ok(outputs([
        ("zone", zone.map_or(Quantity::Word("outside".into()), word)),
        (
            "tail_needs",
            Quantity::Length(machine::tail_needs(&reach, Length::ZERO)),
        ),
    ]))
}

/// How far a track stands inside of the slope's line.
pub(super) fn slope_line(inputs: &mut Inputs) -> Outputs {
    let inside = machine::inside_slope_line(
        inputs.length("away")?,
        inputs.size("width")?,
        inputs.size("height")?,
        inputs.figure("run_per_rise", Figure::Slope)?,
    );
    Ok(outputs([
        ("inside", Quantity::Length(inside)),
        ("stands_inside", yes(inside > Length::ZERO)),
    ]))
}

/// Whether a bucket goes over a truck's side.
pub(super) fn truck_side(inputs: &mut Inputs) -> Outputs {
    let over = machine::loads_over(inputs.size("dump_height")?, inputs.size("side")?);
    Ok(outputs([("loads_over", yes(over))]))
}

/// How far to stay from a line overhead, and whether somebody spots for the machine.
pub(super) fn overhead_line(inputs: &mut Inputs) -> Outputs {
    // Whoever asks says that nobody knows the voltage; leaving it out is no answer.
    let kilovolts = match inputs.text("kilovolts")? {
        "unknown" => None,
        _ => Some(inputs.figure("kilovolts", Figure::Kilovolts)?),
    };
    let clearance = machine::overhead_clearance(kilovolts);
    let mut all = outputs([(
        "clearance",
        clearance.map_or(Quantity::Word("ask_the_owner".into()), Quantity::Length),
    )]);
    if inputs.optional_text("away").is_some() {
        let boom = match inputs.optional_text("boom") {
            Some(_) => Some(inputs.size("boom")?),
            None => None,
        };
        let line = machine::Overhead {
            away: inputs.size("away")?,
            height: inputs.size("height")?,
            clearance: clearance.unwrap_or(Length::ZERO),
        };
        let needs = machine::needs_spotter(&reach(inputs, "")?, boom, line);
        all.insert("spotter".into(), yes(needs));
    }
    Ok(all)
}

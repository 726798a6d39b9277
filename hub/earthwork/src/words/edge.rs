//! What the screen says about an edge against a line that must not be crossed: LINE and what is left to it.

use words::Text;
use words::call::unit;
use words::line;

use super::{CallText, Language, ScreenUnit};
use crate::layout::no_cross::{LineShot, Standing, line_text};
use crate::length::{Form, INCH, Length, METRE, mixed};

/// The words of an edge reading. What is left has every doubt taken off and is rounded down, in every unit.
pub fn edge_text(shot: &LineShot, language: Language, unit: ScreenUnit) -> CallText {
    let left = (shot.distance - shot.guard).max(Length::ZERO);
    let steps = |step: i64| (left.tenth_micrometres() / step).unsigned_abs();
    let (amount, unit_word) = match unit {
        ScreenUnit::Tenths => (halves(shot.half_tenths), unit::tenths()),
        ScreenUnit::FeetInches => (mixed(steps(INCH / 8), 8), unit::inches()),
        ScreenUnit::Millimetres => (steps(METRE / 1000).to_string(), unit::millimetres()),
    };
    let open = matches!(shot.standing, Standing::Near | Standing::Ok);
    let said = if open && unit != ScreenUnit::Tenths {
        format!(
            "{} {amount} {}",
            line::word().of(language),
            unit_word.of(language)
        )
    } else {
        line_text(shot, language)
    };
    let warning = match shot.standing {
        Standing::Crossed => line::warning::crossed().of(language),
        Standing::Touch => line::warning::touched().of(language),
        Standing::Near | Standing::Ok => "",
    };
    CallText {
        language,
        unit,
        word: line::word().of(language).to_owned(),
        amount: if open { amount } else { String::new() },
        unit_word: if open {
            unit_word.of(language).to_owned()
        } else {
            String::new()
        },
        warning: warning.to_owned(),
        exact: exact(shot).take(language),
        spoken: said.to_lowercase(),
        line: said,
    }
}

fn halves(half_tenths: u32) -> String {
    let half = if half_tenths % 2 == 1 { "½" } else { "" };
    match (half_tenths / 2, half) {
        (0, "½") => "½".to_owned(),
        (whole, half) => format!("{whole}{half}"),
    }
}

/// What was taped, and the doubt that was taken off.
fn exact(shot: &LineShot) -> Text {
    let feet = shot.distance.abs().show(Form::DecimalFeet { places: 2 });
    let doubt = shot.guard.show(Form::DecimalFeet { places: 3 });
    if shot.distance < Length::ZERO {
        line::over(&feet, &doubt)
    } else {
        line::inside(&feet, &doubt)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::layout::no_cross::judge;

    fn shot(hundredths: i64) -> LineShot {
        // Derived from √3 · 0.02 ft, three doubts alike: 0.0346 ft.
        judge(
            Length::from_hundredths_of_a_foot(hundredths),
            Length::from_thousandths_of_a_foot(35),
        )
    }

    #[test]
    fn what_is_left_is_rounded_down_in_every_unit() {
        // Invented, demo: 0.30 ft taped, 0.265 ft left = 3.18 in = 80.77 mm.
        let text = |unit| edge_text(&shot(30), Language::English, unit);
        let tenths = text(ScreenUnit::Tenths);
        assert_eq!(
            (tenths.line.as_str(), tenths.amount.as_str()),
            ("LINE 2½", "2½")
        );
        assert_eq!(tenths.exact, "0.30 ft inside ± 0.035 ft");
        assert_eq!(text(ScreenUnit::FeetInches).line, "LINE 3 1/8 IN");
        assert_eq!(text(ScreenUnit::Millimetres).line, "LINE 80 MM");
    }

    #[test]
    fn touched_and_crossed_show_no_number() {
        for hundredths in [3, 0, -3, -4, -50] {
            let text = edge_text(&shot(hundredths), Language::Spanish, ScreenUnit::Tenths);
            assert!(
                text.amount.is_empty() && !text.warning.is_empty(),
                "{hundredths}"
            );
        }
    }
}

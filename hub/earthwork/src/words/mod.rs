//! What the screen says: a correction in words, figures and speech, in English and Spanish.
//!
//! One function writes word, amount, line and speech together, so that they can't disagree. No word stands
//! for two things in either language, and a number stands only where somebody is to act on it.

mod edge;
mod errors;
mod spoken;

pub use edge::edge_text;

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::correction::{Amount, Correction};
use crate::length::{Form, INCH, Length, METRE, mixed};

/// A language that a screen speaks.
#[derive(
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish.
    Spanish,
}

/// What a screen counts in.
#[derive(
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum ScreenUnit {
    /// Tenths of a foot, in halves; feet from a foot on.
    #[default]
    Tenths,
    /// Feet, inches and eighths.
    FeetInches,
    /// Millimetres.
    Millimetres,
}

/// Everything a screen shows for one call.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct CallText {
    /// The language.
    pub language: Language,
    /// What it counts in.
    pub unit: ScreenUnit,
    /// The word: `DOWN`.
    pub word: String,
    /// The amount: `3½`; empty when there is none.
    pub amount: String,
    /// What the amount counts, `TENTHS`, or `BY EYE` on a quick call; empty when there is none.
    pub unit_word: String,
    /// As large as the word: `TOO DEEP – DON'T FILL`; empty when there is none.
    pub warning: String,
    /// The exact amount in all units, the reader's first: `0.34 ft = 4 1/8 in = 104 mm`.
    pub exact: String,
    /// What a voice says.
    pub spoken: String,
    /// One line for the log and for lists: `DOWN 3½`.
    pub line: String,
}

/// A call without a number.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum QuickWord {
    /// Go on digging.
    More,
    /// Go on a little.
    ALittle,
    /// Stop digging here: it looks right.
    There,
    /// It looks too deep.
    TooDeep,
    /// Bring the machine to me.
    ComeToMe,
    /// Look where I point.
    LookHere,
}

/// How much is shown, in one unit and never nothing.
#[derive(Clone, Copy, Debug)]
enum Shown {
    HalfTenths(u64),
    TenthsOfFeet(u64),
    EighthsOfInches(u64),
    Millimetres(u64),
}

/// The words of a correction. `dev_minus_aim` is the amount in full (measured − target − aim), from which the
/// exact line, inches and millimetres are written; they are never shown as 0 for HIGH or LOW.
pub fn call_text(
    correction: &Correction,
    dev_minus_aim: Length,
    language: Language,
    unit: ScreenUnit,
) -> CallText {
    let (told, amount) = match correction {
        Correction::Down(amount) | Correction::Shave(amount) => (dev_minus_aim, Some(*amount)),
        Correction::Up(amount) => (-dev_minus_aim, Some(*amount)),
        Correction::Grade | Correction::Wait => (Length::ZERO, None),
    };
    let shown = amount.map(|amount| shown(amount, told, unit));
    let word = word(correction, language);
    let (amount, unit_word) = shown.map_or_else(Default::default, |shown| figures(shown, language));
    let tenths = matches!(shown, Some(Shown::HalfTenths(_)));
    let parts = [word, &amount, if tenths { "" } else { unit_word }];
    CallText {
        language,
        unit,
        word: word.to_owned(),
        line: parts
            .iter()
            .filter(|part| !part.is_empty())
            .copied()
            .collect::<Vec<_>>()
            .join(" "),
        amount,
        unit_word: unit_word.to_owned(),
        warning: warning(correction, language).to_owned(),
        exact: shown.map_or_else(String::new, |_| exact(told, unit)),
        spoken: spoken::call(correction, shown, language),
    }
}

/// The words of a call without a number, marked BY EYE where they say something about the ground.
pub fn quick_text(word: QuickWord, language: Language) -> CallText {
    use Language::{English, Spanish};
    let (text, by_eye) = match (word, language) {
        (QuickWord::More, English) => ("MORE", true),
        (QuickWord::More, Spanish) => ("MÁS", true),
        (QuickWord::ALittle, English) => ("A LITTLE", true),
        (QuickWord::ALittle, Spanish) => ("UN POCO", true),
        (QuickWord::There, English) => ("THERE", true),
        (QuickWord::There, Spanish) => ("AHÍ", true),
        (QuickWord::TooDeep, English) => ("LOOKS TOO DEEP", true),
        (QuickWord::TooDeep, Spanish) => ("SE VE MUY HONDO", true),
        (QuickWord::ComeToMe, English) => ("COME TO ME", false),
        (QuickWord::ComeToMe, Spanish) => ("VENGA ACÁ", false),
        (QuickWord::LookHere, English) => ("LOOK HERE", false),
        (QuickWord::LookHere, Spanish) => ("MIRE AQUÍ", false),
    };
    let mark = match (by_eye, language) {
        (false, _) => "",
        (true, English) => "BY EYE",
        (true, Spanish) => "A OJO",
    };
    CallText {
        language,
        unit: ScreenUnit::Tenths,
        word: text.to_owned(),
        amount: String::new(),
        unit_word: mark.to_owned(),
        warning: String::new(),
        exact: String::new(),
        spoken: [text, mark].join(" ").trim().to_lowercase(),
        line: [text, mark].join(" ").trim().to_owned(),
    }
}

fn word(correction: &Correction, language: Language) -> &'static str {
    match (correction, language) {
        (Correction::Down(_), Language::English) => "DOWN",
        (Correction::Down(_), Language::Spanish) => "BAJE",
        (Correction::Shave(_), Language::English) => "SHAVE",
        (Correction::Shave(_), Language::Spanish) => "RASPE",
        (Correction::Grade, Language::English) => "GRADE",
        (Correction::Grade, Language::Spanish) => "A NIVEL",
        (Correction::Up(_), Language::English) => "UP",
        (Correction::Up(_), Language::Spanish) => "SUBA",
        (Correction::Wait, Language::English) => "WAIT",
        (Correction::Wait, Language::Spanish) => "ESPERE",
    }
}

fn warning(correction: &Correction, language: Language) -> &'static str {
    match (correction, language) {
        (Correction::Up(_), Language::English) => "TOO DEEP – DON'T FILL",
        (Correction::Up(_), Language::Spanish) => "MUY HONDO – NO RELLENE",
        _ => "",
    }
}

fn shown(amount: Amount, told: Length, unit: ScreenUnit) -> Shown {
    match unit {
        ScreenUnit::Tenths => match amount {
            Amount::HalfTenths(halves) => Shown::HalfTenths(u64::from(halves)),
            Amount::TenthsOfFeet(tenths) => Shown::TenthsOfFeet(u64::from(tenths)),
        },
        ScreenUnit::FeetInches => Shown::EighthsOfInches(steps(told, INCH / 8)),
        ScreenUnit::Millimetres => Shown::Millimetres(steps(told, METRE / 1000)),
    }
}

/// The nearest number of steps, at least one.
fn steps(told: Length, step: i64) -> u64 {
    let counts = told.tenth_micrometres().max(0).unsigned_abs();
    let step = step.unsigned_abs();
    ((counts + step / 2) / step).max(1)
}

/// The amount as it is printed, and the word for what it counts.
fn figures(shown: Shown, language: Language) -> (String, &'static str) {
    let spanish = language == Language::Spanish;
    match shown {
        Shown::HalfTenths(halves) => (halved(halves), if spanish { "DÉCIMAS" } else { "TENTHS" }),
        Shown::TenthsOfFeet(tenths) => (
            format!("{}.{}", tenths / 10, tenths % 10),
            if spanish { "PIES" } else { "FEET" },
        ),
        Shown::EighthsOfInches(eighths) => {
            let (feet, inches) = (eighths / 96, mixed(eighths % 96, 8));
            let amount = match (feet, spanish) {
                (0, _) => inches,
                (feet, false) => format!("{feet} FT {inches}"),
                (1, true) => format!("1 PIE {inches}"),
                (feet, true) => format!("{feet} PIES {inches}"),
            };
            (amount, if spanish { "PULG" } else { "IN" })
        }
        Shown::Millimetres(millimetres) => (millimetres.to_string(), "MM"),
    }
}

/// `3½` for seven halves.
fn halved(halves: u64) -> String {
    let half = if halves % 2 == 1 { "½" } else { "" };
    match halves / 2 {
        0 => half.to_owned(),
        whole => format!("{whole}{half}"),
    }
}

/// The amount in feet, inches and millimetres, the reader's own first; never nothing.
fn exact(told: Length, unit: ScreenUnit) -> String {
    let at_least = |step: i64| told.max(Length::from_tenth_micrometres(step));
    let feet = at_least(Length::from_hundredths_of_a_foot(1).tenth_micrometres())
        .show(Form::DecimalFeet { places: 2 });
    let inches = at_least(INCH / 8).show(Form::Inches { parts: 8 });
    let millimetres = at_least(METRE / 1000).show(Form::Millimetres);
    let order = match unit {
        ScreenUnit::Tenths => [feet, inches, millimetres],
        ScreenUnit::FeetInches => [inches, feet, millimetres],
        ScreenUnit::Millimetres => [millimetres, feet, inches],
    };
    order.join(" = ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use Language::{English, Spanish};

    fn th(thousandths: i64) -> Length {
        Length::from_thousandths_of_a_foot(thousandths)
    }

    fn text(correction: Correction, told: i64, language: Language, unit: ScreenUnit) -> CallText {
        call_text(&correction, th(told), language, unit)
    }

    #[test]
    fn down_three_and_a_half_in_every_unit_and_both_languages() {
        let down = Correction::Down(Amount::HalfTenths(7));
        let english = text(down, 340, English, ScreenUnit::Tenths);
        assert_eq!(english.word, "DOWN");
        assert_eq!(
            (english.amount.as_str(), english.unit_word.as_str()),
            ("3½", "TENTHS")
        );
        assert_eq!(english.line, "DOWN 3½");
        assert_eq!(english.exact, "0.34 ft = 4 1/8 in = 104 mm");
        assert_eq!(english.spoken, "down three and a half");
        assert_eq!(english.warning, "");
        let spanish = text(down, 340, Spanish, ScreenUnit::Tenths);
        assert_eq!(
            (spanish.line.as_str(), spanish.unit_word.as_str()),
            ("BAJE 3½", "DÉCIMAS")
        );
        assert_eq!(spanish.spoken, "baje tres y media");
        let inches = text(down, 340, English, ScreenUnit::FeetInches);
        assert_eq!(inches.line, "DOWN 4 1/8 IN");
        assert_eq!(inches.exact, "4 1/8 in = 0.34 ft = 104 mm");
        assert_eq!(inches.spoken, "down four and an eighth inches");
        let metric = text(down, 340, Spanish, ScreenUnit::Millimetres);
        assert_eq!(metric.line, "BAJE 104 MM");
        assert_eq!(metric.exact, "104 mm = 0.34 ft = 4 1/8 in");
        assert_eq!(metric.spoken, "baje 104 milímetros");
    }

    #[test]
    fn from_a_foot_on_it_says_feet() {
        let down = Correction::Down(Amount::TenthsOfFeet(12));
        let english = text(down, 1150, English, ScreenUnit::Tenths);
        assert_eq!(
            (english.line.as_str(), english.unit_word.as_str()),
            ("DOWN 1.2 FEET", "FEET")
        );
        assert_eq!(english.spoken, "down one point two feet");
        let spanish = text(down, 1150, Spanish, ScreenUnit::Tenths);
        assert_eq!(spanish.line, "BAJE 1.2 PIES");
        assert_eq!(spanish.spoken, "baje uno punto dos pies");
        assert_eq!(
            text(down, 1150, English, ScreenUnit::FeetInches).line,
            "DOWN 1 FT 1 3/4 IN"
        );
        assert_eq!(
            text(down, 1150, Spanish, ScreenUnit::FeetInches).line,
            "BAJE 1 PIE 1 3/4 PULG"
        );
    }

    #[test]
    fn too_deep_is_never_told_without_its_warning() {
        let up = Correction::Up(Amount::HalfTenths(5));
        let english = text(up, -240, English, ScreenUnit::Tenths);
        assert_eq!(
            (english.line.as_str(), english.warning.as_str()),
            ("UP 2½", "TOO DEEP – DON'T FILL")
        );
        assert_eq!(english.spoken, "up two and a half, too deep, don't fill");
        let spanish = text(up, -240, Spanish, ScreenUnit::Tenths);
        assert_eq!(
            (spanish.line.as_str(), spanish.warning.as_str()),
            ("SUBA 2½", "MUY HONDO – NO RELLENE")
        );
        assert_eq!(spanish.spoken, "suba dos y media, muy hondo, no rellene");
    }

    #[test]
    fn grade_and_wait_carry_no_number() {
        for (correction, english, spanish) in [
            (Correction::Grade, "GRADE", "A NIVEL"),
            (Correction::Wait, "WAIT", "ESPERE"),
        ] {
            for (language, word) in [(English, english), (Spanish, spanish)] {
                let text = text(correction, 40, language, ScreenUnit::FeetInches);
                assert_eq!(text.line, word);
                assert_eq!(
                    [text.amount, text.unit_word, text.warning, text.exact],
                    ["", "", "", ""]
                );
            }
        }
    }

    #[test]
    fn the_smallest_amount_is_never_shown_as_nothing() {
        let shave = Correction::Shave(Amount::HalfTenths(1));
        for (unit, line) in [
            (ScreenUnit::Tenths, "SHAVE ½"),
            (ScreenUnit::FeetInches, "SHAVE 1/8 IN"),
            (ScreenUnit::Millimetres, "SHAVE 1 MM"),
        ] {
            assert_eq!(text(shave, 0, English, unit).line, line);
        }
        let text = text(shave, 0, English, ScreenUnit::Tenths);
        assert_eq!(text.exact, "0.01 ft = 1/8 in = 1 mm");
        assert_eq!(text.spoken, "shave a half");
    }

    #[test]
    fn no_word_stands_for_two_things() {
        let half = Amount::HalfTenths(1);
        let measured = [
            Correction::Down(half),
            Correction::Shave(half),
            Correction::Grade,
            Correction::Up(half),
            Correction::Wait,
        ];
        let quick = [
            QuickWord::More,
            QuickWord::ALittle,
            QuickWord::There,
            QuickWord::TooDeep,
            QuickWord::ComeToMe,
            QuickWord::LookHere,
        ];
        for language in [English, Spanish] {
            let mut words: Vec<String> = measured
                .map(|correction| text(correction, 0, language, ScreenUnit::Tenths).word)
                .into_iter()
                .chain(quick.map(|word| quick_text(word, language).word))
                .collect();
            let all = words.len();
            words.sort();
            words.dedup();
            assert_eq!(words.len(), all, "{words:?}");
        }
    }

    #[test]
    fn a_quick_call_about_the_ground_is_marked_by_eye() {
        assert_eq!(quick_text(QuickWord::More, English).line, "MORE BY EYE");
        assert_eq!(
            quick_text(QuickWord::ALittle, Spanish).line,
            "UN POCO A OJO"
        );
        assert_eq!(quick_text(QuickWord::ComeToMe, English).line, "COME TO ME");
    }
}

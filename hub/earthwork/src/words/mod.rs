//! What the screen says: a correction in words, figures and speech, in every language.
//!
//! One function writes word, amount, line and speech together, so that they can't disagree. No word stands
//! for two things in any language, and a number stands only where somebody is to act on it.

mod edge;
mod spoken;

pub use edge::edge_text;

use ::words::Language;
use ::words::call::{by_eye, feet_and_inches, quick, too_deep, unit, word};
use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::correction::{Amount, Correction, Ground, HUNDREDTH, Way};
use crate::length::{INCH, METRE, mixed};

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

/// How much is shown, in one unit; none of it means less than one, and never nothing.
#[derive(Clone, Copy, Debug)]
enum Shown {
    HalfTenths(u64),
    TenthsOfFeet(u64),
    HundredthsOfFeet(u64),
    EighthsOfInches(u64),
    Millimetres(u64),
}

/// The words of a correction, for the ground that it was made for. The exact line, inches and millimetres are rounded
/// as [`crate::correction`] says, each in its own figures; they are never shown as 0 for HIGH or LOW.
pub fn call_text(
    correction: &Correction,
    ground: &Ground,
    language: Language,
    unit: ScreenUnit,
) -> CallText {
    let told = match correction {
        Correction::Down(amount) | Correction::Shave(amount) => Some((*amount, Way::Down)),
        Correction::Up(amount) => Some((*amount, Way::Up)),
        Correction::Grade | Correction::Wait => None,
    };
    let shown = told.map(|(amount, way)| shown(amount, ground, way, unit));
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
        exact: told.map_or_else(String::new, |(_, way)| exact(ground, way, unit)),
        spoken: spoken::call(correction, shown, language),
    }
}

/// The words of a call without a number, marked BY EYE where they say something about the ground.
pub fn quick_text(word: QuickWord, language: Language) -> CallText {
    let (text, looked) = match word {
        QuickWord::More => (quick::more(), true),
        QuickWord::ALittle => (quick::a_little(), true),
        QuickWord::There => (quick::there(), true),
        QuickWord::TooDeep => (quick::too_deep(), true),
        QuickWord::ComeToMe => (quick::come_to_me(), false),
        QuickWord::LookHere => (quick::look_here(), false),
    };
    let text = text.of(language);
    let mark = if looked { by_eye().of(language) } else { "" };
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
    let word = match correction {
        Correction::Down(_) => word::down(),
        Correction::Shave(_) => word::shave(),
        Correction::Grade => word::grade(),
        Correction::Up(_) => word::up(),
        Correction::Wait => word::wait(),
    };
    word.of(language)
}

fn warning(correction: &Correction, language: Language) -> &'static str {
    match correction {
        Correction::Up(_) => too_deep().of(language),
        Correction::Down(_) | Correction::Shave(_) | Correction::Grade | Correction::Wait => "",
    }
}

fn shown(amount: Amount, ground: &Ground, way: Way, unit: ScreenUnit) -> Shown {
    match unit {
        ScreenUnit::Tenths => match amount {
            Amount::HalfTenths(halves) => Shown::HalfTenths(u64::from(halves)),
            Amount::TenthsOfFeet(tenths) => Shown::TenthsOfFeet(u64::from(tenths)),
            Amount::HundredthsOfFeet(parts) => Shown::HundredthsOfFeet(u64::from(parts)),
        },
        ScreenUnit::FeetInches => Shown::EighthsOfInches(ground.steps(way, INCH / 8).count),
        ScreenUnit::Millimetres => Shown::Millimetres(ground.steps(way, METRE / 1000).count),
    }
}

/// The amount as it is printed, and the word for what it counts.
fn figures(shown: Shown, language: Language) -> (String, &'static str) {
    let (amount, of) = match shown {
        Shown::HalfTenths(halves) => (halved(halves), unit::tenths()),
        Shown::TenthsOfFeet(tenths) => (format!("{}.{}", tenths / 10, tenths % 10), unit::feet()),
        Shown::HundredthsOfFeet(0) => ("<0.01".to_owned(), unit::feet()),
        Shown::HundredthsOfFeet(parts) => (hundredths(parts), unit::feet()),
        Shown::EighthsOfInches(0) => ("<1/8".to_owned(), unit::inches()),
        Shown::EighthsOfInches(eighths) => {
            let (feet, inches) = (eighths / 96, mixed(eighths % 96, 8));
            let amount = match feet {
                0 => inches,
                feet => feet_and_inches(&feet, &inches).take(language),
            };
            (amount, unit::inches())
        }
        Shown::Millimetres(0) => ("<1".to_owned(), unit::millimetres()),
        Shown::Millimetres(millimetres) => (millimetres.to_string(), unit::millimetres()),
    };
    (amount, of.of(language))
}

/// `3½` for seven halves.
fn halved(halves: u64) -> String {
    let half = if halves % 2 == 1 { "½" } else { "" };
    match halves / 2 {
        0 => half.to_owned(),
        whole => format!("{whole}{half}"),
    }
}

/// `0.32` for thirty-two.
fn hundredths(parts: u64) -> String {
    format!("{}.{:02}", parts / 100, parts % 100)
}

/// The amount in feet, inches and millimetres, the reader's own first; never nothing.
fn exact(ground: &Ground, way: Way, unit: ScreenUnit) -> String {
    let figure =
        |step: i64, written: fn(u64) -> String, name: &str| match ground.steps(way, step).count {
            0 => format!("<{} {name}", written(1)),
            count => format!("{} {name}", written(count)),
        };
    let feet = figure(HUNDREDTH, hundredths, "ft");
    let inches = figure(INCH / 8, |eighths| mixed(eighths, 8), "in");
    let millimetres = figure(METRE / 1000, |count| count.to_string(), "mm");
    let order = match unit {
        ScreenUnit::Tenths => [feet, inches, millimetres],
        ScreenUnit::FeetInches => [inches, feet, millimetres],
        ScreenUnit::Millimetres => [millimetres, feet, inches],
    };
    order.join(" = ")
}

#[cfg(test)]
mod tests;

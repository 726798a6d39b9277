//! What a voice says for a call: short, and the same as what is printed.

use words::Fixed;
use words::spoken::{self, eighths, number, of_inches, of_tenths};

use super::{Language, Shown, word};
use crate::correction::Correction;

const NUMBERS: [Fixed; 13] = [
    number::zero(),
    number::one(),
    number::two(),
    number::three(),
    number::four(),
    number::five(),
    number::six(),
    number::seven(),
    number::eight(),
    number::nine(),
    number::ten(),
    number::eleven(),
    number::twelve(),
];

/// What is counted in halves or eighths: a language may say one, two and a half of each in its own way (Spanish: *una, media*;
/// Portuguese: *um décimo, uma polegada*).
struct Counted {
    one: Fixed,
    two: Fixed,
    half: Fixed,
}

const TENTHS: Counted = Counted {
    one: of_tenths::one(),
    two: of_tenths::two(),
    half: of_tenths::half(),
};
const INCHES: Counted = Counted {
    one: of_inches::one(),
    two: of_inches::two(),
    half: of_inches::half(),
};

/// The spoken form of a correction.
pub(super) fn call(correction: &Correction, shown: Option<Shown>, language: Language) -> String {
    let Some(shown) = shown else {
        let fixed = match correction {
            Correction::Grade => spoken::grade().of(language),
            Correction::Wait => spoken::wait().of(language),
            Correction::Down(_) | Correction::Shave(_) | Correction::Up(_) => "",
        };
        return fixed.to_owned();
    };
    let verb = word(correction, language).to_lowercase();
    let amount = amount(shown, language);
    let said = match correction {
        Correction::Up(_) => spoken::too_deep(&verb, &amount),
        Correction::Down(_) | Correction::Shave(_) | Correction::Grade | Correction::Wait => {
            spoken::called(&verb, &amount)
        }
    };
    said.take(language)
}

fn amount(shown: Shown, language: Language) -> String {
    let said = match shown {
        Shown::HalfTenths(halves) => {
            let eighths = if halves % 2 == 1 { 4 } else { 0 };
            return TENTHS.and(halves / 2, eighths, language);
        }
        Shown::TenthsOfFeet(tenths) => return in_feet(tenths / 10, &[tenths % 10], language),
        Shown::HundredthsOfFeet(0) => spoken::no_hundredth().into(),
        Shown::HundredthsOfFeet(parts) => {
            return in_feet(parts / 100, &[parts / 10 % 10, parts % 10], language);
        }
        Shown::EighthsOfInches(0) => spoken::no_eighth().into(),
        Shown::Millimetres(0) => spoken::no_millimetre().into(),
        Shown::EighthsOfInches(eighths) => {
            let (feet, inches) = (eighths / 96, eighths % 96);
            let inches = spoken::inches(&INCHES.and(inches / 8, inches % 8, language));
            match feet {
                0 => inches,
                1 => spoken::one_foot(&inches),
                feet => spoken::feet(&said(feet, language), &inches),
            }
        }
        Shown::Millimetres(millimetres) => spoken::millimetres(&millimetres),
    };
    said.take(language)
}

/// `one point two feet`, place by place.
fn in_feet(whole: u64, places: &[u64], language: Language) -> String {
    let places: Vec<String> = places.iter().map(|digit| said(*digit, language)).collect();
    spoken::point(&said(whole, language), &places.join(" ")).take(language)
}

impl Counted {
    /// `three and a half` of it.
    fn and(&self, whole: u64, eighths: u64, language: Language) -> String {
        let part = match eighths {
            1 => Some(eighths::one()),
            2 => Some(eighths::two()),
            3 => Some(eighths::three()),
            4 => Some(self.half),
            5 => Some(eighths::five()),
            6 => Some(eighths::six()),
            7 => Some(eighths::seven()),
            _ => None,
        };
        let part = part.map(|part| part.of(language));
        let whole_said = match whole {
            1 => self.one.of(language).to_owned(),
            2 => self.two.of(language).to_owned(),
            whole => said(whole, language),
        };
        match (whole, part) {
            (_, None) => whole_said,
            (0, Some(part)) => part.to_owned(),
            (_, Some(part)) => spoken::whole_and_part(&whole_said, &part).take(language),
        }
    }
}

/// A number in words up to twelve; a voice reads larger digits well.
fn said(value: u64, language: Language) -> String {
    usize::try_from(value)
        .ok()
        .and_then(|value| NUMBERS.get(value))
        .map_or_else(|| value.to_string(), |name| name.of(language).to_owned())
}

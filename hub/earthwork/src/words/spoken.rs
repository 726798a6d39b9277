//! What a voice says for a call: short, and the same as what is printed.

use words::Fixed;
use words::spoken::{self, eighths, number};

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
/// From one on.
const EIGHTHS: [Fixed; 7] = [
    eighths::one(),
    eighths::two(),
    eighths::three(),
    eighths::four(),
    eighths::five(),
    eighths::six(),
    eighths::seven(),
];

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
            return and(halves / 2, eighths, language);
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
            let inches = spoken::inches(&and(inches / 8, inches % 8, language));
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

/// `three and a half` of what is counted: tenths or inches, feminine in Spanish.
fn and(whole: u64, eighths: u64, language: Language) -> String {
    let part = usize::try_from(eighths)
        .ok()
        .and_then(|eighths| EIGHTHS.get(eighths.checked_sub(1)?))
        .map(|part| part.of(language));
    let whole_said = if whole == 1 {
        spoken::one_of_them().of(language).to_owned()
    } else {
        said(whole, language)
    };
    match (whole, part) {
        (_, None) => whole_said,
        (0, Some(part)) => part.to_owned(),
        (_, Some(part)) => spoken::whole_and_part(&whole_said, &part).take(language),
    }
}

/// A number in words up to twelve; a voice reads larger digits well.
fn said(value: u64, language: Language) -> String {
    usize::try_from(value)
        .ok()
        .and_then(|value| NUMBERS.get(value))
        .map_or_else(|| value.to_string(), |name| name.of(language).to_owned())
}

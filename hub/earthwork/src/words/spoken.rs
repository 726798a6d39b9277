//! What a voice says for a call: short, and the same as what is printed.

use super::{Language, Shown, word};
use crate::correction::Correction;

const ENGLISH: [&str; 13] = [
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve",
];
const SPANISH: [&str; 13] = [
    "cero", "uno", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez",
    "once", "doce",
];
const ENGLISH_EIGHTHS: [&str; 8] = [
    "",
    "an eighth",
    "a quarter",
    "three eighths",
    "a half",
    "five eighths",
    "three quarters",
    "seven eighths",
];
const SPANISH_EIGHTHS: [&str; 8] = [
    "",
    "un octavo",
    "un cuarto",
    "tres octavos",
    "media",
    "cinco octavos",
    "tres cuartos",
    "siete octavos",
];

/// The spoken form of a correction.
pub(super) fn call(correction: &Correction, shown: Option<Shown>, language: Language) -> String {
    let fixed = match (correction, language) {
        (Correction::Grade, Language::English) => "on grade",
        (Correction::Grade, Language::Spanish) => "a nivel",
        (Correction::Wait, Language::English) => "wait",
        (Correction::Wait, Language::Spanish) => "espere",
        _ => "",
    };
    let Some(shown) = shown else {
        return fixed.to_owned();
    };
    let after = match (correction, language) {
        (Correction::Up(_), Language::English) => ", too deep, don't fill",
        (Correction::Up(_), Language::Spanish) => ", muy hondo, no rellene",
        _ => "",
    };
    let verb = word(correction, language).to_lowercase();
    format!("{verb} {}{after}", amount(shown, language))
}

fn amount(shown: Shown, language: Language) -> String {
    let spanish = language == Language::Spanish;
    match shown {
        Shown::HalfTenths(halves) => {
            let eighths = if halves % 2 == 1 { 4 } else { 0 };
            // Tenths are feminine in Spanish: una décima.
            and(halves / 2, eighths, language)
        }
        Shown::TenthsOfFeet(tenths) => in_feet(tenths / 10, &[tenths % 10], language),
        Shown::HundredthsOfFeet(0) if spanish => "menos de una centésima de pie".to_owned(),
        Shown::HundredthsOfFeet(0) => "less than one hundredth of a foot".to_owned(),
        Shown::HundredthsOfFeet(parts) => {
            in_feet(parts / 100, &[parts / 10 % 10, parts % 10], language)
        }
        Shown::EighthsOfInches(0) if spanish => "menos de un octavo de pulgada".to_owned(),
        Shown::EighthsOfInches(0) => "less than an eighth of an inch".to_owned(),
        Shown::Millimetres(0) if spanish => "menos de un milímetro".to_owned(),
        Shown::Millimetres(0) => "less than one millimetre".to_owned(),
        Shown::EighthsOfInches(eighths) => {
            let (feet, inches) = (eighths / 96, eighths % 96);
            let unit = if spanish { "pulgadas" } else { "inches" };
            let inches = format!("{} {unit}", and(inches / 8, inches % 8, language));
            match (feet, spanish) {
                (0, _) => inches,
                (1, false) => format!("one foot {inches}"),
                (1, true) => format!("un pie {inches}"),
                (feet, false) => format!("{} feet {inches}", number(feet, language)),
                (feet, true) => format!("{} pies {inches}", number(feet, language)),
            }
        }
        Shown::Millimetres(millimetres) => {
            let unit = if spanish {
                "milímetros"
            } else {
                "millimetres"
            };
            format!("{millimetres} {unit}")
        }
    }
}

/// `one point two feet`, place by place.
fn in_feet(whole: u64, places: &[u64], language: Language) -> String {
    let (point, feet) = match language {
        Language::English => ("point", "feet"),
        Language::Spanish => ("punto", "pies"),
    };
    let places: Vec<String> = places
        .iter()
        .map(|digit| number(*digit, language))
        .collect();
    format!(
        "{} {point} {} {feet}",
        number(whole, language),
        places.join(" ")
    )
}

/// `three and a half`: feminine in Spanish, as tenths and inches are.
fn and(whole: u64, eighths: u64, language: Language) -> String {
    let spanish = language == Language::Spanish;
    let parts = if spanish {
        SPANISH_EIGHTHS
    } else {
        ENGLISH_EIGHTHS
    };
    let part = usize::try_from(eighths)
        .ok()
        .and_then(|eighths| parts.get(eighths))
        .copied();
    let whole_said = if spanish && whole == 1 {
        "una".to_owned()
    } else {
        number(whole, language)
    };
    match (whole, part.unwrap_or_default()) {
        (_, "") => whole_said,
        (0, part) => part.to_owned(),
        (_, part) if spanish => format!("{whole_said} y {part}"),
        (_, part) => format!("{whole_said} and {part}"),
    }
}

/// A number in words up to twelve; a voice reads larger digits well.
fn number(value: u64, language: Language) -> String {
    let names = match language {
        Language::English => ENGLISH,
        Language::Spanish => SPANISH,
    };
    usize::try_from(value)
        .ok()
        .and_then(|value| names.get(value))
        .map_or_else(|| value.to_string(), |name| (*name).to_owned())
}

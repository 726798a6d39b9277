//! Whoever does exactly what a screen says leaves the ground in tolerance, in every unit and language.

#![expect(
    clippy::disallowed_methods,
    clippy::panic,
    clippy::unwrap_used,
    reason = "it reads a fixture, and its helpers serve tests alone"
)]

use earthwork::correction::{Ground, correction};
use earthwork::length::Length;
use earthwork::tolerance::{Tolerance, Verdict, verdict};
use earthwork::words::{CallText, ScreenUnit, call_text};
use proptest::prelude::*;
use words::Language;

const FOOT: i64 = 3_048_000;
const INCH: i64 = 254_000;
const MILLIMETRE: i64 = 10_000;

/// The finest figure that a screen has in a unit, in counts.
fn finest(unit: ScreenUnit) -> i64 {
    match unit {
        ScreenUnit::Tenths => FOOT / 100,
        ScreenUnit::FeetInches => INCH / 8,
        ScreenUnit::Millimetres => MILLIMETRE,
    }
}

/// What is printed, read back as a person reads it, in counts. `None` when it says less than its figure.
fn printed(text: &CallText) -> Option<i64> {
    let words: Vec<&str> = text.amount.split(' ').collect();
    if words[0].starts_with('<') {
        return None;
    }
    let inches = |words: &[&str]| words.iter().map(|word| eighths(word)).sum::<i64>() * INCH / 8;
    Some(match text.unit_word.as_str() {
        "TENTHS" | "DÉCIMAS" | "DÉCIMOS" => {
            let (whole, half) = match words[0].strip_suffix('½') {
                Some(whole) => (whole, 1),
                None => (words[0], 0),
            };
            let whole: i64 = if whole.is_empty() {
                0
            } else {
                whole.parse().unwrap()
            };
            (2 * whole + half) * FOOT / 20
        }
        "FEET" | "PIES" | "PÉS" => {
            let (whole, part) = words[0].split_once('.').unwrap();
            let part = format!("{part:0<2}");
            (whole.parse::<i64>().unwrap() * 100 + part.parse::<i64>().unwrap()) * FOOT / 100
        }
        "IN" | "PULG" | "POL" => match words.as_slice() {
            [feet, "FT" | "PIE" | "PIES" | "PÉ" | "PÉS", rest @ ..] => {
                feet.parse::<i64>().unwrap() * FOOT + inches(rest)
            }
            all => inches(all),
        },
        "MM" => words[0].parse::<i64>().unwrap() * MILLIMETRE,
        other => panic!("{other} is no unit"),
    })
}

/// `4` or `3/8`, in eighths.
fn eighths(word: &str) -> i64 {
    match word.split_once('/') {
        Some((over, under)) => over.parse::<i64>().unwrap() * 8 / under.parse::<i64>().unwrap(),
        None => word.parse::<i64>().unwrap() * 8,
    }
}

/// The same, from one part of the exact line: `0.34 ft`.
fn exact(part: &str) -> Option<i64> {
    let (figure, unit) = part.rsplit_once(' ').unwrap();
    if figure.starts_with('<') {
        return None;
    }
    Some(match unit {
        "ft" => {
            let (whole, part) = figure.split_once('.').unwrap();
            (whole.parse::<i64>().unwrap() * 100 + part.parse::<i64>().unwrap()) * FOOT / 100
        }
        "in" => figure.split(' ').map(eighths).sum::<i64>() * INCH / 8,
        "mm" => figure.parse::<i64>().unwrap() * MILLIMETRE,
        other => panic!("{other} is no unit"),
    })
}

fn counts(counts: i64) -> Length {
    Length::from_tenth_micrometres(counts)
}

/// Tolerances from none to three tenths, half of them finer than a hundredth of a foot.
fn side() -> impl Strategy<Value = Length> {
    prop_oneof![0..=FOOT / 100, 0..=FOOT * 3 / 10].prop_map(counts)
}

/// What doing it leaves, against what can be left at all by whole figures of this size.
fn holds(ground: &Ground, up: bool, figure: Option<i64>, step: i64, says: &str) {
    let tolerance = ground.tolerance.unwrap();
    let after = |moved: i64| ground.dev + if up { counts(moved) } else { counts(-moved) };
    let in_tolerance = |moved: i64| (-tolerance.low..=tolerance.high).contains(&after(moved));
    let Some(figure) = figure else {
        assert!(!up, "{says}: there is always room to go up");
        assert!(after(step) < -tolerance.low, "{says}: {ground:?}");
        return;
    };
    assert!(figure > 0, "{says}: {ground:?}");
    assert!(
        after(figure) >= -tolerance.low,
        "{says} is too deep: {ground:?}"
    );
    // The largest figure that does not go past the far limit is the one that can be in.
    let room = if up {
        tolerance.high - ground.dev
    } else {
        ground.dev + tolerance.low
    };
    let most = room.tenth_micrometres() / step;
    let possible = most > 0 && in_tolerance(most * step);
    assert!(
        !possible || in_tolerance(figure),
        "{says} leaves the tolerance: {ground:?}"
    );
    if !possible && !up {
        let wrong = format!("{says} is not the most that stays above: {ground:?}");
        assert_eq!(figure / step, most, "{wrong}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4_000))]

    #[test]
    fn doing_what_is_printed_leaves_the_ground_in_tolerance(
        dev in prop_oneof![-FOOT / 2..=FOOT / 2, -5 * FOOT..=5 * FOOT],
        aim in -FOOT / 5..=FOOT / 20,
        high in side(),
        low in side(),
        guard in 0..=FOOT / 20,
        by_rule: bool,
    ) {
        let tolerance = Tolerance::new(high, low).unwrap();
        let ground = Ground { dev: counts(dev), aim: counts(aim), tolerance: Some(tolerance) };
        let judged = verdict(&[ground.dev], tolerance, counts(guard));
        let told = correction(&ground, judged, by_rule);
        for language in Language::ALL {
            for unit in [ScreenUnit::Tenths, ScreenUnit::FeetInches, ScreenUnit::Millimetres] {
                let text = call_text(&told, &ground, language, unit);
                if text.amount.is_empty() {
                    prop_assert!(matches!(judged, Verdict::On | Verdict::TooCloseHigh | Verdict::TooCloseLow));
                    continue;
                }
                let up = judged == Verdict::Low;
                holds(&ground, up, printed(&text), finest(unit), &text.line);
                for (part, step) in text.exact.split(" = ").zip(units(unit)) {
                    holds(&ground, up, exact(part), step, part);
                }
            }
        }
    }

    /// With room for half a figure either side of the aim, it is the nearest, and halfway the higher ground.
    #[test]
    fn in_a_usual_tolerance_it_is_the_nearest_figure(dev in FOOT / 10..=5 * FOOT, aim in -FOOT / 20..=0) {
        let tolerance = Tolerance::new(counts(FOOT / 10), counts(FOOT / 5)).unwrap();
        let ground = Ground { dev: counts(dev), aim: counts(aim), tolerance: Some(tolerance) };
        let told = correction(&ground, Verdict::High, false);
        let text = call_text(&told, &ground, Language::English, ScreenUnit::Tenths);
        let half = if text.unit_word == "FEET" { FOOT / 20 } else { FOOT / 40 };
        let left = (ground.dev - ground.aim).tenth_micrometres() - printed(&text).unwrap();
        prop_assert!(-half < left && left <= half, "{} leaves {left}", text.line);
    }
}

/// The steps of the exact line, the reader's own first.
fn units(unit: ScreenUnit) -> [i64; 3] {
    let [feet, inches, millimetres] = [FOOT / 100, INCH / 8, MILLIMETRE];
    match unit {
        ScreenUnit::Tenths => [feet, inches, millimetres],
        ScreenUnit::FeetInches => [inches, feet, millimetres],
        ScreenUnit::Millimetres => [millimetres, feet, inches],
    }
}

/// Halfway between two figures: never toward too deep.
#[test]
fn halfway_the_ground_stays_high() {
    let tolerance = Tolerance::new(counts(FOOT / 10), counts(FOOT / 10)).unwrap();
    let line = |dev: i64, judged| {
        let ground = Ground {
            dev: counts(dev),
            aim: Length::ZERO,
            tolerance: Some(tolerance),
        };
        let told = correction(&ground, judged, false);
        call_text(&told, &ground, Language::English, ScreenUnit::Tenths).line
    };
    assert_eq!(line(FOOT * 275 / 1000, Verdict::High), "DOWN 2½");
    assert_eq!(line(FOOT * 1250 / 1000, Verdict::High), "DOWN 1.2 FEET");
    assert_eq!(line(-FOOT * 275 / 1000, Verdict::Low), "UP 3");
}

/// The vectors that the phone's page is held to before a reading is sent: the same words, in every unit and language.
#[test]
fn the_page_and_the_hub_say_the_same() {
    let file = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../fixtures/wire/preview.json"
    );
    let text = std::fs::read_to_string(file).unwrap();
    let vectors: serde_json::Value = serde_json::from_str(&text).unwrap();
    let cases = vectors["cases"].as_array().unwrap();
    assert!(cases.len() > 30, "only {} cases", cases.len());
    for case in cases {
        let length = |value: &serde_json::Value| counts(value.as_i64().unwrap());
        let allowed = &case["tolerance"];
        let tolerance = Tolerance::new(length(&allowed["high"]), length(&allowed["low"])).unwrap();
        let ground = Ground {
            dev: length(&case["height"]) - length(&case["rod"]) - length(&case["dig_to"]),
            aim: length(&case["aim"]),
            tolerance: Some(tolerance),
        };
        let judged = verdict(&[ground.dev], tolerance, length(&case["guard"]));
        assert_eq!(serde_json::to_value(judged).unwrap(), case["verdict"]);
        let told = correction(&ground, judged, false);
        for language in [Language::English, Language::Spanish] {
            for unit in [
                ScreenUnit::Tenths,
                ScreenUnit::FeetInches,
                ScreenUnit::Millimetres,
            ] {
                let name = |value| serde_json::to_value(value).unwrap();
                let (spoken, of) = (name(language), serde_json::to_value(unit).unwrap());
                let expected = &case["lines"][spoken.as_str().unwrap()][of.as_str().unwrap()];
                let line = call_text(&told, &ground, language, unit).line;
                assert_eq!(expected.as_str(), Some(line.as_str()), "{case}");
            }
        }
    }
}

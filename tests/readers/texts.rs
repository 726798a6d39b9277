//! Short texts from hands and files: lengths, rods, stations, plan numbers; and computations asked for in bulk.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::sync::LazyLock;

use earthwork::alignment::parse_station;
use earthwork::length::{Form, Length, parse};
use earthwork::rod::{Rod, RodUnit};
use earthwork::site_frame::PlanNumber;
use earthwork::worked::{computations, compute};
use proptest::prelude::*;
use toml::{Table, Value};

use crate::damage::{damaged, damages};

/// The longest length that is taken from outside: 100,000,000 ft.
const LONGEST: i64 = 3_048_000 * 100_000_000;

fn good_texts() -> impl Strategy<Value = String> {
    prop::sample::select(vec![
        "98.50 ft",
        "98,50 ft",
        "5 ft 4 3/8 in",
        "5'-4 3/8\"",
        "3 1/2 in",
        "12 mm",
        "1.2 m",
        "-0.04 ft",
        "1,234.5 ft",
        "7.10",
        "7-10",
        "7 10 1/2",
        "12+34.56",
        "0+07",
        "2000123.456",
        "-17.0000001",
    ])
    .prop_map(str::to_owned)
}

fn texts() -> impl Strategy<Value = String> {
    let hurt = (good_texts(), damages()).prop_map(|(good, damages)| {
        String::from_utf8_lossy(&damaged(good.as_bytes(), &damages)).into_owned()
    });
    prop_oneof![
        hurt,
        "\\PC{0,40}",
        "[-+−]?[0-9 .,'\"/½¼⅜-]{0,24}( ?(ft|in|mm|m|cm|'|\"))?",
        "[0-9]{1,400}(\\.[0-9]{0,400})? ?(ft|m|mm|in)",
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3_000))]

    #[test]
    fn any_text_is_a_length_within_bounds_or_a_sentence(text in texts()) {
        match parse(&text) {
            Ok(length) => {
                prop_assert!(length.abs().tenth_micrometres() <= LONGEST);
                // What is shown of it to its last count is read as the same.
                let shown = length.show(Form::Metres { places: 7 });
                prop_assert_eq!(parse(&shown), Ok(length), "{}", shown);
            }
            Err(error) => prop_assert!(!error.to_string().is_empty()),
        }
    }

    #[test]
    fn any_text_is_a_rod_reading_on_the_rod_or_a_sentence(text in texts(), unit in 0..3_usize) {
        let unit = [RodUnit::FeetHundredths, RodUnit::FeetInchesEighths, RodUnit::Metres][unit];
        let length = Length::from_hundredths_of_a_foot(1_300);
        let rod = Rod { id: "A".into(), unit, length, joints: vec![], bracket: Length::ZERO };
        match rod.read(&text) {
            Ok(reading) => prop_assert!(reading.value >= Length::ZERO && reading.value <= length, "{reading:?}"),
            Err(error) => prop_assert!(!error.to_string().is_empty()),
        }
    }

    #[test]
    fn any_text_is_a_station_or_a_plan_number_or_a_sentence(text in texts()) {
        if let Err(error) = parse_station(&text) {
            prop_assert!(!error.to_string().is_empty());
        }
        if let Ok(number) = PlanNumber::parse(&text) {
            prop_assert_eq!(PlanNumber::parse(&number.to_string()), Ok(number));
        }
    }

    #[test]
    fn any_line_has_one_answer(text in "\\PC{0,200}", bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        for line in [text.into_bytes(), bytes] {
            let asked = line.split(|byte| *byte == b'\n').filter(|line| !line.trim_ascii().is_empty());
            let asked = asked.count();
            let mut answers = Vec::new();
            let tally = rodcall::compute::run(line.as_slice(), &mut answers).expect("answers");
            prop_assert_eq!((tally.all, tally.bad), (asked, asked));
            prop_assert_eq!(String::from_utf8(answers).expect("text").lines().count(), asked);
        }
    }
}

/// The inputs of every worked example.
static EXAMPLES: LazyLock<Vec<(String, BTreeMap<String, String>)>> = LazyLock::new(examples);

fn examples() -> Vec<(String, BTreeMap<String, String>)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fixtures/worked-examples");
    let mut all = Vec::new();
    for item in fs::read_dir(folder).expect("worked examples") {
        let text = fs::read_to_string(item.expect("a file").path()).expect("a text");
        let table: Table = toml::from_str(&text).expect("TOML");
        for case in table["case"].as_array().expect("cases") {
            let inputs = case["inputs"].as_table().expect("inputs").iter();
            let inputs = inputs.map(|(name, value)| match value {
                Value::String(text) => (name.clone(), text.clone()),
                other => (name.clone(), other.to_string()),
            });
            let computation = case["computation"].as_str().expect("a computation");
            all.push((computation.to_owned(), inputs.collect()));
        }
    }
    all
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3_000))]

    /// Each computation, with one input of a published case replaced by something extreme: a result or a refusal.
    #[test]
    fn no_input_is_too_extreme_for_a_computation(
        case in any::<prop::sample::Index>(),
        input in any::<prop::sample::Index>(),
        extreme in prop::sample::select(vec![
            "100000000 ft", "-100000000 ft", "0 ft", "0.0000001 m", "-0.0000001 m", "1e308", "-1e308", "1e-308", "0", "-1",
            "4294967295", "18446744073709551615", "nan", "inf", "", "0 ft; 0 ft", "0 ft; 0 ft; 0 ft; 0 ft",
            "100000000 ft; -100000000 ft", "100000000 ft; 100000000 ft; -100000000 ft; -100000000 ft",
        ]),
    ) {
        let all = &*EXAMPLES;
        let (computation, mut inputs) = all[case.index(all.len())].clone();
        let name = inputs.keys().nth(input.index(inputs.len())).expect("an input").clone();
        inputs.insert(name, extreme.to_owned());
        if let Err(error) = compute(&computation, &inputs) {
            prop_assert!(!error.to_string().is_empty());
        }
    }
}

#[test]
fn every_computation_says_what_it_needs() {
    for name in computations() {
        let error = compute(name, &BTreeMap::new())
            .expect_err("no inputs")
            .to_string();
        assert!(error.contains("needs the input"), "{name}: {error}");
    }
}

//! No computation takes what no site has: every input of every worked example, made hostile one at a time.

#![expect(
    clippy::disallowed_methods,
    clippy::unwrap_used,
    reason = "it reads fixtures, and its helpers serve tests alone"
)]

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use earthwork::worked::compute;

type Inputs = BTreeMap<String, String>;

struct Case {
    id: String,
    computation: String,
    inputs: Inputs,
}

fn cases() -> Vec<Case> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../fixtures/worked-examples");
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_none_or(|ending| ending != "toml") {
            continue;
        }
        let table: toml::Table = toml::from_str(&fs::read_to_string(path).unwrap()).unwrap();
        for case in table["case"].as_array().unwrap() {
            let inputs = case["inputs"].as_table().unwrap();
            let text = |value: &toml::Value| match value {
                toml::Value::String(text) => text.clone(),
                other => other.to_string(),
            };
            let one = Case {
                id: case["id"].as_str().unwrap().to_owned(),
                computation: case["computation"].as_str().unwrap().to_owned(),
                inputs: inputs
                    .iter()
                    .map(|(name, value)| (name.clone(), text(value)))
                    .collect(),
            };
            // A case that is to be refused has nothing that could be made worse.
            if compute(&one.computation, &one.inputs).is_ok() {
                found.push(one);
            }
        }
    }
    assert!(found.len() > 300, "only {} cases", found.len());
    found
}

/// What may stand below zero: differences, elevations, places, rises and falls, limits of one side.
const SIGNED: &[(&str, &[&str])] = &[
    ("adjust_by_distance", &["misclosure"]),
    ("aim", &["mean"]),
    ("batter_string", &["dig_to", "first_board", "second_board"]),
    ("blind_repeats", &["differences"]),
    ("borrow_pit", &["corners"]),
    ("capability", &["high", "low", "mean"]),
    ("catch_point", &["ground_rise"]),
    ("chance", &["low", "high", "value"]),
    ("check_shot", &["hi", "foresight", "benchmark"]),
    ("convert", &["length"]),
    ("correction", &["aim", "difference"]),
    ("crossing", &["bottom", "top", "line_bottom", "line_top"]),
    (
        "daylight_line",
        &["ground", "rise_east", "rise_north", "toe", "tops"],
    ),
    (
        "dig_check",
        &["benchmark", "backsight", "foresight", "target"],
    ),
    ("distance", &["from", "to"]),
    ("distance_from_line", &["corners", "at"]),
    ("doubted_reading", &["difference", "residual"]),
    ("drift", &["residuals"]),
    ("expected_low", &["mean"]),
    ("face", &["toe"]),
    ("fitted_arc", &["east", "north"]),
    ("fold", &["at", "through", "elevation", "rises_east"]),
    ("found_pins", &["at", "plan", "site"]),
    ("gravel_order", &["landing_mean"]),
    ("half_turn", &["first", "turned"]),
    ("hand_dig", &["from", "to", "line"]),
    ("influence", &["dig_bottom", "footing_bottom"]),
    ("landings", &["errors"]),
    ("leaning_rod", &["degrees"]),
    ("level_line", &["start", "end", "backsights", "foresights"]),
    ("no_cross_line", &["distance"]),
    ("offset_hub", &["top", "dig_to", "offset", "station"]),
    ("pace", &["left", "differences"]),
    ("paced", &["from", "to"]),
    ("place_beside", &["start", "station", "offset", "first"]),
    (
        "plane",
        &["at", "through", "elevation", "rise_east", "rise_north"],
    ),
    ("point_areas", &["differences"]),
    ("present_slope", &["run"]),
    (
        "profile",
        &["elevations", "rises", "stations", "at", "steps"],
    ),
    ("rock_above", &["points", "level"]),
    ("rod_reading", &["bracket"]),
    ("rod_to_elevation", &["benchmark", "backsight", "foresight"]),
    (
        "run",
        &["start", "toward", "at", "step_elevations", "step_stations"],
    ),
    (
        "second_levelling",
        &[
            "benchmark",
            "backsight",
            "backsight_again",
            "point",
            "point_again",
        ],
    ),
    (
        "site_frame",
        &["east", "north", "origin_east", "origin_north", "turn"],
    ),
    (
        "slant_from_differences",
        &["true_difference", "seen_difference"],
    ),
    ("slope_line", &["away"]),
    ("slope_tape", &["rise"]),
    ("stale_after", &["amount"]),
    ("station", &["station"]),
    ("station_offset", &["at", "start", "first"]),
    ("strip_volume", &["first", "last"]),
    ("surface_to_level", &["level", "there"]),
    ("surface_volume", &["there", "wanted"]),
    ("swing_tie", &["first", "second"]),
    ("trench", &["inverts", "stations", "at"]),
    ("triangles", &["points", "at"]),
    ("turned_axis", &["degrees", "grade"]),
    ("two_peg", &["far_a", "far_b", "middle_a", "middle_b"]),
    ("verdict", &["differences", "elevations", "target"]),
    ("width", &["free_edge", "strict_edge"]),
];

/// Lists that go with no other list: one more or one fewer is another question.
const FREE: &[(&str, &[&str])] = &[
    ("adjust_by_distance", &["distances"]),
    ("benches", &["rises"]),
    ("blind_repeats", &["differences"]),
    ("drift", &["residuals"]),
    ("fold", &["rises_east"]),
    ("gravel_order", &["patches_cy"]),
    ("landings", &["errors"]),
    ("layered_slopes", &["classes"]),
    ("plane", &["layers"]),
    ("run", &["layers"]),
    ("step_forms", &["widths"]),
    ("verdict", &["differences", "elevations"]),
];

fn named(list: &[(&str, &[&str])], case: &Case, input: &str) -> bool {
    list.iter()
        .any(|(name, inputs)| *name == case.computation && inputs.contains(&input))
}

/// What every changed text came to, where it was taken all the same.
fn taken(change: impl Fn(&Case, &str, &str) -> Vec<String>) -> (usize, Vec<String>) {
    let (mut tried, mut taken) = (0, Vec::new());
    for case in cases() {
        for (name, text) in &case.inputs {
            for other in change(&case, name, text) {
                tried += 1;
                let mut inputs = case.inputs.clone();
                inputs.insert(name.clone(), other.clone());
                if let Ok(got) = compute(&case.computation, &inputs) {
                    let what = format!("{} {name} = “{other}” in {}", case.computation, case.id);
                    taken.push(format!("{what} gave {got:?}"));
                }
            }
        }
    }
    (tried, taken)
}

fn number(text: &str) -> bool {
    text.trim().parse::<f64>().is_ok()
}

#[test]
fn numbers_that_no_site_has_are_refused() {
    let endless = ["1e308", "-1e308", "1e10", "NaN", "inf", "-inf"];
    let (tried, taken) = taken(|_, _, text| {
        let parts: Vec<&str> = text.split(';').collect();
        if parts.iter().all(|part| number(part)) {
            let rest = || parts[1..].iter().map(|part| format!(";{part}"));
            endless
                .iter()
                .map(|one| rest().fold((*one).to_owned(), |all, part| all + &part))
                .collect()
        } else {
            endless
                .iter()
                .filter(|_| earthwork::length::parse(text).is_ok())
                .map(|one| format!("{one} ft"))
                .collect()
        }
    });
    assert!(tried > 3_000, "only {tried}");
    assert!(taken.is_empty(), "{}", taken.join("\n"));
}

#[test]
fn sizes_below_zero_are_refused() {
    let (tried, taken) = taken(|case, name, text| {
        let first = text.split(';').next().unwrap_or_default().trim();
        let rest = text.split_once(';').map_or("", |(_, rest)| rest);
        let measured = number(first) || earthwork::length::parse(first).is_ok();
        let zero = first.starts_with('0') && !first.contains(|c| ('1'..='9').contains(&c));
        // Numbers of a net's points, of shots and of columns count, they do not measure.
        if !measured || zero || named(SIGNED, case, name) {
            return vec![];
        }
        let parted = if rest.is_empty() { "" } else { ";" };
        vec![format!("-{}{parted}{rest}", first.trim_start_matches('-'))]
    });
    assert!(tried > 300, "only {tried}");
    assert!(taken.is_empty(), "{}", taken.join("\n"));
}

#[test]
fn lists_that_go_together_are_as_long_as_each_other_and_nothing_trails() {
    let (tried, taken) = taken(|case, name, text| {
        let mut changed = vec![format!("{text};"), format!(";{text}")];
        let Some((all_but_last, last)) = text.rsplit_once(';') else {
            return changed;
        };
        changed.push(format!("{text}; ; {last}"));
        if !named(FREE, case, name) {
            changed.extend([format!("{text};{last}"), all_but_last.to_owned()]);
        }
        changed
    });
    assert!(tried > 2_000, "only {tried}");
    assert!(taken.is_empty(), "{}", taken.join("\n"));
}

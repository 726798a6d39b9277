//! Do published examples come out: named computations over text inputs, and the comparison with what is expected.
//!
//! An engineer can feed cases without knowing the code: inputs are texts with units, lists are parted by `;`,
//! and whatever is misspelled, missing or left over is an error and not a passed case.

mod accounting;
mod along;
mod compare;
mod cutting;
mod grading;
mod inputs;
mod judging;
mod laying_out;
mod levelling;
mod machines;
mod measuring;
mod placing;
mod proving;
mod shaping;

use std::collections::BTreeMap;
use std::fmt;

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;

use crate::length::Length;
pub use compare::{Comparison, compare};
use inputs::Inputs;

/// What a computation gives.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    /// A length.
    Length(Length),
    /// Lengths, in order.
    Lengths(Vec<Length>),
    /// A plain number.
    Number(f64),
    /// A word or a text.
    Word(String),
}

impl Quantity {
    /// Whether it can be of a site at all: lengths that could be written, numbers that are finite and not endless.
    fn sound(&self) -> bool {
        let length = |length: &Length| Length::try_from(length.tenth_micrometres()).is_ok();
        match self {
            Self::Length(one) => length(one),
            Self::Lengths(all) => all.iter().all(length),
            Self::Number(number) => number.abs() <= 1e15,
            Self::Word(_) => true,
        }
    }
}

/// What is wrong with a case.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum WorkedError {
    /// No such computation.
    #[error("There is no computation “{name}”. There are: {known}.")]
    UnknownComputation {
        /// As written.
        name: String,
        /// All there are.
        known: String,
    },
    /// An input is missing.
    #[error("The computation needs the input “{input}”. Give it, with its unit.")]
    MissingInput {
        /// Which.
        input: String,
    },
    /// Inputs that the computation does not take.
    #[error(
        "The computation does not take the input “{input}”. Check its spelling, or leave it out."
    )]
    UnknownInput {
        /// Which.
        input: String,
    },
    /// An input that can't be read.
    #[error("Input “{input}” = “{text}”: {why}")]
    BadInput {
        /// Which.
        input: String,
        /// As written.
        text: String,
        /// What is wrong and what to do.
        why: String,
    },
    /// The computation refuses these inputs.
    #[error("The computation refuses this: {why}")]
    Refused {
        /// Its own message.
        why: String,
    },
    /// An expected text that can't be compared.
    #[error("Expected “{text}”: {why}")]
    BadExpected {
        /// As written.
        text: String,
        /// What is wrong and what to do.
        why: String,
    },
    /// An allowance that can't be read.
    #[error("Allowance “{text}”: {why}")]
    BadAllowance {
        /// As written.
        text: String,
        /// What is wrong and what to do.
        why: String,
    },
}

/// What a computation gives, by name.
pub(crate) type Outputs = Result<BTreeMap<String, Quantity>, WorkedError>;
type Computation = fn(&mut Inputs) -> Outputs;

/// All computations, by name.
const COMPUTATIONS: &[(&str, Computation)] = &[
    ("adjust_by_distance", levelling::adjust_by_distance),
    ("aim", accounting::aim),
    ("batter_string", laying_out::batter_string),
    ("bearing_test", accounting::bearing_test),
    ("benches", cutting::benches),
    ("blind_repeats", proving::blind_repeats),
    ("borrow_pit", measuring::borrow_pit),
    ("capability", accounting::capability),
    ("catch_point", grading::catch_point),
    ("chance", judging::chance),
    ("check_interval", proving::check_interval),
    ("check_shot", levelling::check_shot),
    ("closure_over_distance", levelling::closure_over_distance),
    ("closure_over_set_ups", levelling::closure_over_set_ups),
    ("convert", shaping::convert),
    ("corner", laying_out::corner),
    ("correction", judging::correction),
    ("critical_height", cutting::critical_height),
    ("crossing", cutting::crossing),
    (
        "curvature_and_refraction",
        levelling::curvature_and_refraction,
    ),
    ("daylight_line", cutting::daylight_line),
    ("density_test", accounting::density_test),
    ("diagonals", laying_out::diagonals),
    ("dig_check", levelling::dig_check),
    ("distance", shaping::distance),
    ("distance_from_line", placing::distance_from_line),
    ("doubted_reading", proving::doubted_reading),
    ("drift", proving::drift),
    ("end_areas", measuring::end_areas),
    ("expected_low", accounting::expected_low),
    ("face", grading::face),
    ("fitted_arc", grading::fitted_arc),
    ("fold", grading::fold),
    ("found_pins", placing::found_pins),
    ("furthest_provable", judging::furthest_provable),
    ("gravel_order", accounting::gravel_order),
    ("guard_band", judging::guard_band),
    ("half_turn", levelling::half_turn),
    ("hand_dig", cutting::hand_dig),
    ("influence", cutting::influence),
    ("keep_out", shaping::keep_out),
    ("ladders", cutting::ladders),
    ("landings", accounting::landings),
    ("laser_slant", levelling::laser_slant),
    ("layered_slopes", cutting::layered_slopes),
    ("leaning_rod", levelling::leaning_rod),
    ("level_line", levelling::level_line),
    ("lifts", accounting::lifts),
    ("loads", accounting::loads),
    ("machine_zone", machines::machine_zone),
    ("no_cross_line", laying_out::no_cross_line),
    ("offset_hub", laying_out::offset_hub),
    ("overhead_line", machines::overhead_line),
    ("owed_at_depth", cutting::owed_at_depth),
    ("owed_slope", cutting::owed_slope),
    ("pace", accounting::pace),
    ("paced", placing::paced),
    ("pins", cutting::pins),
    ("place_beside", placing::place_beside),
    ("places_to_say", proving::places_to_say),
    ("plane", shaping::plane),
    ("point_areas", measuring::point_areas),
    ("present_slope", cutting::present_slope),
    ("presumed_bearing", accounting::presumed_bearing),
    ("prismoids", along::prismoids),
    ("profile", grading::profile),
    ("rock_above", measuring::rock_above),
    ("rod_reading", shaping::rod_reading),
    ("rod_to_elevation", levelling::rod_to_elevation),
    ("run", shaping::run),
    ("sand_cone", accounting::sand_cone),
    ("second_levelling", levelling::second_levelling),
    ("sections", along::sections),
    ("site_frame", grading::site_frame),
    ("slant_from_differences", levelling::slant_from_differences),
    ("slope_line", machines::slope_line),
    ("slope_tape", laying_out::slope_tape),
    ("slough", cutting::slough),
    ("soil", cutting::soil),
    ("soil_factors", accounting::soil_factors),
    ("stale_after", judging::stale_after),
    ("station", grading::station),
    ("station_offset", placing::station_offset),
    ("step_forms", laying_out::step_forms),
    ("strip_volume", measuring::strip_volume),
    ("surface_to_level", measuring::surface_to_level),
    ("surface_volume", measuring::surface_volume),
    ("swing_tie", laying_out::swing_tie),
    ("time_cost", accounting::time_cost),
    ("trench", grading::trench),
    ("trench_volume", measuring::trench_volume),
    ("triangles", placing::triangles),
    ("truck_side", machines::truck_side),
    ("trucks", accounting::trucks),
    ("turned_axis", proving::turned_axis),
    ("two_machines", machines::two_machines),
    ("two_peg", levelling::two_peg),
    ("verdict", judging::verdict),
    ("vertical_part", cutting::vertical_part),
    ("visits", accounting::visits),
    ("wedge", cutting::wedge),
    ("width", laying_out::width),
];

/// The names of all computations.
pub fn computations() -> impl Iterator<Item = &'static str> {
    COMPUTATIONS.iter().map(|(name, _)| *name)
}

/// Computes by name.
///
/// # Errors
/// When the name is unknown, an input is missing, left over or can't be read, or the trade refuses it.
pub fn compute(computation: &str, inputs: &BTreeMap<String, String>) -> Outputs {
    let run = COMPUTATIONS
        .iter()
        .find(|(name, _)| *name == computation)
        .map(|(_, run)| run)
        .ok_or_else(|| WorkedError::UnknownComputation {
            name: computation.to_owned(),
            known: computations().collect::<Vec<_>>().join(", "),
        })?;
    let mut inputs = Inputs::new(inputs);
    let outputs = run(&mut inputs)?;
    inputs.all_used()?;
    match outputs.iter().find(|(_, quantity)| !quantity.sound()) {
        Some((name, _)) => Err(refused(format!(
            "“{name}” comes to more than any site has. Check the units and the figures that were put in."
        ))),
        None => Ok(outputs),
    }
}

/// Outputs from names and quantities.
fn outputs<const N: usize>(named: [(&str, Quantity); N]) -> BTreeMap<String, Quantity> {
    named
        .into_iter()
        .map(|(name, quantity)| (name.to_owned(), quantity))
        .collect()
}

/// A refusal in the trade's own words.
#[expect(clippy::needless_pass_by_value, reason = "so that it fits `map_err`")]
fn refused(why: impl ToString) -> WorkedError {
    WorkedError::Refused {
        why: why.to_string(),
    }
}

/// The name that a plain enum has in files.
fn word<T: Serialize>(value: T) -> Quantity {
    struct Named<T>(T);
    impl<T: Serialize> fmt::Display for Named<T> {
        fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            self.0.serialize(f)
        }
    }
    Quantity::Word(Named(value).to_string())
}

/// Yes or no.
fn yes(value: bool) -> Quantity {
    Quantity::Word(if value { "yes" } else { "no" }.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn given(pairs: &[(&str, &str)]) -> BTreeMap<String, String> {
        pairs
            .iter()
            .map(|(name, text)| ((*name).to_owned(), (*text).to_owned()))
            .collect()
    }

    #[test]
    fn a_misspelled_case_is_an_error_and_says_what_to_do() {
        let dig = [
            ("benchmark", "106.35 ft"),
            ("backsight", "4.65 ft"),
            ("target", "107.85 ft"),
            ("foresight", "2.40 ft"),
        ];
        assert!(compute("dig_check", &given(&dig)).is_ok());
        let mut left_over = given(&dig);
        left_over.insert("colour".into(), "red".into());
        let mut no_unit = given(&dig);
        no_unit.insert("target".into(), "107.85".into());
        for (computation, inputs, says) in [
            (
                "dig_chek",
                given(&dig),
                "There is no computation “dig_chek”. There are: adjust_by_distance, ",
            ),
            ("dig_check", given(&dig[..3]), "needs the input “foresight”"),
            ("dig_check", left_over, "does not take the input “colour”"),
            (
                "dig_check",
                no_unit,
                "Input “target” = “107.85”: “107.85” has no unit",
            ),
        ] {
            let error = compute(computation, &inputs).unwrap_err().to_string();
            assert!(error.contains(says), "{error}");
        }
    }

    /// By the texts of the rule, 1.5 tsf are A and 143.8 kPa B: whichever is written first, the weaker counts.
    #[test]
    fn of_two_strengths_the_weaker_counts() {
        for (tsf, kpa, firmest) in [
            ("1.5", "143.8", "b"),
            ("0.4", "200", "c"),
            ("2", "200", "a"),
        ] {
            let found = compute(
                "soil",
                &given(&[
                    ("material", "cohesive"),
                    ("strength_tsf", tsf),
                    ("strength_kpa", kpa),
                ]),
            );
            let word = Quantity::Word(firmest.into());
            assert_eq!(found.unwrap()["firmest"], word, "{tsf} and {kpa}");
        }
    }

    #[test]
    fn a_station_is_taken_wherever_one_is_asked_for() {
        let run = |steps: &str| {
            compute(
                "run",
                &given(&[
                    ("start", "0 ft; 0 ft"),
                    ("toward", "0 ft; 10 ft"),
                    ("length", "200 ft"),
                    ("left", "2 ft"),
                    ("right", "2 ft"),
                    ("step_stations", steps),
                    ("step_elevations", "100 ft; 99 ft"),
                    ("at", "0 ft; 150 ft"),
                ]),
            )
        };
        assert_eq!(run("0+00; 1+25").unwrap(), run("0 ft; 125 ft").unwrap());
        let beside = |first: &str, station: &str| {
            compute(
                "place_beside",
                &given(&[
                    ("start", "0 ft; 0 ft"),
                    ("first", first),
                    ("pieces", "line; 0 ft; 100 ft"),
                    ("station", station),
                ]),
            )
        };
        assert_eq!(
            beside("10+00", "10+50.5").unwrap(),
            beside("1000 ft", "1050.5 ft").unwrap()
        );
        assert!(run("0+00; 1+2").is_err());
    }

    #[test]
    fn what_comes_to_more_than_any_site_has_is_refused() {
        let far = given(&[("rate", "99999999 ft"), ("set_ups", "1000000000")]);
        let error = compute("closure_over_set_ups", &far).unwrap_err();
        assert!(error.to_string().contains("more than any site"), "{error}");
    }

    #[test]
    fn computations_are_named_once_and_in_order() {
        let names: Vec<_> = computations().collect();
        assert!(names.is_sorted_by(|a, b| a < b), "{names:?}");
    }

    #[test]
    fn plain_enums_have_the_names_that_files_use() {
        assert_eq!(
            word(crate::tolerance::Verdict::TooCloseHigh),
            Quantity::Word("too_close_high".into())
        );
        assert_eq!(
            word(crate::level::Check::Again),
            Quantity::Word("again".into())
        );
    }
}

//! The rules of cuts as data, each with its section: the US federal ones, or a file of the same form.

use std::sync::LazyLock;

use contract::ToSchema;
use serde::{Deserialize, Serialize};

mod asks;
mod written;

pub use asks::{Asks, Binds, RuleReminder};

use super::{FaceError, SoilClass};
use crate::length::Length;

/// Rules for cuts.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ExcavationRules {
    /// What they are called; printed wherever they are used.
    pub name: String,
    /// Where they come from.
    pub source: String,
    /// A ladder, stair or ramp.
    pub egress: Egress,
    /// Protection against a cave-in.
    pub protection: Limit,
    /// Where the tables end.
    pub engineer: Limit,
    /// Spoil and loads at the crest.
    pub spoil: SetBack,
    /// The rule that asks for inspections.
    pub inspection: Section,
    /// What else is asked of a cut and no reading shows.
    #[serde(default = "asks::federal")]
    pub also: Vec<RuleReminder>,
    /// Strength of cohesive soil.
    pub strength: StrengthLimits,
    /// Layers that dip into the cut as flat as this or steeper, run to one of rise.
    pub dip_run: f64,
    /// The steepest slope of each class.
    pub slopes: Slopes,
    /// A cut in A that is open for a short time.
    pub short_term: Option<ShortTerm>,
    /// Signs of distress.
    pub distress: Distress,
    /// Benches.
    pub benches: Benches,
    /// Unsupported verticals at the bottom, by depth from the shallowest.
    pub lower: Vec<LowerPart>,
    /// Shields around verticals.
    pub shield: Shield,
}

/// A depth from which something is owed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Limit {
    /// The depth.
    pub depth: Length,
    /// At that depth already, else only beyond it.
    pub or_more: bool,
    /// Which cuts it binds; where rules of before do not say, as in the US federal ones.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub binds: Option<Binds>,
    /// The rule.
    pub section: String,
}

impl Limit {
    /// Which cuts it binds: every one, unless it says otherwise.
    pub fn binds(&self) -> Binds {
        self.binds.unwrap_or(Binds::EveryCut)
    }

    /// Whether a cut of this depth owes it.
    pub fn owed(&self, depth: Length) -> bool {
        depth > self.depth || self.or_more && depth == self.depth
    }
}

/// A way out of a trench.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Egress {
    /// From which depth.
    pub limit: Limit,
    /// Nobody goes farther than this to reach it.
    pub travel: Length,
}

impl Egress {
    /// Which cuts it binds: trenches alone, unless it says otherwise.
    pub fn binds(&self) -> Binds {
        self.limit.binds.unwrap_or(Binds::Trenches)
    }
}

/// A distance from an edge.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SetBack {
    /// At least this far.
    pub distance: Length,
    /// The rule.
    pub section: String,
}

/// A rule without a figure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Section {
    /// Which cuts it binds; every one where it does not say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub binds: Option<Binds>,
    /// The rule.
    pub section: String,
}

impl Section {
    /// Which cuts it binds: every one, unless it says otherwise.
    pub fn binds(&self) -> Binds {
        self.binds.unwrap_or(Binds::EveryCut)
    }
}

/// Strength of cohesive soil.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct StrengthLimits {
    /// A from here on, tons a square foot.
    pub a_tsf: f64,
    /// A from here on, kilopascals.
    pub a_kpa: f64,
    /// C up to and with this, tons a square foot.
    pub c_tsf: f64,
    /// C up to and with this, kilopascals.
    pub c_kpa: f64,
    /// The rule.
    pub section: String,
}

/// The steepest slopes, run to one of rise.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Slopes {
    /// Stable rock.
    pub rock: f64,
    /// A.
    pub a: f64,
    /// B.
    pub b: f64,
    /// C.
    pub c: f64,
    /// The rule.
    pub section: String,
}

impl Slopes {
    /// Of one class.
    pub fn of(&self, class: SoilClass) -> f64 {
        match class {
            SoilClass::Rock => self.rock,
            SoilClass::A => self.a,
            SoilClass::B => self.b,
            SoilClass::C => self.c,
        }
    }
}

/// A cut in A that is open for a short time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ShortTerm {
    /// Run to one of rise.
    pub a: f64,
    /// No deeper than this.
    pub depth: Length,
    /// No longer than this.
    pub hours: u32,
    /// The rule.
    pub section: String,
}

/// What signs of distress ask for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Distress {
    /// So much flatter, run to one of rise.
    pub flatter: f64,
    /// The rule.
    pub section: String,
}

/// Benches by class; none where the rules draw none.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Benches {
    /// In A.
    pub a: Option<BenchRule>,
    /// In B.
    pub b: Option<BenchRule>,
}

/// How high the verticals of benches may be.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct BenchRule {
    /// The lowest.
    pub first: Length,
    /// Each of the others.
    pub other: Length,
    /// Cohesive soil alone.
    pub cohesive_alone: bool,
    /// The rule.
    pub section: String,
}

/// An unsupported vertical at the bottom.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LowerPart {
    /// In which class.
    pub class: SoilClass,
    /// In a cut no deeper than this.
    pub depth: Length,
    /// No higher than this.
    pub vertical: Length,
    /// The slope above it, run to one of rise.
    pub run_above: f64,
    /// The rule.
    pub section: String,
}

/// A shield or support around a vertical.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Shield {
    /// It reaches so far above the vertical's top.
    pub above: Length,
    /// The rule.
    pub section: String,
}

const US_FEDERAL: &str = include_str!("us_federal.toml");

#[expect(clippy::expect_used, reason = "a file of the source, held by a test")]
static FEDERAL: LazyLock<ExcavationRules> =
    LazyLock::new(|| ExcavationRules::parse(US_FEDERAL).expect("the embedded rules can be read"));

impl ExcavationRules {
    /// The US federal rules, 29 CFR 1926 Subpart P.
    pub fn us_federal() -> &'static ExcavationRules {
        &FEDERAL
    }

    /// Rules from a file's text, in the form of `us_federal.toml`.
    ///
    /// # Errors
    /// When something is missing, left over, misspelled, below zero or out of order.
    pub fn parse(text: &str) -> Result<ExcavationRules, FaceError> {
        let rules = written::read(text)?;
        rules.check()?;
        Ok(rules)
    }

    fn check(&self) -> Result<(), FaceError> {
        let wrong = |why: &str| Err(FaceError::Rules { why: why.into() });
        if self.name.trim().is_empty() || self.source.trim().is_empty() {
            return wrong("they have no name or no source. Say where they come from.");
        }
        let s = &self.slopes;
        let runs = [s.rock, s.a, s.b, s.c];
        if runs.iter().any(|run| !run.is_finite() || *run < 0.0)
            || runs.windows(2).any(|pair| pair[0] > pair[1])
        {
            return wrong("slopes go from rock to C, each as flat as the one before or flatter.");
        }
        let t = &self.strength;
        let ordered = |a: f64, c: f64| a.is_finite() && c >= 0.0 && c < a;
        if !ordered(t.a_tsf, t.c_tsf) || !ordered(t.a_kpa, t.c_kpa) {
            return wrong("the strength of C lies below that of A, both zero or more.");
        }
        if !(self.distress.flatter.is_finite() && self.distress.flatter >= 0.0) {
            return wrong("distress makes a slope flatter: a number of zero or more.");
        }
        if !(self.dip_run.is_finite() && self.dip_run > 0.0) {
            return wrong("the dip is a run above zero to one of rise.");
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_embedded_rules_can_be_read_and_another_set_changes_the_answer_without_code() {
        let federal = ExcavationRules::us_federal();
        let depth = Length::from_hundredths_of_a_foot(450);
        assert!(!federal.protection.owed(depth));
        // Derived: a state that asks for protection from 4 ft on.
        let stricter = US_FEDERAL.replace(
            "[protection]\ndepth = \"5 ft\"",
            "[protection]\ndepth = \"4 ft\"",
        );
        assert!(
            ExcavationRules::parse(&stricter)
                .unwrap()
                .protection
                .owed(depth)
        );
    }

    /// The texts: "trench excavations" for a way out, "each employee in an excavation" for protection.
    #[test]
    fn a_way_out_binds_trenches_alone_and_protection_every_cut() {
        let federal = ExcavationRules::us_federal();
        assert!(federal.egress.binds().holds_for(true));
        assert!(!federal.egress.binds().holds_for(false));
        assert!(federal.protection.binds().holds_for(false));
        assert!(federal.inspection.binds().holds_for(false));
        // Rules of before, which do not say, are read the same way; a state may ask a way out of every cut.
        let silent = US_FEDERAL
            .replace("binds = \"trenches\"\n", "")
            .replace("binds = \"every_cut\"\n", "");
        let silent = ExcavationRules::parse(&silent).unwrap();
        assert!(!silent.egress.binds().holds_for(false));
        assert!(silent.protection.binds().holds_for(false));
        let every = US_FEDERAL.replace("binds = \"trenches\"", "binds = \"every_cut\"");
        let every = ExcavationRules::parse(&every).unwrap();
        assert!(every.egress.binds().holds_for(false));
    }

    #[test]
    fn reminders_apply_from_their_depth_and_rules_of_before_have_the_federal_ones() {
        let federal = ExcavationRules::us_federal();
        let asked = |hundredths| {
            let depth = Length::from_hundredths_of_a_foot(hundredths);
            let each = federal.also.iter().filter(move |one| one.applies(depth));
            each.map(|one| one.what).collect::<Vec<_>>()
        };
        let shallow = [Asks::FallingLoads, Asks::MobileEquipment, Asks::Water];
        assert_eq!(asked(400), shallow);
        assert!(asked(401).contains(&Asks::Atmosphere));
        assert!(!asked(599).contains(&Asks::Edge));
        assert!(asked(600).contains(&Asks::Edge));
        let mut stored = serde_json::to_value(federal).unwrap();
        stored.as_object_mut().unwrap().remove("also");
        let read: ExcavationRules = serde_json::from_value(stored).unwrap();
        assert_eq!(read, *federal);
    }

    #[test]
    fn a_file_that_is_wrong_says_what() {
        for (from, to, says) in [
            (
                "a = 0.75\nb = 1.0",
                "a = 0.75\nb = 0.5",
                "slopes go from rock to C",
            ),
            ("depth = \"20 ft\"", "depth = \"20\"", "has no unit"),
            ("depth = \"20 ft\"", "depth = \"-20 ft\"", "zero or more"),
            ("[spoil]", "[spoils]", "spoils"),
            ("binds = \"trenches\"", "binds = \"pits\"", "pits"),
            ("deeper = \"4 ft\"", "deeper = \"4\"", "has no unit"),
            (
                "deeper = \"4 ft\"",
                "deeper = \"4 ft\"\nfrom = \"4 ft\"",
                "not both",
            ),
            ("c_tsf = 0.5", "c_tsf = 1.5", "strength of C"),
        ] {
            assert!(US_FEDERAL.contains(from), "{from}");
            let error = ExcavationRules::parse(&US_FEDERAL.replace(from, to)).unwrap_err();
            assert!(error.to_string().contains(says), "{error}");
        }
    }
}

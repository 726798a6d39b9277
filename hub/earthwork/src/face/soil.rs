//! The class of the soil: picked by the competent person; what is found can only lower it.
//!
//! After 29 CFR 1926 Subpart P, Appendix A. A class is never picked here: [`Evidence::bounds`] says which classes the
//! finds still allow, [`Evidence::counted`] takes the weaker of what was picked and what the finds allow.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{ExcavationRules, FaceError};

/// A class of soil, from the firmest to the weakest.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum SoilClass {
    /// Natural solid mineral that stands vertical and stays whole.
    Rock,
    /// Type A.
    A,
    /// Type B.
    B,
    /// Type C.
    C,
}

impl SoilClass {
    /// As the trade writes it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Rock => "ROCK",
            Self::A => "A",
            Self::B => "B",
            Self::C => "C",
        }
    }
}

/// What the soil is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Material {
    /// Solid rock that stands.
    StableRock,
    /// Rock that is not stable.
    LooseRock,
    /// Cemented: caliche, hardpan.
    Cemented,
    /// Clay and the like.
    Cohesive,
    /// Angular gravel, silt, silt loam, sandy loam.
    SiltOrAngular,
    /// Gravel, sand, loamy sand.
    Granular,
}

/// Unconfined strength as it was read; kept in the unit of the instrument.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "unit", rename_all = "snake_case")]
pub enum Strength {
    /// Tons a square foot.
    Tsf {
        /// Value.
        value: f64,
    },
    /// Kilopascals.
    Kpa {
        /// Value.
        value: f64,
    },
}

impl Strength {
    /// Whether the number can be a soil's strength: zero or more, and not more than 100 tons a square foot, beyond which it is
    /// rock (common practice).
    pub fn sound(self) -> bool {
        match self {
            Self::Tsf { value } => (0.0..=100.0).contains(&value),
            Self::Kpa { value } => (0.0..=10_000.0).contains(&value),
        }
    }
}

impl Strength {
    /// The weaker of two readings of one soil: by the class that each leaves by the text of the rule in its own unit, and
    /// within one class by its pounds a square foot. One that can't be a strength is the weaker.
    #[must_use]
    pub fn weaker(self, other: Strength, rules: &ExcavationRules) -> Strength {
        let weak = |strength: Strength| (of_strength(strength, rules), -strength.psf());
        let (mine, others) = (weak(self), weak(other));
        if others.0 > mine.0 || (others.0 == mine.0 && others.1 > mine.1) {
            other
        } else {
            self
        }
    }

    /// In pounds a square foot; a kilopascal is 20.885 (NIST Special Publication 811).
    pub fn psf(self) -> f64 {
        match self {
            Self::Tsf { value } => value * 2_000.0,
            Self::Kpa { value } => value * 20.885_434,
        }
    }
}

/// How a thumb goes in (Appendix A (d)(2), from memory).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Thumb {
    /// Dents readily, goes in only with great effort.
    GreatEffort,
    /// Goes in with moderate effort.
    SomeEffort,
    /// Goes in several inches with ease.
    Easily,
}

/// What was found, by eye, by hand and by instrument.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
#[expect(clippy::struct_excessive_bools, reason = "each is a find of its own")]
pub struct Evidence {
    /// What the soil is.
    pub material: Option<Material>,
    /// Pocket penetrometer or vane, as unconfined strength.
    pub strength: Option<Strength>,
    /// The thumb.
    pub thumb: Option<Thumb>,
    /// Fissures or cracks.
    pub cracks: bool,
    /// Heavy traffic, pile driving and the like.
    pub vibration: bool,
    /// Dug or filled before.
    pub disturbed: bool,
    /// Water seeps freely, or the soil stands in water.
    pub water: bool,
    /// Layers that dip into the cut, as run to one of rise.
    pub dip_run: Option<f64>,
}

/// Why a class is lower than it would be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Lowered {
    /// What the soil is.
    Material,
    /// Its measured strength.
    Strength,
    /// The thumb.
    Thumb,
    /// Cracks.
    Cracks,
    /// Vibration.
    Vibration,
    /// Dug before.
    Disturbed,
    /// Water.
    Water,
    /// Layers dip into the cut.
    Dip,
}

/// The classes that the finds still allow.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Bounds {
    /// No firmer than this.
    pub firmest: SoilClass,
    /// It may be as weak as this: what was not measured can't be counted on.
    pub weakest: SoilClass,
    /// What set the firmest.
    pub because: Vec<Lowered>,
}

/// The class that counts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Counted {
    /// The weaker of what was picked and what the finds allow.
    pub class: SoilClass,
    /// What lowered it below what was picked; empty when nothing did.
    pub lowered_by: Vec<Lowered>,
}

impl Evidence {
    /// The same, when its figures can be.
    ///
    /// # Errors
    /// When a strength or a dip is below zero or no number.
    pub fn checked(self) -> Result<Evidence, FaceError> {
        if let Some(strength) = self.strength
            && !strength.sound()
        {
            let (Strength::Tsf { value } | Strength::Kpa { value }) = strength;
            return Err(FaceError::NotANumber {
                what: words::face::what::strength(),
                value: value.to_string(),
            });
        }
        if let Some(run) = self.dip_run
            && !(run.is_finite() && run >= 0.0)
        {
            return Err(FaceError::NotANumber {
                what: words::face::what::dip(),
                value: run.to_string(),
            });
        }
        Ok(self)
    }

    /// The classes that are still allowed.
    pub fn bounds(&self, rules: &ExcavationRules) -> Bounds {
        let caps = self.caps(rules);
        let firmest = caps
            .iter()
            .map(|(_, class)| *class)
            .max()
            .unwrap_or(SoilClass::Rock);
        let known = match self.material {
            None => false,
            Some(Material::Cohesive) => self.strength.is_some(),
            Some(_) => true,
        };
        let weakest = if known { firmest } else { SoilClass::C };
        Bounds {
            firmest,
            weakest: weakest.max(firmest),
            because: caps
                .into_iter()
                .filter(|(_, class)| *class == firmest && firmest != SoilClass::Rock)
                .map(|(why, _)| why)
                .collect(),
        }
    }

    /// The weaker of what the competent person picked and what the finds allow, with what lowered it.
    pub fn counted(&self, picked: SoilClass, rules: &ExcavationRules) -> Counted {
        let bounds = self.bounds(rules);
        if picked >= bounds.firmest {
            return Counted {
                class: picked,
                lowered_by: vec![],
            };
        }
        Counted {
            class: bounds.firmest,
            lowered_by: bounds.because,
        }
    }

    /// Each find with the firmest class that it leaves.
    fn caps(&self, rules: &ExcavationRules) -> Vec<(Lowered, SoilClass)> {
        let mut caps = Vec::new();
        if let Some(material) = self.material {
            caps.push((Lowered::Material, firmest_of(material)));
        }
        if let Some(strength) = self.strength {
            caps.push((Lowered::Strength, of_strength(strength, rules)));
        }
        if let Some(thumb) = self.thumb {
            let class = match thumb {
                Thumb::GreatEffort => SoilClass::A,
                Thumb::SomeEffort => SoilClass::B,
                Thumb::Easily => SoilClass::C,
            };
            caps.push((Lowered::Thumb, class));
        }
        for (found, why, class) in [
            (self.cracks, Lowered::Cracks, SoilClass::B),
            (self.vibration, Lowered::Vibration, SoilClass::B),
            (self.disturbed, Lowered::Disturbed, SoilClass::B),
            (self.water, Lowered::Water, SoilClass::C),
        ] {
            if found {
                caps.push((why, class));
            }
        }
        if self.dip_run.is_some_and(|run| run <= rules.dip_run) {
            caps.push((Lowered::Dip, SoilClass::C));
        }
        caps
    }
}

fn firmest_of(material: Material) -> SoilClass {
    match material {
        Material::StableRock => SoilClass::Rock,
        Material::Cemented | Material::Cohesive => SoilClass::A,
        Material::LooseRock | Material::SiltOrAngular => SoilClass::B,
        Material::Granular => SoilClass::C,
    }
}

/// By the text of the rule in the instrument's own unit: 1.5 tsf are 143.64 kPa, the rule prints 144.
fn of_strength(strength: Strength, rules: &ExcavationRules) -> SoilClass {
    let limits = &rules.strength;
    let (value, a, c) = match strength {
        Strength::Tsf { value } => (value, limits.a_tsf, limits.c_tsf),
        Strength::Kpa { value } => (value, limits.a_kpa, limits.c_kpa),
    };
    if !strength.sound() || value <= c {
        SoilClass::C
    } else if value < a {
        SoilClass::B
    } else {
        SoilClass::A
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// By the texts of the rule: 1.5 tsf is A, 143.8 kPa, a little more in pounds, is not.
    #[test]
    fn of_two_strengths_the_weaker_counts() {
        let rules = ExcavationRules::us_federal();
        let (tsf, kpa) = (Strength::Tsf { value: 1.5 }, Strength::Kpa { value: 143.8 });
        assert_eq!(tsf.weaker(kpa, rules), kpa);
        assert_eq!(kpa.weaker(tsf, rules), kpa);
        let (soft, softer) = (Strength::Tsf { value: 1.0 }, Strength::Kpa { value: 60.0 });
        assert_eq!(soft.weaker(softer, rules), softer);
        assert_eq!(softer.weaker(soft, rules), softer);
        let none = Strength::Tsf { value: f64::NAN };
        assert!(!soft.weaker(none, rules).sound());
        let endless = Strength::Tsf { value: 1e308 };
        for strength in [none, Strength::Kpa { value: -1.0 }, endless] {
            let found = Evidence {
                strength: Some(strength),
                ..Evidence::default()
            };
            assert!(found.checked().is_err());
        }
    }

    fn evidence() -> impl Strategy<Value = Evidence> {
        (
            proptest::option::of(0.0..4.0_f64),
            any::<[bool; 4]>(),
            proptest::option::of(0.5..20.0_f64),
        )
            .prop_map(|(tsf, finds, dip_run)| Evidence {
                material: Some(Material::Cohesive),
                strength: tsf.map(|value| Strength::Tsf { value }),
                thumb: None,
                cracks: finds[0],
                vibration: finds[1],
                disturbed: finds[2],
                water: finds[3],
                dip_run,
            })
    }

    proptest! {
        #[test]
        fn a_find_never_raises_the_class(found in evidence(), weaker in any::<[bool; 4]>()) {
            let rules = ExcavationRules::us_federal();
            let more = Evidence {
                cracks: found.cracks || weaker[0],
                vibration: found.vibration || weaker[1],
                disturbed: found.disturbed || weaker[2],
                water: found.water || weaker[3],
                ..found
            };
            for picked in [SoilClass::Rock, SoilClass::A, SoilClass::B, SoilClass::C] {
                let before = found.counted(picked, rules);
                prop_assert!(before.class >= picked);
                prop_assert!(more.counted(picked, rules).class >= before.class);
                prop_assert_eq!(before.lowered_by.is_empty(), before.class == picked);
            }
        }
    }

    #[test]
    fn nothing_found_and_nothing_known_leaves_everything_open() {
        let bounds = Evidence::default().bounds(ExcavationRules::us_federal());
        assert_eq!(bounds.firmest, SoilClass::Rock);
        assert_eq!(bounds.weakest, SoilClass::C);
    }

    #[test]
    fn a_strength_that_is_none_counts_as_the_weakest() {
        let found = Evidence {
            strength: Some(Strength::Tsf { value: f64::NAN }),
            ..Evidence::default()
        };
        let counted = found.counted(SoilClass::A, ExcavationRules::us_federal());
        assert_eq!(counted.class, SoilClass::C);
    }
}

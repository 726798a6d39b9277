//! Rules of cuts as a file writes them: lengths as texts with their unit.

use serde::Deserialize;

use super::asks::{self, Asks, Binds, RuleReminder};
use super::{
    BenchRule, Benches, Distress, Egress, ExcavationRules, Limit, LowerPart, Section, SetBack,
    Shield, ShortTerm, Slopes, StrengthLimits,
};
use crate::face::{FaceError, SoilClass};
use crate::length::{Length, parse};

/// Reads a file's text.
pub(super) fn read(text: &str) -> Result<ExcavationRules, FaceError> {
    let written: Written = toml::from_str(text).map_err(|error| FaceError::Rules {
        why: error.message().to_owned(),
    })?;
    written.read()
}

/// A limit as it is written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenLimit {
    depth: String,
    or_more: bool,
    binds: Option<Binds>,
    section: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenEgress {
    depth: String,
    or_more: bool,
    binds: Option<Binds>,
    travel: String,
    section: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenSpoil {
    set_back: String,
    section: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenReminder {
    what: Asks,
    deeper: Option<String>,
    from: Option<String>,
    section: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenDip {
    run: f64,
    #[serde(rename = "section")]
    _section: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenShort {
    a: f64,
    depth: String,
    hours: u32,
    section: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenBench {
    first: String,
    other: String,
    cohesive_alone: bool,
    section: String,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenBenches {
    a: Option<WrittenBench>,
    b: Option<WrittenBench>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenLower {
    class: SoilClass,
    depth: String,
    vertical: String,
    run_above: f64,
    section: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenShield {
    above: String,
    section: String,
}

/// The file as it is written: lengths as texts with their unit.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    name: String,
    source: String,
    egress: WrittenEgress,
    protection: WrittenLimit,
    engineer: WrittenLimit,
    spoil: WrittenSpoil,
    inspection: Section,
    also: Option<Vec<WrittenReminder>>,
    strength: StrengthLimits,
    dip: WrittenDip,
    slopes: Slopes,
    short_term: Option<WrittenShort>,
    distress: Distress,
    #[serde(default)]
    benches: WrittenBenches,
    #[serde(default)]
    lower: Vec<WrittenLower>,
    shield: WrittenShield,
}

fn length(what: &str, text: &str) -> Result<Length, FaceError> {
    let wrong = |why: String| FaceError::Rules {
        why: format!("{what} = “{text}”: {why}"),
    };
    let length = parse(text).map_err(|error| wrong(error.to_string()))?;
    if length < Length::ZERO {
        return Err(wrong("give zero or more.".into()));
    }
    Ok(length)
}

impl WrittenLimit {
    fn read(self, what: &str) -> Result<Limit, FaceError> {
        Ok(Limit {
            depth: length(what, &self.depth)?,
            or_more: self.or_more,
            binds: self.binds,
            section: self.section,
        })
    }
}

impl WrittenReminder {
    fn read(self) -> Result<RuleReminder, FaceError> {
        let (depth, or_more) = match (&self.deeper, &self.from) {
            (None, None) => (None, false),
            (Some(text), None) => (Some(length("deeper", text)?), false),
            (None, Some(text)) => (Some(length("from", text)?), true),
            (Some(_), Some(_)) => {
                return Err(FaceError::Rules {
                    why: "a reminder has `deeper` or `from`, not both.".into(),
                });
            }
        };
        Ok(RuleReminder {
            what: self.what,
            depth,
            or_more,
            section: self.section,
        })
    }
}

impl WrittenBench {
    fn read(self) -> Result<BenchRule, FaceError> {
        Ok(BenchRule {
            first: length("first", &self.first)?,
            other: length("other", &self.other)?,
            cohesive_alone: self.cohesive_alone,
            section: self.section,
        })
    }
}

impl Written {
    fn read(self) -> Result<ExcavationRules, FaceError> {
        let lower = self.lower.into_iter().map(|one| {
            Ok(LowerPart {
                class: one.class,
                depth: length("depth", &one.depth)?,
                vertical: length("vertical", &one.vertical)?,
                run_above: one.run_above,
                section: one.section,
            })
        });
        let mut lower = lower.collect::<Result<Vec<_>, FaceError>>()?;
        lower.sort_by_key(|one| (one.class, one.depth));
        let short_term = self.short_term.map(|one| {
            Ok(ShortTerm {
                a: one.a,
                depth: length("depth", &one.depth)?,
                hours: one.hours,
                section: one.section,
            })
        });
        let also = self.also.map(|list| {
            let each = list.into_iter().map(WrittenReminder::read);
            each.collect::<Result<Vec<_>, FaceError>>()
        });
        let also = also.transpose()?;
        let bench = |one: Option<WrittenBench>| one.map(WrittenBench::read).transpose();
        Ok(ExcavationRules {
            name: self.name,
            source: self.source,
            egress: Egress {
                travel: length("travel", &self.egress.travel)?,
                limit: Limit {
                    depth: length("depth", &self.egress.depth)?,
                    or_more: self.egress.or_more,
                    binds: self.egress.binds,
                    section: self.egress.section,
                },
            },
            protection: self.protection.read("depth")?,
            engineer: self.engineer.read("depth")?,
            spoil: SetBack {
                distance: length("set_back", &self.spoil.set_back)?,
                section: self.spoil.section,
            },
            inspection: self.inspection,
            also: also.unwrap_or_else(asks::federal),
            strength: self.strength,
            dip_run: self.dip.run,
            slopes: self.slopes,
            short_term: short_term.transpose()?,
            distress: self.distress,
            benches: Benches {
                a: bench(self.benches.a)?,
                b: bench(self.benches.b)?,
            },
            lower,
            shield: Shield {
                above: length("above", &self.shield.above)?,
                section: self.shield.section,
            },
        })
    }
}

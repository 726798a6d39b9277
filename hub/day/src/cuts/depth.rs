//! Which rule of depth comes next: said before the next tenth that breaks it, once for each state.

use contract::ToSchema;
use earthwork::face::{ExcavationRules, Limit};
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use super::plan::{CutKind, FaceZone};
use super::strip;
use crate::site::Site;
use crate::state::State;

/// Within this of a limit it is said: the next tenth breaks it.
const NEXT_TENTH: Length = Length::from_hundredths_of_a_foot(10);

/// A rule of depth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum DepthRule {
    /// A ladder, stair or ramp.
    Egress,
    /// Protection against a cave-in.
    Protection,
    /// An engineer's design.
    Engineer,
}

/// How near.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum DepthState {
    /// What is called digs past it.
    Ahead,
    /// The next tenth breaks it.
    NextTenth,
    /// It is owed.
    Owed,
}

/// A warning that was given.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Told {
    /// The face.
    pub zone: String,
    /// The rule.
    pub rule: DepthRule,
    /// How near.
    pub state: DepthState,
}

/// A rule of depth that is near.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct DepthWarning {
    /// The face.
    pub zone: String,
    /// The rule.
    pub rule: DepthRule,
    /// How near.
    pub state: DepthState,
    /// The rule's depth.
    pub limit: Length,
    /// What is left before it; nothing when it is owed.
    pub left: Length,
    /// How deep it is.
    pub depth: Length,
    /// The rule's section.
    pub section: String,
}

/// A mark that a rule of depth is owed at.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct DepthOwed {
    /// The mark.
    pub mark: String,
    /// The face.
    pub zone: String,
    /// The rule.
    pub rule: DepthRule,
    /// How deep it will be.
    pub depth: Length,
}

/// The rules of depth that bind a cut of this kind, gravest first.
fn limits<'a>(rules: &'a ExcavationRules, zone: &FaceZone) -> Vec<(DepthRule, &'a Limit)> {
    let trench = zone.kind == CutKind::Trench;
    let all = [
        (DepthRule::Engineer, &rules.engineer, rules.engineer.binds()),
        (
            DepthRule::Protection,
            &rules.protection,
            rules.protection.binds(),
        ),
        (DepthRule::Egress, &rules.egress.limit, rules.egress.binds()),
    ];
    let bound = all
        .into_iter()
        .filter(|(_, _, binds)| binds.holds_for(trench));
    bound.map(|(rule, limit, _)| (rule, limit)).collect()
}

/// How deep a place would be cut in a zone, from the ground over its toe.
fn depth(zone: &FaceZone, at: Point, bottom: Length) -> Option<Length> {
    let here = strip::on_toe(zone, at)?;
    Some((strip::ground(zone, here.at).ok()? - bottom).max(Length::ZERO))
}

fn zones_of<'a>(site: &'a Site, target: &'a str) -> impl Iterator<Item = &'a FaceZone> {
    site.cuts
        .faces
        .iter()
        .filter(move |zone| zone.target.as_deref() == Some(target))
}

/// The warnings that a reading brings and that were not given before, gravest first.
pub(crate) fn warnings(
    state: &State,
    target: &str,
    at: Point,
    measured: Length,
    dig_to: Length,
) -> Vec<DepthWarning> {
    let Some(site) = state.site() else {
        return vec![];
    };
    let rules = site.cuts.rules();
    let mut found = Vec::new();
    for zone in zones_of(site, target) {
        let (Some(is), Some(will)) = (depth(zone, at, measured), depth(zone, at, dig_to)) else {
            continue;
        };
        for (rule, limit) in limits(rules, zone) {
            let near = if limit.owed(is) {
                DepthState::Owed
            } else if limit.owed(will) {
                DepthState::Ahead
            } else if limit.depth - is <= NEXT_TENTH {
                DepthState::NextTenth
            } else {
                continue;
            };
            let told = state
                .cuts
                .told
                .iter()
                .any(|told| told.zone == zone.id && told.rule == rule && told.state >= near);
            if !told {
                found.push(DepthWarning {
                    zone: zone.id.clone(),
                    rule,
                    state: near,
                    limit: limit.depth,
                    left: (limit.depth - is).max(Length::ZERO),
                    depth: is,
                    section: limit.section.clone(),
                });
            }
        }
    }
    found
}

/// How deep each mark of a target is to be dug below the ground before the cut, in each of its zones.
fn at_marks<'a>(
    site: &'a Site,
    target: &'a str,
) -> impl Iterator<Item = (&'a FaceZone, &'a str, Length)> {
    let grade = site.target(target);
    let own = move |zone: &'a FaceZone| {
        let marks = site.marks.iter();
        let of_target = marks.filter(move |mark| mark.target.as_deref() == Some(target));
        of_target.filter_map(move |mark| {
            let dig_to = crate::said::reading::dig_to(grade?, mark, None).ok()?;
            Some((zone, mark.id.as_str(), depth(zone, mark.place, dig_to)?))
        })
    };
    zones_of(site, target).flat_map(own)
}

/// How deep the marks of a target are to be dug.
pub(crate) fn planned(site: &Site, target: &str) -> Vec<(String, Length)> {
    at_marks(site, target)
        .map(|(_, mark, depth)| (mark.to_owned(), depth))
        .collect()
}

/// What the marks of a target owe at their dig-to.
pub(crate) fn owed(site: &Site, target: &str) -> Vec<DepthOwed> {
    let rules = site.cuts.rules();
    let owed = at_marks(site, target).filter_map(|(zone, mark, depth)| {
        let mut limits = limits(rules, zone).into_iter();
        let (rule, _) = limits.find(|(_, limit)| limit.owed(depth))?;
        Some(DepthOwed {
            mark: mark.to_owned(),
            zone: zone.id.clone(),
            rule,
            depth,
        })
    });
    owed.collect()
}

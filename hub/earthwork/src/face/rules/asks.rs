//! Which cuts a rule binds, and what the rules ask that no reading shows.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::ExcavationRules;
use crate::length::Length;

/// Which cuts a rule binds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Binds {
    /// Every excavation: open faces, pits and trenches.
    EveryCut,
    /// Trenches alone.
    Trenches,
}

impl Binds {
    /// Whether it binds a cut that is a trench, or is none.
    pub fn holds_for(self, trench: bool) -> bool {
        trench || self == Self::EveryCut
    }
}

/// What a rule asks of a cut that no reading shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Asks {
    /// Nobody under a bucket or a hoisted load, or beside a vehicle that is loaded.
    FallingLoads,
    /// A warning at an edge that a machine comes near and its cab can't see.
    MobileEquipment,
    /// The air is tested before anybody goes in where it could be bad.
    Atmosphere,
    /// Nobody works in gathered water without precautions.
    Water,
    /// An edge that can't readily be seen is railed or barricaded.
    Edge,
}

/// A reminder of what a rule asks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct RuleReminder {
    /// What.
    pub what: Asks,
    /// From which depth; at any when none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub depth: Option<Length>,
    /// At that depth already, else only beyond it.
    #[serde(default)]
    pub or_more: bool,
    /// The rule.
    pub section: String,
}

impl RuleReminder {
    /// Whether it applies to a cut of this depth.
    pub fn applies(&self, depth: Length) -> bool {
        self.depth
            .is_none_or(|from| depth > from || self.or_more && depth == from)
    }
}

/// Rules that were stored or written before reminders were data have those of the US federal rules.
pub(super) fn federal() -> Vec<RuleReminder> {
    ExcavationRules::us_federal().also.clone()
}

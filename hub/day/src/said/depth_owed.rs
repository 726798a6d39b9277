//! What a revised target owes at its new depth, said before it is dug.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::cuts::depth::{self, DepthOwed};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::site::Site;
use crate::state::State;

/// A revised target owes what the old one did not.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct TargetOwes {
    /// The target.
    pub target: String,
    /// Each mark with the gravest rule.
    pub owed: Vec<DepthOwed>,
}

impl Happening for TargetOwes {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, _state: &mut State, _entry: &Entry) {
        // Nothing is current by it: it is there to be read.
    }
}

/// What a target's new revision owes and its old one did not.
pub(crate) fn newly(old: &Site, new: &Site, target: &str) -> Option<Body> {
    let before = depth::owed(old, target);
    let owed: Vec<DepthOwed> = depth::owed(new, target)
        .into_iter()
        .filter(|one| {
            !before
                .iter()
                .any(|was| (&was.mark, &was.zone, was.rule) == (&one.mark, &one.zone, one.rule))
        })
        .collect();
    (!owed.is_empty()).then(|| {
        Body::DepthOwed(TargetOwes {
            target: target.to_owned(),
            owed,
        })
    })
}

//! What pages changed since the file in force: another file that says otherwise undoes it, and says so before it is in force.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{SiteDifference, compare};
use crate::asked::Asked;
use crate::entry::{Body, Entry};
use crate::state::State;
use crate::time::Time;

/// A change that was made on a page.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct PageChange {
    /// When.
    pub at: Time,
    /// By whom.
    pub by: String,
    /// Why.
    pub why: String,
    /// What changed: the paths of the differences.
    pub what: Vec<String>,
}

/// A page's change that a file would undo.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Undone {
    /// What: `targets EAST grade shape elevation`.
    pub what: String,
    /// As the page left it; none when the page took it out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub was: Option<String>,
    /// As the file has it; none when the file does not have it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub becomes: Option<String>,
    /// When the page changed it.
    pub at: Time,
    /// Who changed it there.
    pub by: String,
    /// Why.
    pub why: String,
}

/// What comes of a revision by itself, and what a second person adds to it, is no change of the plan.
const OF_ITSELF: [&str; 3] = [" revision", " typed by", " proved by"];

/// Whether one path is the other, or a part of it.
fn meet(one: &str, other: &str) -> bool {
    let within = |whole: &str, part: &str| {
        part.strip_prefix(whole)
            .is_some_and(|rest| rest.is_empty() || rest.starts_with(' '))
    };
    within(one, other) || within(other, one)
}

/// What of the pages' changes the differences take back; the newest change of each is named.
pub(super) fn undone(by_page: &[PageChange], differences: &[SiteDifference]) -> Vec<Undone> {
    let each = differences.iter().filter_map(|one| {
        if OF_ITSELF.iter().any(|end| one.what.ends_with(end)) {
            return None;
        }
        let mut newest = by_page.iter().rev();
        let page = newest.find(|page| page.what.iter().any(|what| meet(what, &one.what)))?;
        Some(Undone {
            what: one.what.clone(),
            was: one.was.clone(),
            becomes: one.now.clone(),
            at: page.at,
            by: page.by.clone(),
            why: page.why.clone(),
        })
    });
    each.collect()
}

/// Keeps a page's change in mind.
pub(crate) fn by_page(state: &mut State, entry: &Entry, why: &str, differences: &[SiteDifference]) {
    let what = differences.iter().map(|one| one.what.clone());
    let what: Vec<String> = what
        .filter(|what| !OF_ITSELF.iter().any(|end| what.ends_with(end)))
        .collect();
    if let Some(in_force) = state.site.as_mut().filter(|_| !what.is_empty()) {
        in_force.by_page.push(PageChange {
            at: entry.at,
            by: entry.by.person.clone(),
            why: why.to_owned(),
            what,
        });
    }
}

/// A file that waits is held against what the site is after a page's change, so that nobody confirms what was shown before.
pub(crate) fn held_anew(state: &State, asked: &Asked, now: Time, bodies: &[Body]) -> Option<Body> {
    let waits = state.site_change.as_ref()?;
    let of_page = |body: &Body| matches!(body, Body::SiteChanged(_) | Body::TargetRevised(_));
    if !bodies.iter().any(of_page) {
        return None;
    }
    let mut then = state.clone();
    for body in bodies {
        let entry = Entry {
            seq: 0,
            at: now,
            made_at: asked.made_at.min(now),
            by: asked.by.clone(),
            key: asked.key.clone(),
            body: body.clone(),
        };
        crate::apply(&mut then, &entry);
    }
    compare(&then, &waits.found.site).map(Body::SiteChangeFound)
}

//! The site file becomes entries: taken the first time, shown as a difference later, revised on a supervisor's word.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::call::Ending;
use crate::chain;
use crate::cuts::daylight;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::plan_sense::{self, Odd};
use crate::refusal::Refusal;
use crate::said::touched::{self, Touched};
use crate::said::{call, check_shot, stop};
use crate::saying::{Asking, Closed, Saying};
use crate::site::{Machine, Site, Target};
use crate::state::{MustSee, PendingChange, SiteInForce, State};

mod differences;
mod undone;

pub(crate) use differences::target_differences;
pub use differences::{SiteDifference, differences};
pub use undone::{PageChange, Undone};
pub(crate) use undone::{by_page, held_anew};

/// The hub has read the site file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReadSite {
    /// What it says.
    pub site: Site,
}

impl Saying for ReadSite {
    const BY: &'static [Role] = &[Role::Hub];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        Ok(read(at.state, self))
    }
}

/// A supervisor takes the changed file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ConfirmSite {
    /// The digest of the change as it was shown, so that nothing else is confirmed.
    pub digest: String,
}

impl Saying for ConfirmSite {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        confirm(at.state, self)
    }
}

/// The first site file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteTaken {
    /// The site.
    pub site: Site,
    /// SHA-256 of the site as canonical JSON, in hex.
    pub digest: String,
}

impl Happening for SiteTaken {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_taken(state, self);
    }
}

/// The file differs from the site in force; with no differences, it is the same again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteChangeFound {
    /// What the file says now.
    pub site: Site,
    /// Its digest.
    pub digest: String,
    /// What differs.
    pub differences: Vec<SiteDifference>,
    /// What is odd about the new plan.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub odd: Vec<Odd>,
    /// The marks, calls and acceptances that it would touch.
    #[serde(default)]
    pub touches: Touched,
    /// What was changed on a page since the file that is in force, and would be undone.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub undoes: Vec<Undone>,
}

impl Happening for SiteChangeFound {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_found(state, entry, self);
    }
}

/// A changed site file is in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteRevised {
    /// The site.
    pub site: Site,
    /// Its digest.
    pub digest: String,
    /// What changed.
    pub differences: Vec<SiteDifference>,
    /// The operators who must see a changed target before they are called again.
    pub must_see: Vec<NewTarget>,
    /// The marks, calls and acceptances that it touches.
    #[serde(default)]
    pub touches: Touched,
}

impl Happening for SiteRevised {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_revised(state, entry, self);
    }
}

/// A changed target that one machine's operator must see.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct NewTarget {
    /// The machine.
    pub machine: String,
    /// The target.
    pub target: String,
    /// Its new revision; 0 when it is gone.
    pub revision: u32,
}

/// The site as canonical JSON gives this digest.
fn digest_of(site: &Site) -> String {
    // A site is plain data: writing it can't fail. An empty text would only show as a change.
    chain::digest(&serde_json::to_vec(site).unwrap_or_default())
}

/// Takes the first site; shows a later one as a difference.
pub(crate) fn read(state: &State, asked: &ReadSite) -> Vec<Body> {
    let site = asked.site.clone();
    let digest = digest_of(&site);
    let Some(in_force) = &state.site else {
        return vec![Body::SiteTaken(SiteTaken { site, digest })];
    };
    let shown = state
        .site_change
        .as_ref()
        .map(|change| &change.found.digest);
    let already = match shown {
        Some(shown) => *shown == digest,
        None => in_force.digest == digest,
    };
    if already {
        return vec![];
    }
    vec![Body::SiteChangeFound(compared(
        state, in_force, site, digest,
    ))]
}

/// What a file differs in from the site in force, what that touches, and what of the pages' changes it would undo; none
/// before there is a site.
pub fn compare(state: &State, file: &Site) -> Option<SiteChangeFound> {
    let in_force = state.site.as_ref()?;
    Some(compared(state, in_force, file.clone(), digest_of(file)))
}

fn compared(state: &State, in_force: &SiteInForce, site: Site, digest: String) -> SiteChangeFound {
    let mut comparable = site.clone();
    keep_added(state, &mut comparable);
    for target in &mut comparable.targets {
        // A file knows nothing of revisions: they are counted here.
        if let Some(before) = in_force.site.target(&target.id) {
            target.revision = before.revision;
            keep_proof(before, target);
        }
    }
    let differences = differences(&in_force.site, &comparable);
    SiteChangeFound {
        odd: plan_sense::odd(&site),
        touches: touched::touched(state, &in_force.site, &comparable),
        undoes: undone::undone(&in_force.by_page, &differences),
        site,
        digest,
        differences,
    }
}

/// A second person's proof stands as long as the grade does, even when the file does not name that person.
fn keep_proof(before: &Target, after: &mut Target) {
    if before.grade == after.grade && after.proved_by.is_none() {
        after.typed_by.clone_from(&before.typed_by);
        after.proved_by.clone_from(&before.proved_by);
    }
}

/// Benchmarks that a supervisor added on site stay, until the file has one of that name.
fn keep_added(state: &State, site: &mut Site) {
    let Some(in_force) = state.site() else { return };
    for id in &state.added_benchmarks {
        if site.benchmark(id).is_none() {
            site.benchmarks.extend(in_force.benchmark(id).cloned());
        }
    }
}

/// Puts the changed site in force; live calls on changed targets are withdrawn until seen.
pub(crate) fn confirm(state: &State, asked: &ConfirmSite) -> Result<Vec<Body>, Refusal> {
    let Some(change) = &state.site_change else {
        return Err(Refusal::NoSiteChange);
    };
    if change.found.digest != asked.digest {
        return Err(Refusal::SiteChangedAgain);
    }
    let old = state.site().ok_or(Refusal::NoSite)?;
    let mut site = change.found.site.clone();
    keep_added(state, &mut site);
    for target in &mut site.targets {
        if let Some(before) = old.target(&target.id) {
            let changed = before.grade != target.grade || before.tolerance != target.tolerance;
            target.revision = before.revision + u32::from(changed);
            keep_proof(before, target);
        }
    }
    not_while_left(state, old, &site)?;
    let (mut bodies, must_see) = must_look(state, old, &site);
    let daylight = daylight::anew(state, &site);
    bodies.push(Body::SiteRevised(SiteRevised {
        touches: touched::touched(state, old, &site),
        site,
        digest: asked.digest.clone(),
        differences: change.found.differences.clone(),
        must_see,
    }));
    bodies.extend(daylight.into_iter().map(Body::DaylightFound));
    Ok(bodies)
}

/// A face that was left is neither drawn anew nor retired, on a page or in the file: calls under it would go out again, and nobody
/// has inspected it.
pub(crate) fn not_while_left(state: &State, old: &Site, new: &Site) -> Result<(), Refusal> {
    let touched = old.cuts.faces.iter().find(|face| {
        let left = state.cuts.face(&face.id);
        left.is_some_and(|now| now.alarm.is_some()) && new.cuts.face(&face.id) != Some(*face)
    });
    match touched {
        Some(face) => Err(Refusal::BadSite(words::change::face_is_left(&face.id))),
        None => Ok(()),
    }
}

/// Ends the live calls whose target or mark a new site changes, and says which operators must see it first.
pub(crate) fn must_look(state: &State, old: &Site, new: &Site) -> (Vec<Body>, Vec<NewTarget>) {
    let changed = |machine: &str| {
        let (_, call) = state.live_call(machine)?;
        let id = call.sent.target.clone()?;
        let revision = new.target(&id).map_or(0, |target| target.revision);
        let moved = call.sent.mark.as_deref().is_some_and(|mark| {
            old.mark(mark).map(|mark| mark.place) != new.mark(mark).map(|mark| mark.place)
        });
        (moved || Some(revision) != call.sent.revision).then_some(NewTarget {
            machine: machine.to_owned(),
            target: id,
            revision,
        })
    };
    let must_see: Vec<NewTarget> = state.cabs.keys().filter_map(|one| changed(one)).collect();
    let ended = must_see
        .iter()
        .filter_map(|new| call::end_live(state, &new.machine, Ending::StaleByTarget));
    let mut bodies: Vec<Body> = ended.collect();
    bodies.extend(check_shot::benchmarks_changed(state, old, new));
    bodies.extend(stop::newcomers(state, old, new));
    (bodies, must_see)
}

pub(crate) fn apply_taken(state: &mut State, body: &SiteTaken) {
    state.site = Some(SiteInForce {
        site: body.site.clone(),
        digest: body.digest.clone(),
        by_page: vec![],
    });
    seat_machines(state, &[]);
}

pub(crate) fn apply_found(state: &mut State, entry: &Entry, body: &SiteChangeFound) {
    state.site_change = (!body.differences.is_empty()).then(|| PendingChange {
        found: body.clone(),
        since: entry.at,
    });
}

pub(crate) fn apply_revised(state: &mut State, entry: &Entry, body: &SiteRevised) {
    let before = state
        .site()
        .map_or_else(Vec::new, |site| site.machines.clone());
    state.site = Some(SiteInForce {
        site: body.site.clone(),
        digest: body.digest.clone(),
        by_page: vec![],
    });
    state.site_change = None;
    seat_machines(state, &before);
    for new in &body.must_see {
        state.cab_mut(&new.machine).must_see = Some(MustSee {
            target: new.target.clone(),
            revision: new.revision,
            since: entry.at,
        });
    }
}

/// Every machine of the site has a cab, even before anyone joins for it; one that the site has no more keeps what it was.
pub(crate) fn seat_machines(state: &mut State, before: &[Machine]) {
    let machines = state
        .site()
        .map_or_else(Vec::new, |site| site.machines.clone());
    for gone in before {
        if machines.iter().all(|machine| machine.id != gone.id) {
            state.cab_mut(&gone.id).was = Some(gone.clone());
        }
    }
    for machine in &machines {
        state.cab_mut(&machine.id).was = None;
    }
}

#[cfg(test)]
mod tests;

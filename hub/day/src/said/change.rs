//! A supervisor changes the site on a page: things are added, changed or retired, each change with its reason.

use contract::ToSchema;
use earthwork::alignment::StationOffset;
use earthwork::length::Length;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::chain;
use crate::cuts::daylight;
use crate::cuts::plan::{FaceZone, OverheadLine, Pile, Structure, Ticket, Utility};
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::depth_owed;
use crate::said::site::{
    NewTarget, SiteDifference, by_page, differences, must_look, not_while_left, seat_machines,
};
use crate::said::touched::{Touched, touched};
use crate::saying::{Asking, Closed, Saying};
use crate::site::drawn::{DrawnTarget, drawn};
use crate::site::{Benchmark, Frame, Laser, Line, Machine, Mark, Rules, Site, Target};
use crate::site_faults::{self, SiteFault};
use crate::state::{MustSee, State};
use earthwork::rod::Rod;

/// The lists of a site whose things have names.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Listed {
    /// Points of known elevation.
    Benchmark,
    /// Property, easement, setback and limit lines.
    Line,
    /// The grades to reach.
    Target,
    /// The layout marks.
    Mark,
    /// The machines.
    Machine,
    /// The rods.
    Rod,
    /// The lasers.
    Laser,
    /// The lines overhead.
    Overhead,
    /// The piles.
    Pile,
    /// The faces and trenches.
    Face,
    /// The footings and walls behind them.
    Structure,
    /// The buried lines.
    Utility,
    /// The locate tickets.
    Ticket,
}

/// A thing of the site, whole: it takes the place of the one of its name, or is new.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "list", content = "thing", rename_all = "snake_case")]
pub enum SiteThing {
    /// A point of known elevation.
    Benchmark(Benchmark),
    /// A line on the plan.
    Line(Line),
    /// A grade to reach.
    Target(Box<Target>),
    /// A layout mark.
    Mark(Mark),
    /// A machine.
    Machine(Machine),
    /// A rod.
    Rod(Rod),
    /// A laser.
    Laser(Laser),
    /// A line overhead.
    Overhead(OverheadLine),
    /// A pile.
    Pile(Pile),
    /// A face or a trench.
    Face(Box<FaceZone>),
    /// A footing or wall behind a cut.
    Structure(Structure),
    /// A buried line.
    Utility(Utility),
    /// A locate ticket.
    Ticket(Ticket),
    /// What the site has settled on.
    Rules(Box<Rules>),
    /// How the plan's coordinates come on to the site.
    Frame(Frame),
}

/// A thing that is no longer part of the site; what was said about it stays in the log.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Retired {
    /// Of which list.
    pub list: Listed,
    /// Its name.
    pub id: String,
}

/// A supervisor changes the site.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ChangeSite {
    /// What is added or takes the place of what was.
    pub put: Vec<SiteThing>,
    /// What goes.
    pub retire: Vec<Retired>,
    /// Why, and on whose word.
    pub why: String,
    /// The digest of the differences as they were shown, so that nothing else is put in force.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seen: Option<String>,
}

impl Saying for ChangeSite {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        change(at.state, at.by, self)
    }
}

/// The site was changed by a supervisor.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteChanged {
    /// What was added or took the place of what was, with what follows: marks that move with their run, machines
    /// whose target is gone.
    pub put: Vec<SiteThing>,
    /// What went.
    pub retire: Vec<Retired>,
    /// Why.
    pub why: String,
    /// What changed.
    pub differences: Vec<SiteDifference>,
    /// The operators who must see a changed target before they are called again.
    pub must_see: Vec<NewTarget>,
    /// The marks, calls and acceptances that it touches.
    pub touches: Touched,
}

impl Happening for SiteChanged {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_changed(state, entry, self);
    }
}

/// What a change would do, before anybody says it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct WouldChange {
    /// What would be put, with what follows from it.
    pub put: Vec<SiteThing>,
    /// Where the lines of targets among it run, and what to dig to along them.
    pub drawn: Vec<DrawnTarget>,
    /// What is wrong or odd about the site then and is not so now.
    pub faults: Vec<SiteFault>,
    /// What would change.
    pub differences: Vec<SiteDifference>,
    /// The marks, calls and acceptances that it would touch.
    pub touches: Touched,
    /// The digest of the differences, to be sent with the change.
    pub seen: String,
}

impl WouldChange {
    /// The same with nets that a phone can draw.
    #[must_use]
    pub fn for_screens(mut self) -> Self {
        for one in &mut self.put {
            if let SiteThing::Target(target) = one {
                target.grade = target.grade.for_screens();
            }
        }
        self
    }
}

impl SiteThing {
    /// Its name; none for what a site has once.
    pub fn id(&self) -> Option<&str> {
        match self {
            SiteThing::Benchmark(one) => Some(&one.id),
            SiteThing::Line(one) => Some(&one.id),
            SiteThing::Target(one) => Some(&one.id),
            SiteThing::Mark(one) => Some(&one.id),
            SiteThing::Machine(one) => Some(&one.id),
            SiteThing::Rod(one) => Some(&one.id),
            SiteThing::Laser(one) => Some(&one.id),
            SiteThing::Overhead(one) => Some(&one.id),
            SiteThing::Pile(one) => Some(&one.id),
            SiteThing::Face(one) => Some(&one.id),
            SiteThing::Structure(one) => Some(&one.id),
            SiteThing::Utility(one) => Some(&one.id),
            SiteThing::Ticket(one) => Some(&one.id),
            SiteThing::Rules(_) | SiteThing::Frame(_) => None,
        }
    }

    /// Puts it into a site: in the place of the one of its name, or last.
    fn put_into(self, site: &mut Site) {
        match self {
            SiteThing::Benchmark(one) => put(&mut site.benchmarks, one, |one| &one.id),
            SiteThing::Line(one) => put(&mut site.lines, one, |one| &one.id),
            SiteThing::Target(one) => put(&mut site.targets, *one, |one| &one.id),
            SiteThing::Mark(one) => put(&mut site.marks, one, |one| &one.id),
            SiteThing::Machine(one) => put(&mut site.machines, one, |one| &one.id),
            SiteThing::Rod(one) => put(&mut site.rods, one, |one| &one.id),
            SiteThing::Laser(one) => put(&mut site.lasers, one, |one| &one.id),
            SiteThing::Overhead(one) => put(&mut site.cuts.overheads, one, |one| &one.id),
            SiteThing::Pile(one) => put(&mut site.cuts.piles, one, |one| &one.id),
            SiteThing::Face(one) => put(&mut site.cuts.faces, *one, |one| &one.id),
            SiteThing::Structure(one) => put(&mut site.cuts.structures, one, |one| &one.id),
            SiteThing::Utility(one) => put(&mut site.cuts.utilities, one, |one| &one.id),
            SiteThing::Ticket(one) => put(&mut site.cuts.tickets, one, |one| &one.id),
            SiteThing::Rules(one) => site.rules = *one,
            SiteThing::Frame(one) => site.frame = Some(one),
        }
    }
}

fn put<T>(list: &mut Vec<T>, thing: T, id: fn(&T) -> &String) {
    match list.iter_mut().find(|one| id(one) == id(&thing)) {
        Some(place) => *place = thing,
        None => list.push(thing),
    }
}

/// Takes a thing out of a site; whether it was there.
fn take_out(site: &mut Site, gone: &Retired) -> bool {
    fn without<T>(list: &mut Vec<T>, gone: &str, id: fn(&T) -> &String) -> bool {
        let before = list.len();
        list.retain(|one| id(one) != gone);
        list.len() < before
    }
    match gone.list {
        Listed::Benchmark => without(&mut site.benchmarks, &gone.id, |one| &one.id),
        Listed::Line => without(&mut site.lines, &gone.id, |one| &one.id),
        Listed::Target => without(&mut site.targets, &gone.id, |one| &one.id),
        Listed::Mark => without(&mut site.marks, &gone.id, |one| &one.id),
        Listed::Machine => without(&mut site.machines, &gone.id, |one| &one.id),
        Listed::Rod => without(&mut site.rods, &gone.id, |one| &one.id),
        Listed::Laser => without(&mut site.lasers, &gone.id, |one| &one.id),
        Listed::Overhead => without(&mut site.cuts.overheads, &gone.id, |one| &one.id),
        Listed::Pile => without(&mut site.cuts.piles, &gone.id, |one| &one.id),
        Listed::Face => without(&mut site.cuts.faces, &gone.id, |one| &one.id),
        Listed::Structure => without(&mut site.cuts.structures, &gone.id, |one| &one.id),
        Listed::Utility => without(&mut site.cuts.utilities, &gone.id, |one| &one.id),
        Listed::Ticket => without(&mut site.cuts.tickets, &gone.id, |one| &one.id),
    }
}

fn thing(list: Listed) -> Thing {
    match list {
        Listed::Benchmark => Thing::Benchmark,
        Listed::Line => Thing::Line,
        Listed::Target => Thing::Target,
        Listed::Mark => Thing::Mark,
        Listed::Machine => Thing::Machine,
        Listed::Rod => Thing::Rod,
        Listed::Laser => Thing::Laser,
        Listed::Overhead => Thing::Overhead,
        Listed::Pile => Thing::Pile,
        Listed::Face => Thing::Face,
        Listed::Structure => Thing::Structure,
        Listed::Utility => Thing::Utility,
        Listed::Ticket => Thing::Ticket,
    }
}

/// The site as it would be, and what is put for it.
fn after(old: &Site, by: &By, asked: &ChangeSite) -> Result<(Site, Vec<SiteThing>), Refusal> {
    let mut new = old.clone();
    for gone in &asked.retire {
        if !take_out(&mut new, gone) {
            return Err(Refusal::Unknown {
                what: thing(gone.list),
                name: gone.id.clone(),
            });
        }
    }
    let mut things: Vec<SiteThing> = asked.put.clone();
    for one in &mut things {
        if let SiteThing::Target(target) = one {
            count_revision(old, by, target);
        }
    }
    for one in &things {
        one.clone().put_into(&mut new);
    }
    let follows: Vec<SiteThing> = moved_with_their_run(old, &new, &things)
        .into_iter()
        .chain(no_longer_on(&new, asked))
        .collect();
    for one in &follows {
        one.clone().put_into(&mut new);
    }
    things.extend(follows);
    Ok((new, things))
}

/// A changed grade is a new revision that whoever changes it has typed; a second person has yet to.
fn count_revision(old: &Site, by: &By, target: &mut Target) {
    let before = old.target(&target.id);
    target.revision = before.map_or(1, |before| {
        let changed = before.grade != target.grade || before.tolerance != target.tolerance;
        before.revision + u32::from(changed)
    });
    if let Some(before) = before.filter(|before| before.grade == target.grade) {
        target.typed_by.clone_from(&before.typed_by);
        target.proved_by.clone_from(&before.proved_by);
    } else {
        target.typed_by = Some(by.person.clone());
        target.proved_by = None;
    }
}

/// A machine does not work on a target that is gone.
fn no_longer_on(new: &Site, asked: &ChangeSite) -> Vec<SiteThing> {
    let gone = |id: &String| {
        let retired = |one: &Retired| one.list == Listed::Target && one.id == *id;
        asked.retire.iter().any(retired) && new.target(id).is_none()
    };
    let touched = new
        .machines
        .iter()
        .filter(|one| one.works_on.iter().any(gone));
    let without = touched.map(|one| {
        let mut machine = one.clone();
        machine.works_on.retain(|id| !gone(id));
        SiteThing::Machine(machine)
    });
    without.collect()
}

/// Marks that were given by station stay at their station when their run moves.
fn moved_with_their_run(old: &Site, new: &Site, things: &[SiteThing]) -> Vec<SiteThing> {
    let given = |id: &str| {
        things
            .iter()
            .any(|one| matches!(one, SiteThing::Mark(mark) if mark.id == id))
    };
    let moved = new.marks.iter().filter_map(|mark| {
        let target = new.target_of(mark)?;
        let before = old.target(&target.id)?;
        if before.grade == target.grade || given(&mark.id) {
            return None;
        }
        let offset = mark.offset.unwrap_or(Length::ZERO);
        let station = mark.station?;
        let place = target.grade.place(StationOffset { station, offset }).ok()?;
        (place != mark.place).then(|| {
            SiteThing::Mark(Mark {
                place,
                ..mark.clone()
            })
        })
    });
    moved.collect()
}

/// What is wrong or odd about the new site and is not so about the old.
fn new_faults(old: &Site, new: &Site) -> Vec<SiteFault> {
    let known = site_faults::faults(old);
    let mut found = site_faults::faults(new);
    found.retain(|fault| !known.contains(fault));
    found
}

fn digest(differences: &[SiteDifference]) -> String {
    // Plain data: writing it can't fail. An empty text would only show as a change.
    chain::digest(&serde_json::to_vec(differences).unwrap_or_default())
}

/// What a change would do.
///
/// # Errors
/// When there is no site, or a thing that is to go is not there.
pub fn would(state: &State, by: &By, asked: &ChangeSite) -> Result<WouldChange, Refusal> {
    let old = state.site().ok_or(Refusal::NoSite)?;
    let (new, put) = after(old, by, asked)?;
    let differences = differences(old, &new);
    let drawn = put.iter().filter_map(|one| match one {
        SiteThing::Target(target) => drawn(target),
        _ => None,
    });
    Ok(WouldChange {
        drawn: drawn.collect(),
        put,
        faults: new_faults(old, &new),
        touches: touched(state, old, &new),
        seen: digest(&differences),
        differences,
    })
}

pub(crate) fn change(state: &State, by: &By, asked: &ChangeSite) -> Result<Vec<Body>, Refusal> {
    let old = state.site().ok_or(Refusal::NoSite)?;
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(
            words::change::why_site_changes_whose_word(),
        ));
    }
    let (new, put) = after(old, by, asked)?;
    not_while_left(state, old, &new)?;
    let wrong = new_faults(old, &new)
        .into_iter()
        .find(|fault| !fault.warning);
    if let Some(fault) = wrong {
        return Err(Refusal::BadSite(fault.text));
    }
    let differences = differences(old, &new);
    if asked
        .seen
        .as_ref()
        .is_some_and(|seen| *seen != digest(&differences))
    {
        return Err(Refusal::SiteChangedAgain);
    }
    if differences.is_empty() {
        return Ok(vec![]);
    }
    let (mut bodies, must_see) = must_look(state, old, &new);
    bodies.push(Body::SiteChanged(SiteChanged {
        touches: touched(state, old, &new),
        put,
        retire: asked.retire.clone(),
        why: asked.why.trim().to_owned(),
        differences,
        must_see,
    }));
    for target in &new.targets {
        bodies.extend(depth_owed::newly(old, &new, &target.id));
    }
    let daylight = daylight::anew(state, &new).into_iter();
    bodies.extend(daylight.map(Body::DaylightFound));
    Ok(bodies)
}

pub(crate) fn apply_changed(state: &mut State, entry: &Entry, body: &SiteChanged) {
    let Some(in_force) = &mut state.site else {
        return;
    };
    let before = in_force.site.machines.clone();
    for gone in &body.retire {
        take_out(&mut in_force.site, gone);
        if gone.list == Listed::Benchmark {
            state.added_benchmarks.retain(|id| *id != gone.id);
        }
    }
    for one in &body.put {
        if let SiteThing::Target(target) = one {
            state.typed_apart.remove(&target.id);
        }
        one.clone().put_into(&mut in_force.site);
    }
    by_page(state, entry, &body.why, &body.differences);
    seat_machines(state, &before);
    for new in &body.must_see {
        state.cab_mut(&new.machine).must_see = Some(MustSee {
            target: new.target.clone(),
            revision: new.revision,
            since: entry.at,
        });
    }
}

#[cfg(test)]
mod tests;

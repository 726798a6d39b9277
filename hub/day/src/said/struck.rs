//! A buried line was struck: everybody gets away from gas, every machine on that main stands still, and nobody is called near
//! it before a supervisor says on whose word work goes on.
//!
//! Whoever damages a pipeline tells its owner at once, and where it leaks calls 911 first (49 CFR 196.107 and 196.109). A line
//! that nobody has drawn counts as gas until somebody knows.

use contract::ToSchema;
use earthwork::keep_out::PLACE_TOO_OLD_MS;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::asked::{By, Role};
use crate::call::Ending;
use crate::cuts::buried::{from_line, half};
use crate::cuts::held::HeldBy;
use crate::cuts::plan::{Utility, UtilityKind};
use crate::cuts::strip;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::call;
use crate::said::stop::Stopped;
use crate::saying::{Asking, Closed, Saying};
use crate::site::Site;
use crate::state::State;
use crate::time::Time;

/// Round leaking gas: 330 ft on every hand to begin with (the US transport department's emergency response guidebook, guide
/// 115, as a public pipeline guideline prints it).
const ROUND_GAS: Length = Length::from_hundredths_of_a_foot(33_000);
/// Round another line, beyond its own band (common practice).
const ROUND_ANOTHER: Length = Length::from_hundredths_of_a_foot(500);

/// A line was struck.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayStruck {
    /// Which; none when it is not drawn.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line: Option<String>,
    /// The mark where it happened.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
}

impl Saying for SayStruck {
    const BY: &'static [Role] = &[Role::Ground, Role::Operator, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        say(at.state, at.by, self, at.when.now)
    }
}

/// A line was struck, or may have been.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct LineStruck {
    /// The drawn lines that it may be; none when no drawn line runs there.
    pub lines: Vec<String>,
    /// What runs in the gravest of them.
    pub carries: UtilityKind,
    /// Whom to call, as the ticket or the site file says.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub call: String,
    /// It is in the way, as a cab says; that it was hit nobody has said.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub met: bool,
    /// The machine that met it, when its cab said so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// Where, as far as anybody knows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at: Option<Point>,
}

impl Happening for LineStruck {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply(state, entry, self);
    }
}

/// A struck line, while it stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct StruckNow {
    /// What was said.
    pub struck: LineStruck,
    /// Since when.
    pub since: Time,
    /// By whom.
    pub by: String,
}

/// What everybody does about it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum StruckDo {
    /// Gas, or nobody knows what: everybody gets away, then calls.
    GetAway,
    /// Power: whatever touches it is live.
    Live,
    /// Another line: nobody digs or touches.
    TouchNothing,
    /// A line that nobody has drawn was met: touch nothing; away when it was hit.
    NotKnown,
}

/// A struck line, as the screens show it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct StruckCard {
    /// The drawn lines that it may be.
    pub lines: Vec<String>,
    /// What to do.
    pub what: StruckDo,
    /// Whom to call after the emergency number.
    pub call: String,
    /// Which machine met it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<String>,
    /// Since when.
    pub since: Time,
    /// By whom.
    pub by: String,
}

impl LineStruck {
    fn not_drawn_and_only_met(&self) -> bool {
        self.met && self.lines.is_empty()
    }

    /// What everybody does.
    fn asks(&self) -> StruckDo {
        match self.carries {
            _ if self.not_drawn_and_only_met() => StruckDo::NotKnown,
            kind if as_gas(kind) => StruckDo::GetAway,
            UtilityKind::Electric => StruckDo::Live,
            _ => StruckDo::TouchNothing,
        }
    }

    /// Round a place where no drawn line runs.
    fn round_here(&self) -> Length {
        if self.met { ROUND_ANOTHER } else { ROUND_GAS }
    }
}

/// The cards of what stands.
pub fn cards(state: &State) -> Vec<StruckCard> {
    let each = state.cuts.struck.iter().map(|now| StruckCard {
        lines: now.struck.lines.clone(),
        what: now.struck.asks(),
        call: now.struck.call.clone(),
        machine: now.struck.machine.clone(),
        since: now.since,
        by: now.by.clone(),
    });
    each.collect()
}

/// What leaks and burns, or may.
fn as_gas(kind: UtilityKind) -> bool {
    matches!(kind, UtilityKind::Gas | UtilityKind::Unknown)
}

/// The gravest first.
fn gravity(kind: UtilityKind) -> u8 {
    match kind {
        UtilityKind::Gas => 0,
        UtilityKind::Unknown => 1,
        UtilityKind::Electric => 2,
        _ => 3,
    }
}

/// So far from the line nobody is called and no machine works.
fn round(line: &Utility) -> Length {
    if as_gas(line.kind) {
        ROUND_GAS
    } else {
        half(line) + ROUND_ANOTHER
    }
}

/// What a struck line near a place holds back.
pub(crate) fn holds(state: &State, site: &Site, place: Point) -> Option<HeldBy> {
    state.cuts.struck.iter().find_map(|now| {
        let drawn = now.struck.lines.iter().find(|id| {
            let line = site.cuts.utility(id);
            line.is_some_and(|line| from_line(line, place).is_none_or(|away| away <= round(line)))
        });
        let here = || {
            now.struck
                .at
                .is_some_and(|at| at.distance(place) <= now.struck.round_here())
        };
        match drawn {
            Some(line) => Some(HeldBy::LineStruck {
                line: Some(line.clone()),
            }),
            None if now.struck.lines.is_empty() && here() => {
                Some(HeldBy::LineStruck { line: None })
            }
            None => None,
        }
    })
}

/// Where a machine stands; none when nobody has said it for half an hour.
fn stands(state: &State, machine: &str, now: Time) -> Option<Point> {
    let place = state.cabs.get(machine)?.place.as_ref()?;
    (now.ms_since(place.since) <= PLACE_TOO_OLD_MS).then_some(place.at)
}

/// The machines that can come near: all but those that are known to stand beyond reach of it.
fn on_that_main(state: &State, site: &Site, struck: &LineStruck, now: Time) -> Vec<String> {
    let near = |machine: &&crate::site::Machine| {
        if struck.machine.as_ref() == Some(&machine.id) {
            return true;
        }
        let stands = stands(state, &machine.id, now);
        if stands.is_none() && !struck.not_drawn_and_only_met() {
            return true;
        }
        let digs = state
            .live_call(&machine.id)
            .and_then(|(_, call)| strip::place_of(state, call.sent.mark.as_deref()?));
        let places: Vec<Point> = stands.into_iter().chain(digs).collect();
        let reach = machine.reach.reach_at_ground;
        places.into_iter().any(|place| {
            let of_line = struck.lines.iter().any(|id| {
                let line = site.cuts.utility(id);
                line.is_some_and(|line| {
                    from_line(line, place).is_none_or(|away| away <= round(line) + reach)
                })
            });
            let here = struck.lines.is_empty()
                && struck
                    .at
                    .is_none_or(|at| at.distance(place) <= struck.round_here() + reach);
            of_line || here
        })
    };
    let machines = site.machines.iter().filter(near);
    let mut found: Vec<String> = machines.map(|machine| machine.id.clone()).collect();
    // One that is no longer on the site stands still too when its own cab says it.
    let own = struck
        .machine
        .iter()
        .filter(|own| site.machine(own).is_none());
    found.extend(own.cloned());
    found
}

/// What follows: said to everybody, the machines near it stand still, their calls end.
fn follows(state: &State, site: &Site, struck: LineStruck, now: Time) -> Vec<Body> {
    let machines = on_that_main(state, site, &struck, now);
    let ended = machines
        .iter()
        .filter_map(|machine| call::end_live(state, machine, Ending::Withdrawn))
        .collect::<Vec<_>>();
    let name = if struck.lines.is_empty() {
        "?".to_owned()
    } else {
        struck.lines.join(", ")
    };
    let stopped = Body::Stopped(Stopped {
        machines,
        all: false,
        why: format!("line struck / línea golpeada: {name}"),
    });
    let mut bodies = vec![Body::LineStruck(struck), stopped];
    bodies.extend(ended);
    bodies
}

fn of(site: &Site, lines: Vec<&Utility>, machine: Option<String>, at: Option<Point>) -> LineStruck {
    let gravest = lines.iter().min_by_key(|line| gravity(line.kind)).copied();
    // Without a drawn line nobody knows what runs in it; with a call that the site gives, that one.
    let call = gravest.map_or("", |line| line.call.as_str());
    let tickets = || {
        let ids: Vec<&str> = site
            .cuts
            .tickets
            .iter()
            .map(|one| one.id.as_str())
            .collect();
        ids.join(", ")
    };
    LineStruck {
        carries: gravest.map_or(UtilityKind::Unknown, |line| line.kind),
        call: if call.is_empty() {
            tickets()
        } else {
            call.to_owned()
        },
        lines: lines.into_iter().map(|line| line.id.clone()).collect(),
        met: false,
        machine,
        at,
    }
}

/// The cab says that a pipe or cable is in the way: every drawn line that it can be, by the mark of its call and by where it
/// stands; all of them where neither is known.
pub(crate) fn said_from_cab(
    state: &State,
    machine: &str,
    mark: Option<&str>,
    now: Time,
) -> Vec<Body> {
    let Some(site) = state.site() else {
        return vec![Body::Stopped(Stopped {
            machines: vec![machine.to_owned()],
            all: false,
            why: "pipe or cable / tubo o cable".to_owned(),
        })];
    };
    let marked = mark.and_then(|mark| strip::place_of(state, mark));
    let stands = stands(state, machine, now);
    let reach = site
        .machine(machine)
        .map_or(Length::ZERO, |machine| machine.reach.reach_at_ground);
    let can_be = |line: &&Utility| {
        let within = |place: Point, more: Length| {
            from_line(line, place).is_none_or(|away| away <= half(line) + more)
        };
        match (marked, stands) {
            (None, None) => true,
            (mark, stand) => {
                mark.is_some_and(|place| within(place, ROUND_ANOTHER))
                    || stand.is_some_and(|place| within(place, reach))
            }
        }
    };
    let lines: Vec<&Utility> = site.cuts.utilities.iter().filter(can_be).collect();
    let mut struck = of(site, lines, Some(machine.to_owned()), marked.or(stands));
    struck.met = true;
    follows(state, site, struck, now)
}

/// Somebody on foot, in a cab or in the office says that a line was struck. A second voice stops the machines again.
pub(crate) fn say(
    state: &State,
    by: &By,
    asked: &SayStruck,
    now: Time,
) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let line = match &asked.line {
        Some(id) => Some(site.cuts.utility(id).ok_or_else(|| Refusal::Unknown {
            what: Thing::Utility,
            name: id.clone(),
        })?),
        None => None,
    };
    // A mark that the site does not know is no reason to keep this waiting.
    let at = asked
        .mark
        .as_deref()
        .and_then(|mark| strip::place_of(state, mark));
    let struck = of(site, line.into_iter().collect(), by.machine.clone(), at);
    Ok(follows(state, site, struck, now))
}

pub(crate) fn apply(state: &mut State, entry: &Entry, body: &LineStruck) {
    // What was let go on after an earlier strike is not let go on now.
    state
        .cuts
        .allowed
        .retain(|held| !matches!(held, HeldBy::LineStruck { .. }));
    let known = |now: &StruckNow| now.struck == *body;
    if !state.cuts.struck.iter().any(known) {
        state.cuts.struck.push(StruckNow {
            struck: body.clone(),
            since: entry.at,
            by: entry.by.person.clone(),
        });
    }
}

/// A supervisor has said on whose word work goes on beside a line: it is no longer held.
pub(crate) fn settle(state: &mut State, line: Option<&str>) {
    state.cuts.struck.retain_mut(|now| {
        let lines = &mut now.struck.lines;
        match line {
            None => !lines.is_empty(),
            Some(_) if lines.is_empty() => true,
            Some(id) => {
                lines.retain(|one| one != id);
                !lines.is_empty()
            }
        }
    });
}

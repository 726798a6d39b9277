//! When each bottom arrives, and who is needed next.

use contract::ToSchema;
use earthwork::arrival::{self, Dug, Pace, Visit};
use earthwork::length::Length;
use serde::Serialize;

use day::account::meter::{Doing, Work};
use day::last::{self, StillCounts};
use day::state::State;
use day::time::Time;

/// Minutes to walk to a machine and to look (common practice).
const VISIT_MINUTES: f64 = 3.0;
/// A pace is that of the newest so many readings of a mark: it digs on as it has dug lately.
const LOOKED_AT: usize = 12;
/// A look that is due later is no visit yet, in milliseconds.
const SOON_MS: i64 = 10 * 60_000;

/// When a bottom arrives.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct ArrivalCard {
    /// The machine.
    pub machine: String,
    /// The mark that it digs at.
    pub mark: String,
    /// What was left at the last reading, to where it is aimed.
    pub left: Length,
    /// What was left at the last reading to the low limit.
    pub room: Length,
    /// When that reading was made.
    pub from: Time,
    /// How fast it goes down.
    pub pace: Pace,
    /// The pace is from other marks of today: this one has a single reading.
    pub borrowed: bool,
    /// When it is at grade, if it digs on.
    pub at: Time,
    /// At the fast pace.
    pub soonest: Time,
    /// At the slow one; none when that goes nowhere.
    pub latest: Option<Time>,
    /// When somebody must look.
    pub look: Time,
    /// It does not dig now: the moments wait with it.
    pub held: bool,
}

/// A machine that needs somebody.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct VisitCard {
    /// The machine.
    pub machine: String,
    /// The mark that it digs at.
    pub mark: Option<String>,
    /// Since when its operator waits; none while it digs.
    pub waits_since: Option<Time>,
    /// When somebody must look; none when it waits already.
    pub look: Option<Time>,
}

/// When the bottom under each machine arrives.
pub(crate) fn arrivals(state: &State) -> Vec<ArrivalCard> {
    let machines = state.cabs.keys();
    machines
        .filter_map(|machine| arrival(state, machine))
        .collect()
}

/// A mark's newest readings as differences over minutes of work, oldest first.
fn dug(state: &State, work: &Work, mark: &str) -> Vec<Dug> {
    let Some(now) = state.marks.get(mark) else {
        return vec![];
    };
    let newest = now.readings.iter().rev().filter_map(|(at, id)| {
        let judged = state.readings.get(id)?.reading.judged.as_ref()?;
        judged.surface.is_none().then(|| Dug {
            work_minutes: work.minutes(*at),
            dev: judged.dev,
        })
    });
    let mut dug: Vec<Dug> = newest.take(LOOKED_AT).collect();
    dug.reverse();
    dug
}

/// When the bottom under a machine arrives.
pub(crate) fn arrival(state: &State, machine: &str) -> Option<ArrivalCard> {
    let mark = state.cabs.get(machine)?.last_mark.clone()?;
    let (id, taken) = state.last_reading(&mark)?;
    if last::of_reading(state, id, taken) != StillCounts::Counts {
        return None;
    }
    let judged = taken.reading.judged.as_ref()?;
    let left = judged.mean - state.aim(&mark, &judged.target);
    let site = state.site()?;
    let room = judged.mean + site.target(&judged.target)?.tolerance.low;
    let meter = state.account.meters.get(machine)?;
    let work = meter.work();
    let own = arrival::pace(&dug(state, &work, &mark));
    let pace = own.or_else(|| learned(state, machine, &work))?;
    let found = arrival::arrival(&pace, left, room)?;
    let doing = meter.doing;
    let from = taken.made_at;
    let after = |minutes: f64| {
        let ms = (minutes * 60_000.0).round().min(1e12);
        #[expect(clippy::cast_possible_truncation, reason = "below a million million")]
        from.plus_ms(ms as i64)
    };
    Some(ArrivalCard {
        machine: machine.to_owned(),
        mark,
        left,
        room,
        from,
        pace,
        borrowed: own.is_none(),
        at: after(found.minutes),
        soonest: after(found.soonest),
        latest: found.latest.map(after),
        look: after(found.look),
        held: !matches!(doing, Doing::Digging | Doing::ScreenLost | Doing::Look),
    })
}

/// The median pace of this machine's other marks of today.
fn learned(state: &State, machine: &str, work: &Work) -> Option<Pace> {
    let site = state.site()?;
    let mut paces: Vec<Pace> = site
        .marks
        .iter()
        .filter(|mark| {
            let assigned = mark
                .target
                .as_deref()
                .and_then(|target| site.machine_for(target));
            assigned.is_some_and(|assigned| assigned.id == machine)
        })
        .filter_map(|mark| arrival::pace(&dug(state, work, &mark.id)))
        .collect();
    paces.sort_by(|one, other| one.ft_per_min.total_cmp(&other.ft_per_min));
    paces.get(paces.len() / 2).copied()
}

/// Who is needed, in the order that costs least; who has waited longest stands first among equals.
pub(crate) fn visits(state: &State, arrivals: &[ArrivalCard]) -> Vec<VisitCard> {
    let mut cards: Vec<(VisitCard, Visit)> = state
        .cabs
        .iter()
        .filter_map(|(machine, cab)| {
            let arrival = arrivals
                .iter()
                .find(|one| one.machine == *machine && !one.held);
            let waits_since = cab.look_asked_at;
            let soon = arrival.filter(|one| one.look.ms_since(state.at) <= SOON_MS);
            if waits_since.is_none() && soon.is_none() {
                return None;
            }
            let card = VisitCard {
                machine: machine.clone(),
                mark: cab.last_mark.clone(),
                waits_since,
                look: soon.filter(|_| waits_since.is_none()).map(|one| one.look),
            };
            Some((card, visit(state, machine, waits_since.is_some(), soon)))
        })
        .collect();
    cards.sort_by_key(|(card, _)| card.waits_since.or(card.look));
    let visits: Vec<Visit> = cards.iter().map(|(_, visit)| *visit).collect();
    arrival::cheapest_order(&visits)
        .into_iter()
        .map(|number| cards[number].0.clone())
        .collect()
}

/// Without a price list every machine's minute counts alike.
fn visit(state: &State, machine: &str, waits: bool, soon: Option<&ArrivalCard>) -> Visit {
    let prices = state.prices();
    let hour = prices
        .and_then(|prices| prices.machine_hour(machine))
        .unwrap_or(60.0);
    let digging = soon.filter(|_| !waits).map(|one| {
        let dug = one.pace.ft_per_min * state.at.ms_since(one.from) as f64 / 60_000.0;
        let dug = Length::from_feet(dug.clamp(0.0, 10.0)).unwrap_or(Length::ZERO);
        (one.pace, one.room - dug)
    });
    Visit {
        idle_per_minute: if waits { hour / 60.0 } else { 0.0 },
        minutes: VISIT_MINUTES,
        digging,
        patch_cost: prices
            .and_then(|prices| Some(prices.aim?.too_deep))
            .unwrap_or(60.0),
    }
}

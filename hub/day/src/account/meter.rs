//! What does each machine do, and since when: one span after another, from the entries alone.

use std::collections::BTreeMap;

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::said::waiting::WaitCause;
use crate::state::{Cab, Screen, State};
use crate::time::Time;

/// What a machine does. Everything but digging is waiting, by its cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Doing {
    /// Digging, as far as anybody said.
    Digging,
    /// Its operator has asked for a look.
    Look,
    /// Stopped by a STOP.
    Stopped,
    /// Its laser is in doubt.
    LaserHold,
    /// Its operator has yet to see a changed target.
    TargetHold,
    /// Its operator can't go on.
    Cant,
    /// It waits for trucks.
    Truck,
    /// An attachment is changed.
    Attachment,
    /// It is broken.
    Broken,
    /// Parked: a break, or nothing to do.
    Parked,
    /// Something else, as somebody said.
    OtherWait,
    /// Its screen is lost or hidden: it works by hand signals.
    ScreenLost,
}

impl Doing {
    /// Whether the bottom goes down meanwhile.
    pub fn works(self) -> bool {
        matches!(self, Doing::Digging | Doing::ScreenLost)
    }
}

/// One machine's day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Meter {
    /// What it does now.
    pub doing: Doing,
    /// Since when.
    pub since: Time,
    /// What it did before, in order.
    pub spans: Vec<Span>,
}

/// What a machine did for a while.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Span {
    /// What.
    pub doing: Doing,
    /// From.
    pub from: Time,
    /// To.
    pub to: Time,
}

impl Meter {
    /// Every span, the running one up to a moment.
    pub fn all(&self, until: Time) -> impl Iterator<Item = Span> + '_ {
        let running = Span {
            doing: self.doing,
            from: self.since,
            to: until.max(self.since),
        };
        self.spans.iter().copied().chain([running])
    }

    /// Milliseconds of each thing up to a moment.
    pub fn totals(&self, until: Time) -> BTreeMap<Doing, i64> {
        let mut sums = BTreeMap::new();
        for span in self.all(until) {
            *sums.entry(span.doing).or_default() += span.to.ms_since(span.from);
        }
        sums
    }

    /// Its work, for many questions about it.
    pub fn work(&self) -> Work {
        // The running span has no end yet.
        let mut done = 0;
        let spans = self.all(Time(i64::MAX)).filter(|span| span.doing.works());
        let spans = spans.map(|span| {
            let before = done;
            done += span.to.ms_since(span.from);
            (span.from, span.to, before)
        });
        Work(spans.collect())
    }
}

/// The spans in which a machine worked, in order: from, to, and milliseconds of work before.
#[derive(Clone, Debug)]
pub struct Work(Vec<(Time, Time, i64)>);

impl Work {
    /// Minutes of work up to a moment.
    pub fn minutes(&self, until: Time) -> f64 {
        let begun = self.0.partition_point(|(from, _, _)| *from < until);
        let Some((from, to, before)) = begun.checked_sub(1).and_then(|last| self.0.get(last))
        else {
            return 0.0;
        };
        (before + until.min(*to).ms_since(*from)) as f64 / 60_000.0
    }
}

/// What a machine does, gravest first; none while nobody sits in it and nobody has placed it.
fn doing(cab: &Cab, said: Option<WaitCause>) -> Option<Doing> {
    if cab.device.is_none() && cab.place.is_none() {
        return None;
    }
    let said = said.map(|cause| match cause {
        WaitCause::Truck => Doing::Truck,
        WaitCause::Attachment => Doing::Attachment,
        WaitCause::Broken => Doing::Broken,
        WaitCause::Parked => Doing::Parked,
        WaitCause::Other => Doing::OtherWait,
    });
    let lost = matches!(cab.screen, Screen::Hidden(_) | Screen::Lost(_));
    [
        cab.stop.as_ref().map(|_| Doing::Stopped),
        cab.paused.as_ref().map(|_| Doing::LaserHold),
        said,
        cab.cant.as_ref().map(|_| Doing::Cant),
        cab.look_asked_at.map(|_| Doing::Look),
        cab.must_see.as_ref().map(|_| Doing::TargetHold),
        lost.then_some(Doing::ScreenLost),
    ]
    .into_iter()
    .flatten()
    .next()
    .or(Some(Doing::Digging))
}

/// After each entry: whoever does something else from now on begins a new span.
pub(crate) fn tick(state: &mut State, at: Time) {
    state.account.ticked_at = at;
    for (machine, cab) in &state.cabs {
        let said = state.account.waits.get(machine).copied();
        let Some(doing) = doing(cab, said) else {
            continue;
        };
        match state.account.meters.get_mut(machine) {
            Some(meter) if meter.doing == doing => {}
            Some(meter) => {
                if at > meter.since {
                    meter.spans.push(Span {
                        doing: meter.doing,
                        from: meter.since,
                        to: at,
                    });
                }
                meter.doing = doing;
                meter.since = at;
            }
            None => {
                let meter = Meter {
                    doing,
                    since: at,
                    spans: vec![],
                };
                state.account.meters.insert(machine.clone(), meter);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, operator, supervisor};
    use crate::said::call::CheckMe;
    use crate::said::stop::{LiftStop, StopAll};
    use crate::said::waiting::{SayWaiting, WorkAgain};
    use crate::time::minutes;

    fn totals(crew: &Crew, machine: &str) -> Vec<(Doing, i64)> {
        let meter = &crew.state.account.meters[machine];
        let sums = meter.totals(crew.now).into_iter();
        sums.map(|(doing, ms)| (doing, ms / 60_000)).collect()
    }

    #[test]
    fn every_minute_goes_to_what_the_machine_did() {
        let mut crew = Crew::digging();
        crew.wait(minutes(10));
        crew.says(&operator("EX-1"), Command::CheckMe(CheckMe {}))
            .unwrap();
        crew.wait(minutes(4));
        crew.reads("P-1", "4.70").unwrap();
        crew.wait(minutes(6));
        crew.says(&ground(), Command::StopAll(StopAll { why: String::new() }))
            .unwrap();
        crew.wait(minutes(5));
        let lift = LiftStop {
            machine: None,
            press: u64::MAX,
            why: "seen".into(),
        };
        crew.says(&supervisor(), Command::LiftStop(lift)).unwrap();
        let wait = SayWaiting {
            machine: None,
            cause: WaitCause::Truck,
        };
        crew.says(&operator("EX-1"), Command::SayWaiting(wait))
            .unwrap();
        crew.wait(minutes(3));
        crew.says(
            &operator("EX-1"),
            Command::WorkAgain(WorkAgain { machine: None }),
        )
        .unwrap();
        crew.wait(minutes(2));
        // Nobody has seen these cabs' pages: they work by hand signals. A reading takes two minutes of its own.
        assert_eq!(
            totals(&crew, "EX-1"),
            [
                (Doing::Look, 6),
                (Doing::Stopped, 5),
                (Doing::Truck, 3),
                (Doing::ScreenLost, 18)
            ]
        );
        assert_eq!(
            totals(&crew, "EX-2"),
            [(Doing::Stopped, 5), (Doing::ScreenLost, 27)]
        );
        let meter = &crew.state.account.meters["EX-1"];
        assert!((meter.work().minutes(crew.now) - 18.0).abs() < 1e-9);
        assert!(meter.work().minutes(meter.spans[0].from).abs() < 1e-9);
    }

    #[test]
    fn a_laser_in_doubt_holds_the_machines() {
        let mut crew = Crew::digging();
        crew.reads("P-1", "4.70").unwrap();
        crew.wait(minutes(1));
        crew.check("S1", "BM-2", "3.20").unwrap();
        crew.wait(minutes(18));
        assert!(totals(&crew, "EX-1").contains(&(Doing::LaserHold, 18)));
        assert!(totals(&crew, "EX-2").contains(&(Doing::LaserHold, 18)));
    }
}

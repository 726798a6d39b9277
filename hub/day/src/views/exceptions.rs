//! What needs somebody, oldest first, with one action each.

use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::going::{self, Back};
use crate::near::Near;
use crate::said::gravel;
use crate::said::start_checks::START_CHECKS;
use crate::state::State;
use crate::time::Time;
use crate::views::account;
use crate::views::account::soil::TestStanding;
use crate::views::ground::{MachineCard, MarkCard, ScreenCard, SetUpCard, SetUpState};
use crate::views::{cuts, cuts_owed, record};
use crate::way_in::Stage;

/// One thing that needs somebody, with one action.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Exception {
    /// Since when.
    pub since: Time,
    /// What.
    pub what: ExceptionKind,
}

/// What needs somebody.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ExceptionKind {
    /// A machine is stopped: lift it when the reason is gone.
    Stopped {
        /// Which.
        machine: String,
        /// Who pressed.
        by: String,
        /// Why.
        why: String,
    },
    /// A set-up is in doubt: shoot two benchmarks.
    LaserInDoubt {
        /// Which.
        set_up: String,
    },
    /// Two shots were too close to call on the low side: rule.
    NeedsRuling {
        /// Which mark.
        mark: String,
        /// The mean difference.
        dev: Length,
    },
    /// The operator can't: see to it.
    Cant {
        /// Which machine.
        machine: String,
        /// Why.
        why: crate::said::call::CantReason,
        /// The mark of the call, if any.
        mark: Option<String>,
    },
    /// A cab's page is not showing: hand signals.
    ScreenNotShowing {
        /// Which machine.
        machine: String,
    },
    /// A changed site file waits.
    SiteChanged,
    /// A revised target has not been seen in the cab.
    TargetNotSeen {
        /// Which machine.
        machine: String,
        /// Which target.
        target: String,
    },
    /// Two people typed a target's elevations differently.
    TargetTypedApart {
        /// Which target.
        target: String,
        /// What differs, both as they are.
        differs: Vec<crate::said::prove::Differs>,
    },
    /// A face was left: the competent person inspects it.
    FaceLeft {
        /// Which.
        zone: String,
        /// Why.
        why: crate::said::face_alarm::AlarmWhy,
    },
    /// A face waits for an inspection.
    InspectionDue {
        /// Which.
        zone: String,
        /// Why.
        why: crate::cuts::now::InspectionWhy,
        /// Somebody was called to work there without one.
        overdue: bool,
    },
    /// A face would come to daylight over a line.
    DaylightOver {
        /// Which face.
        zone: String,
        /// Which line.
        line: String,
        /// Nobody may cross it.
        no_cross: bool,
        /// The least distance; below zero is over it.
        least: Length,
    },
    /// A pile stands nearer to a crest than the rule has it.
    PileAtCrest {
        /// Which pile.
        pile: String,
        /// Which face.
        zone: String,
        /// How far behind the crest its foot stands; below zero is within the slope.
        back: Length,
        /// How far it takes.
        needs: Length,
    },
    /// A trench crosses a buried line too near.
    CrossingTooNear {
        /// How.
        crossing: crate::cuts::buried::Crossing,
    },
    /// A buried line's paint is gone.
    PaintGone {
        /// Which line.
        utility: String,
    },
    /// A ticket was not looked at today, lapses soon, or has no answer.
    TicketWaits {
        /// The ticket.
        ticket: cuts::TicketCard,
    },
    /// The gravel orders do not cover what is needed.
    GravelShort {
        /// What is missing, in tons.
        tons: f64,
    },
    /// A failed soil test proposes an undercut: confirm it on the engineer's word.
    UndercutWaits {
        /// The proposal's entry.
        undercut: u64,
        /// The mark whose test failed.
        mark: String,
    },
    /// A soil test failed or is void, and nobody has tested again.
    RetestOwed {
        /// The mark.
        mark: String,
        /// It passed before and is void; else it failed.
        void: bool,
    },
    /// Somebody went in without the operator's answer: get them out, get his eyes.
    UnconfirmedEntry {
        /// Which machine.
        machine: String,
        /// Who.
        person: String,
    },
    /// Somebody who is in has no link: look, and say OUT as a witness when you have seen it.
    InWithoutLink {
        /// Which machine.
        machine: String,
        /// Who.
        person: String,
        /// The visit.
        visit: String,
    },
    /// Nobody in the cab has answered somebody who asks to come in.
    EntryNotAnswered {
        /// Which machine.
        machine: String,
        /// Who.
        person: String,
    },
    /// The day is not READY: start checks have no value.
    NotReady {
        /// How many have one.
        said: usize,
        /// Of how many.
        of: usize,
    },
    /// Two booms can meet, and their operators have not both agreed.
    CanMeet {
        /// One of them.
        machine: String,
        /// The other.
        other: String,
        /// From middle to middle.
        apart: Length,
        /// What it takes for them not to meet.
        needs: Length,
    },
    /// A machine can come too near to a line overhead, and nobody spots for it.
    SpotterNeeded {
        /// Which machine.
        machine: String,
        /// Which line.
        line: String,
    },
    /// Its tracks stand inside of a slope's line: the competent person rules.
    OnSlope {
        /// Which machine.
        machine: String,
        /// Which face.
        zone: String,
        /// How far inside.
        inside: Length,
    },
    /// A near miss was opened, and no supervisor has said anything about it.
    NearMiss {
        /// Which: 1 for NM-1.
        number: u32,
        /// Who pressed.
        by: String,
        /// What was said with the press; may be empty.
        why: String,
    },
    /// A machine is about to take marks that nothing written down would bring back: have them tied.
    TiesFirst {
        /// Which machine.
        machine: String,
        /// Which marks.
        marks: Vec<String>,
    },
    /// A phone remembers an end of the log that the log does not hold.
    LogCut {
        /// Whose.
        person: String,
        /// The entry that it remembers.
        entry: u64,
    },
    /// A query that calls wait for has no answer.
    QueryWaits {
        /// Which.
        query: String,
        /// The marks and targets.
        on: Vec<String>,
    },
    /// An operator asks for a look.
    LookAsked {
        /// Which machine.
        machine: String,
    },
}

/// Everything that needs somebody, oldest first.
pub(crate) fn exceptions(
    state: &State,
    machines: &[MachineCard],
    set_ups: &[SetUpCard],
    marks: &[MarkCard],
) -> Vec<Exception> {
    let mut found: Vec<Exception> = machines
        .iter()
        .flat_map(|machine| of_machine(state, machine))
        .collect();
    for set_up in set_ups {
        if let SetUpState::InDoubt { since, .. } = set_up.state {
            found.push(Exception {
                since,
                what: ExceptionKind::LaserInDoubt {
                    set_up: set_up.id.clone(),
                },
            });
        }
    }
    for mark in marks.iter().filter(|mark| mark.needs_ruling) {
        found.push(Exception {
            since: mark.at,
            what: ExceptionKind::NeedsRuling {
                mark: mark.id.clone(),
                dev: mark.dev.unwrap_or(Length::ZERO),
            },
        });
    }
    for (target, (since, typed)) in &state.typed_apart {
        found.push(Exception {
            since: *since,
            what: ExceptionKind::TargetTypedApart {
                target: target.clone(),
                differs: typed.differs.clone(),
            },
        });
    }
    if let Some(change) = &state.site_change {
        found.push(Exception {
            since: change.since,
            what: ExceptionKind::SiteChanged,
        });
    }
    if let Some(day) = state.day.as_ref().filter(|_| state.start.ready.is_none()) {
        found.push(Exception {
            since: day.at,
            what: ExceptionKind::NotReady {
                said: state.start.said.len(),
                of: START_CHECKS.len(),
            },
        });
    }
    let near_misses = state.near_misses.open.iter();
    for one in near_misses.filter(|one| one.told.is_empty()) {
        found.push(Exception {
            since: one.since,
            what: ExceptionKind::NearMiss {
                number: one.then.number,
                by: one
                    .voices
                    .first()
                    .map_or_else(String::new, |voice| voice.by.clone()),
                why: one.then.why.clone(),
            },
        });
    }
    found.extend(cuts_owed::exceptions(state));
    found.extend(of_account(state));
    found.extend(record::exceptions(state));
    found.extend(ties_first(state));
    found.sort_by_key(|exception| exception.since);
    found
}

/// Marks that were laid from other marks, have no ties and are next to go; since the call that sent the machine there.
fn ties_first(state: &State) -> Vec<Exception> {
    let mut found: Vec<Exception> = Vec::new();
    let bare = going::going(state).into_iter();
    for going in bare.filter(|going| going.back == Back::Nothing) {
        let before = found.last_mut().map(|one| &mut one.what);
        if let Some(ExceptionKind::TiesFirst { machine, marks }) = before
            && *machine == going.machine
        {
            marks.push(going.mark);
            continue;
        }
        let cab = state.cabs.get(&going.machine);
        found.push(Exception {
            since: cab.and_then(|cab| cab.called_at).unwrap_or(state.at),
            what: ExceptionKind::TiesFirst {
                machine: going.machine,
                marks: vec![going.mark],
            },
        });
    }
    found
}

/// Gravel that is short, undercuts that wait, tests that are owed again.
fn of_account(state: &State) -> Vec<Exception> {
    let mut found = Vec::new();
    let mut push = |since: Time, what: ExceptionKind| found.push(Exception { since, what });
    if state.account.short_tons >= gravel::WORTH_SAYING
        && let Some((since, _)) = state.account.orders.last()
    {
        let tons = state.account.short_tons;
        push(*since, ExceptionKind::GravelShort { tons });
    }
    for (undercut, (since, proposed)) in &state.account.undercuts {
        push(
            *since,
            ExceptionKind::UndercutWaits {
                undercut: *undercut,
                mark: proposed.mark.clone(),
            },
        );
    }
    for card in account::soil::tests(state) {
        let void = card.standing == TestStanding::Void;
        if !card.replaced && (void || card.standing == TestStanding::Fails) {
            let mark = card.mark;
            push(card.made_at, ExceptionKind::RetestOwed { mark, void });
        }
    }
    found
}

fn of_machine(state: &State, card: &MachineCard) -> Vec<Exception> {
    let machine = &card.id;
    let mut found = Vec::new();
    let mut push = |since: Time, what: ExceptionKind| found.push(Exception { since, what });
    if let Some(stop) = &card.stop {
        push(
            stop.since,
            ExceptionKind::Stopped {
                machine: machine.clone(),
                by: stop.by.clone(),
                why: stop.why.clone(),
            },
        );
    }
    if let Some(cant) = &card.cant {
        push(
            cant.at,
            ExceptionKind::Cant {
                machine: machine.clone(),
                why: cant.why,
                mark: cant.mark.clone(),
            },
        );
    }
    if let ScreenCard::Hidden { since, .. } | ScreenCard::Lost { since, .. } = &card.screen {
        push(
            *since,
            ExceptionKind::ScreenNotShowing {
                machine: machine.clone(),
            },
        );
    }
    if let Some(must) = state
        .cabs
        .get(machine)
        .and_then(|cab| cab.must_see.as_ref())
    {
        push(
            must.since,
            ExceptionKind::TargetNotSeen {
                machine: machine.clone(),
                target: must.target.clone(),
            },
        );
    }
    if let Some(place) = &card.place {
        let needs = card.near.iter().filter_map(|near| of_near(card, near));
        for what in needs {
            push(place.since, what);
        }
    }
    for one in &card.way_in.people {
        let (machine, person) = (machine.clone(), one.person.clone());
        if one.stage == Stage::Unconfirmed {
            push(
                one.since,
                ExceptionKind::UnconfirmedEntry {
                    machine: machine.clone(),
                    person: person.clone(),
                },
            );
        }
        if let (Some(since), true) = (one.lost, one.stage.may_be_in()) {
            push(
                since,
                ExceptionKind::InWithoutLink {
                    machine: machine.clone(),
                    person: person.clone(),
                    visit: one.visit.clone(),
                },
            );
        }
        if one.not_answered {
            push(
                one.since,
                ExceptionKind::EntryNotAnswered { machine, person },
            );
        }
    }
    if let Some(since) = card.look_asked_at {
        push(
            since,
            ExceptionKind::LookAsked {
                machine: machine.clone(),
            },
        );
    }
    found
}

/// What of the things near a machine needs somebody. Two machines are told of once.
fn of_near(card: &MachineCard, near: &Near) -> Option<ExceptionKind> {
    let machine = card.id.clone();
    match near {
        Near::CanMeet {
            other,
            apart,
            needs,
        } => (machine < *other).then(|| ExceptionKind::CanMeet {
            machine,
            other: other.clone(),
            apart: *apart,
            needs: *needs,
        }),
        Near::Overhead { line, .. } => Some(ExceptionKind::SpotterNeeded {
            machine,
            line: line.clone(),
        }),
        Near::OnSlope { zone, inside, .. } => Some(ExceptionKind::OnSlope {
            machine,
            zone: zone.clone(),
            inside: *inside,
        }),
        Near::TailAtMachine { .. }
        | Near::TailAtFace { .. }
        | Near::TailAtWall { .. }
        | Near::TailAtPile { .. } => None,
    }
}

//! What needs somebody, the gravest first and of those the oldest, with one action each.

use earthwork::length::Length;

use crate::views::exception::{Exception, ExceptionKind};
use crate::views::laser_cards::SetUpCard;
use crate::views::machine_card::{MachineCard, ScreenCard};
use crate::views::mark_card::MarkCard;
use crate::views::{cuts_owed, record};
use day::account::soil::{self, TestStanding};
use day::going::{self, Back};
use day::near::Near;
use day::said::gravel;
use day::said::start_checks::START_CHECKS;
use day::state::SetUpState;
use day::state::State;
use day::time::Time;
use day::way_in::Stage;

/// Everything that needs somebody, the gravest first and of those the oldest.
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
    found.sort_by_key(|exception| (exception.what.gravity(), exception.since));
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
    for card in soil::tests(state) {
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

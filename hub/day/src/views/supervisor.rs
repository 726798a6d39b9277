//! The supervisor's screen: cards of machines and lasers, exceptions oldest first, people, what the hub knows of itself.

use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::Role;
use crate::said::gravel;
use crate::said::site::SiteDifference;
use crate::said::turning::LevelsRun;
use crate::state::State;
use crate::time::Time;
use crate::views::account::soil::TestStanding;
use crate::views::account::{self, Account};
use crate::views::coverage::{self, RunCoverage};
use crate::views::ground::{MachineCard, MarkCard, ScreenCard, SetUpCard, SetUpState, SuspectCard};
use crate::views::way_in::InsideCard;
use crate::views::{cards, contour, cuts, cuts_owed, way_in};
use crate::way_in::Stage;

/// What the supervisor's page shows.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[schema(as = SupervisorView)]
pub struct Supervisor {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// One card for each machine.
    pub machines: Vec<MachineCard>,
    /// Every set-up of the day that is not closed.
    pub set_ups: Vec<SetUpCard>,
    /// What needs somebody, oldest first.
    pub exceptions: Vec<Exception>,
    /// Who has joined.
    pub people: Vec<PersonCard>,
    /// The last reading on each mark that has one.
    pub marks: Vec<MarkCard>,
    /// A changed site file that waits for confirmation.
    pub site_change: Option<SiteChangeCard>,
    /// How often the codes of this day were renewed.
    pub codes_generation: u32,
    /// Aims in force that are not zero.
    pub aims: Vec<AimCard>,
    /// Contours that somebody has walked.
    pub contours: Vec<contour::ContourCard>,
    /// What failed checks and bumps of the day put in doubt: also what has been settled since.
    pub suspects: Vec<SuspectCard>,
    /// How the questions about readings came out.
    pub questions: QuestionsCard,
    /// What of each run is not proven.
    pub coverage: Vec<RunCoverage>,
    /// What the day costs, what was hauled, what is needed, who is needed.
    pub account: Box<Account>,
    /// Who may be within a keep-out, machine by machine.
    pub inside: Vec<InsideCard>,
    /// Lines of levels of the day: a point of one can be taken as a benchmark.
    pub levels: Vec<LevelsCard>,
    /// Cuts and what is buried, with what is for the engineer.
    pub cuts: Box<cuts::CutsCard>,
}

/// A line of levels that closes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LevelsCard {
    /// Its entry, for `add_benchmark`.
    pub entry: u64,
    /// What was read and what came of it.
    pub run: LevelsRun,
}

/// How the questions about readings came out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct QuestionsCard {
    /// Asked.
    pub asked: u32,
    /// Answered.
    pub answered: u32,
    /// The reading had been a slip.
    pub slips: u32,
    /// One of the two suggestions was what had happened.
    pub hits: u32,
}

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
    /// An operator asks for a look.
    LookAsked {
        /// Which machine.
        machine: String,
    },
}

/// Someone who has joined.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PersonCard {
    /// The device.
    pub device: String,
    /// Name or initials.
    pub person: String,
    /// Roles.
    pub roles: Vec<Role>,
    /// The machine.
    pub machine: Option<String>,
    /// When they joined.
    pub since: Time,
}

/// A changed site file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SiteChangeCard {
    /// The digest to confirm.
    pub digest: String,
    /// What differs, in words.
    pub differences: Vec<SiteDifference>,
    /// What is odd about the new plan.
    pub odd: Vec<crate::plan_sense::Odd>,
    /// The marks, calls and acceptances that it would touch.
    pub touches: crate::said::touched::Touched,
    /// When it was found.
    pub since: Time,
}

/// An aim in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct AimCard {
    /// The mark or target.
    pub on: String,
    /// The aim.
    pub aim: Length,
}

/// The supervisor's view; none while there is no site or no day.
pub fn view(state: &State) -> Option<Supervisor> {
    let site = state.site()?;
    let machines = cards::machines(state);
    let set_ups = cards::set_ups(state);
    let marks = cards::marks(state);
    let exceptions = exceptions(state, &machines, &set_ups, &marks);
    Some(Supervisor {
        site: site.name.clone(),
        day: state.day.as_ref()?.id.clone(),
        exceptions,
        people: people(state),
        site_change: state.site_change.as_ref().map(|change| SiteChangeCard {
            digest: change.found.digest.clone(),
            differences: change.found.differences.clone(),
            odd: change.found.odd.clone(),
            touches: change.found.touches.clone(),
            since: change.since,
        }),
        codes_generation: state.codes_generation,
        contours: contour::contours(state),
        aims: state
            .aims
            .iter()
            .filter(|(_, aim)| **aim != Length::ZERO)
            .map(|(on, aim)| AimCard {
                on: on.clone(),
                aim: *aim,
            })
            .collect(),
        suspects: cards::suspects(state),
        questions: QuestionsCard {
            asked: u32::try_from(state.asked.len()).unwrap_or(u32::MAX),
            answered: state.slips.answered,
            slips: state.slips.slips,
            hits: state.slips.hits,
        },
        coverage: coverage::coverage(state),
        account: Box::new(account::account(state)),
        inside: way_in::inside(state),
        levels: state
            .levels
            .iter()
            .map(|(entry, run)| LevelsCard {
                entry: *entry,
                run: run.clone(),
            })
            .collect(),
        cuts: Box::new(cuts::card(state, true)),
        machines,
        set_ups,
        marks,
    })
}

fn people(state: &State) -> Vec<PersonCard> {
    let mut people: Vec<PersonCard> = state
        .devices
        .iter()
        .filter(|(_, device)| !device.removed)
        .map(|(id, device)| PersonCard {
            device: id.clone(),
            person: device.person.clone(),
            roles: device.roles.clone(),
            machine: device.machine.clone(),
            since: device.since,
        })
        .collect();
    people.sort_by_key(|person| person.since);
    people
}

/// Everything that needs somebody, oldest first.
fn exceptions(
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
    found.extend(cuts_owed::exceptions(state));
    found.extend(of_account(state));
    found.sort_by_key(|exception| exception.since);
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

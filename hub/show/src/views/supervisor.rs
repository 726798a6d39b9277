//! The supervisor's screen: cards of machines and lasers, exceptions worst first, people, what the hub knows of itself.

use contract::ToSchema;
use earthwork::length::Length;
use serde::Serialize;

use crate::views::account::{self, Account};
use crate::views::exception::Exception;
use crate::views::exceptions;
use crate::views::laser_cards::{self, SetUpCard, SuspectCard};
use crate::views::machine_card::{self, MachineCard};
use crate::views::mark_card::{self, MarkCard};
use crate::views::parts::screen;
use crate::views::start::{self, StartCard};
use crate::views::way_in::InsideCard;
use crate::views::{contour, cuts, record, way_in};
use day::asked::Role;
use day::coverage::{self, RunCoverage};
use day::said::codes::Lasts;
use day::said::near_miss::NearMissCard;
use day::said::pump::WaterNow;
use day::said::rain::RainNow;
use day::said::site::SiteDifference;
use day::said::turning::LevelsRun;
use day::site::Site;
use day::state::{PendingChange, State};
use day::time::Time;

/// What the supervisor's page shows.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = SupervisorView)]
pub struct Supervisor {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// What was last said of the rain.
    pub rain: RainNow,
    /// Water that stands, in the order of its newest words.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub water: Vec<WaterNow>,
    /// One card for each machine.
    pub machines: Vec<MachineCard>,
    /// Every set-up of the day that is not closed.
    pub set_ups: Vec<SetUpCard>,
    /// What needs somebody, the gravest first and of those the oldest.
    pub exceptions: Vec<Exception>,
    /// Who has joined.
    pub people: Vec<PersonCard>,
    /// The last reading on each mark that has one.
    pub marks: Vec<MarkCard>,
    /// A changed site file that waits for confirmation.
    pub site_change: Option<SiteChangeCard>,
    /// How often the codes of this day were renewed.
    pub codes_generation: u32,
    /// How long codes last.
    pub codes_last: Lasts,
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
    /// The start of the day.
    pub start: StartCard,
    /// Near misses that are open, oldest first.
    pub near_misses: Vec<NearMissCard>,
    /// Cuts and what is buried, with what is for the engineer.
    pub cuts: Box<cuts::CutsCard>,
    /// The close of the day, visitors, inspections, queries, photos.
    pub record: Box<record::RecordCard>,
}

/// A line of levels that closes.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct LevelsCard {
    /// Its entry, for `add_benchmark`.
    pub entry: u64,
    /// What was read and what came of it.
    pub run: LevelsRun,
}

/// How the questions about readings came out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
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

/// Someone who has joined.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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
    /// The supervisor who has confirmed today whose phone this is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub confirmed_by: Option<String>,
    /// It stays in over the night.
    pub stays: bool,
    /// It stayed in, and nobody has said yet who holds it.
    pub asks_who: bool,
    /// A competent person that the site file names goes by that name: without a confirmation it counts for nothing.
    pub competent: bool,
}

/// A changed site file.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct SiteChangeCard {
    /// The digest to confirm.
    pub digest: String,
    /// What differs, in words.
    pub differences: Vec<SiteDifference>,
    /// What is odd about the new plan.
    pub odd: Vec<day::plan_sense::Odd>,
    /// The marks, calls and acceptances that it would touch.
    pub touches: day::said::touched::Touched,
    /// What pages changed since the file in force, and this file would undo.
    pub undoes: Vec<day::said::site::Undone>,
    /// When it was found.
    pub since: Time,
}

/// An aim in force.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct AimCard {
    /// The mark or target.
    pub on: String,
    /// The aim.
    pub aim: Length,
}

screen! {
    /// The supervisor's view; none while there is no site or no day.
    Supervisor(state, site, day) {}
    field Seldom site: site.name.clone(),
    field Seldom day: day.id.clone(),
    field Seldom rain: state.rain.clone(),
    maybe Seldom water: state.cuts.water.clone(),
    list Always machines(alike): machine_card::cards(state),
    list Marks set_ups(alike): laser_cards::set_ups(state),
    field Spare exceptions: needs_somebody(state, site),
    field Seldom people: people(state),
    each Marks marks(alike): mark_card::cards(state, site),
    field Seldom site_change: state.site_change.as_ref().map(site_change),
    field Seldom codes_generation: state.codes_generation,
    field Seldom codes_last: state.codes.lasts,
    field Seldom aims: aims(state),
    field Spare contours: contour::contours(state),
    field Marks suspects: laser_cards::suspects(state),
    field Marks questions: questions(state),
    field Spare coverage: coverage::coverage(state),
    card Spare account: Box::new(account::account(state)),
    field Always inside: way_in::inside(state),
    field Seldom levels: levels(state),
    card Seldom start: start::card(state),
    field Seldom near_misses: state.near_misses.open.clone(),
    card Marks cuts: Box::new(cuts::card(state, true)),
    card Spare record: Box::new(record::card(state)),
}

fn needs_somebody(state: &State, site: &Site) -> Vec<Exception> {
    let (machines, set_ups) = (machine_card::cards(state), laser_cards::set_ups(state));
    exceptions::exceptions(
        state,
        &machines,
        &set_ups,
        &mark_card::cards(state, site).all(),
    )
}

fn site_change(change: &PendingChange) -> SiteChangeCard {
    SiteChangeCard {
        digest: change.found.digest.clone(),
        differences: change.found.differences.clone(),
        odd: change.found.odd.clone(),
        touches: change.found.touches.clone(),
        undoes: change.found.undoes.clone(),
        since: change.since,
    }
}

fn aims(state: &State) -> Vec<AimCard> {
    let aims = state.aims.iter();
    aims.filter(|(_, aim)| **aim != Length::ZERO)
        .map(|(on, aim)| AimCard {
            on: on.clone(),
            aim: *aim,
        })
        .collect()
}

fn questions(state: &State) -> QuestionsCard {
    QuestionsCard {
        asked: u32::try_from(state.asked.len()).unwrap_or(u32::MAX),
        answered: state.slips.answered,
        slips: state.slips.slips,
        hits: state.slips.hits,
    }
}

fn levels(state: &State) -> Vec<LevelsCard> {
    let levels = state.levels.iter();
    levels
        .map(|(entry, run)| LevelsCard {
            entry: *entry,
            run: run.clone(),
        })
        .collect()
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
            confirmed_by: device.confirmed_by.clone(),
            stays: device.stays,
            asks_who: device.asks_who,
            competent: state
                .site()
                .is_some_and(|site| site.cuts.competent.contains(&device.person)),
        })
        .collect();
    people.sort_by_key(|person| person.since);
    people
}

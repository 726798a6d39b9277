//! A day afterwards, from its entries alone: what was built, who said what, what is open, and what each screen showed.
//!
//! | question | file |
//! |---|---|
//! | how did each call travel, and how long did it take | `calls` |
//! | what was read and said at each mark | `marks` |
//! | what happened to each laser | `set_ups` |
//! | what did machines, screens, lasers and people do over time | `lanes` |
//! | what was out of the ordinary, what changed in the site | `exceptions` |
//! | what did every screen show at a moment | `moment` |
//! | who told a machine to dig near a place between two moments | `told` |
//! | what does the next crew need of a run | `hand_over` |

use words::Text;

pub mod calls;
pub mod exceptions;
pub mod hand_over;
pub mod lanes;
pub mod marks;
pub mod moment;
pub mod set_ups;
pub mod told;

#[cfg(test)]
mod tests;

use std::collections::BTreeMap;

use contract::ToSchema;
use serde::Serialize;

use crate::tell::tell;
use crate::views::account::{self, Account, next};
use crate::views::papers::{PhotoCard, photos_of_the_day};
use calls::CallHistory;
use day::apply;
use day::built::{self, BuiltMark};
use day::coverage::{self, RunCoverage};
use day::entry::{Body, Entry};
use day::open::{self, OpenItem};
use day::state::State;
use day::time::Time;
use exceptions::Noted;
use lanes::{Lane, Watch};
use marks::MarkHistory;
use set_ups::SetUpHistory;

/// One day of the log: its entries, and the state that they lead to.
#[derive(Debug)]
pub struct Day<'a> {
    /// From the entry that opened it to the last.
    pub entries: &'a [Entry],
    /// The state after the last of them.
    pub state: State,
    /// What everyone did over time.
    pub lanes: Vec<Lane>,
    /// Amendments of its entries that were made on later days.
    pub later: &'a [Entry],
    /// By the reading behind each call: when its bottom was expected at grade.
    pub arrivals: BTreeMap<u64, Time>,
}

impl<'a> Day<'a> {
    /// Folds a day on top of the state that it opened with.
    pub fn fold(opening: State, entries: &'a [Entry]) -> Self {
        let mut state = opening;
        let mut watch = Watch::default();
        let mut arrivals = BTreeMap::new();
        for entry in entries {
            apply(&mut state, entry);
            watch.look(&state, entry.at);
            if let Body::CallSent(sent) = &entry.body
                && let Some(reading) = sent.readings.last()
                && let Some(card) = next::arrival(&state, &sent.machine)
                && sent.mark.as_ref() == Some(&card.mark)
            {
                arrivals.insert(*reading, card.at);
            }
        }
        Self {
            entries,
            arrivals,
            lanes: watch.lanes(state.at),
            later: &[],
            state,
        }
    }

    /// The same with what later days amended of it.
    #[must_use]
    pub fn amended_by(mut self, later: &'a [Entry]) -> Self {
        self.later = later;
        self
    }

    /// When its last entry was taken.
    pub fn until(&self) -> Time {
        self.state.at
    }
}

/// An entry as a sentence, and where to find it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Sentence {
    /// The entry.
    pub seq: u64,
    /// When it was made.
    pub at: Time,
    /// Who said it.
    pub by: String,
    /// The machine that it is about.
    #[schema(required)]
    pub machine: Option<String>,
    /// The mark that it is about.
    #[schema(required)]
    pub mark: Option<String>,
    /// What is said.
    #[serde(flatten)]
    pub text: Text,
}

impl Sentence {
    /// The sentence of an entry.
    pub fn of(entry: &Entry) -> Self {
        let told = tell(entry);
        Self {
            seq: entry.seq,
            at: entry.made_at,
            by: entry.by.person.clone(),
            machine: told.machine,
            mark: told.mark,
            text: told.text,
        }
    }
}

/// Everything that a supervisor looks at afterwards.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[schema(as = ReviewView)]
pub struct Review {
    /// The job.
    pub site: String,
    /// The day.
    pub day: String,
    /// Its first entry.
    pub first: u64,
    /// Its last entry so far.
    pub last: u64,
    /// When it was opened.
    pub from: Time,
    /// Its last moment so far.
    pub to: Time,
    /// What was out of the ordinary, by when it happened.
    pub exceptions: Vec<Noted>,
    /// What is open.
    pub open: Vec<OpenItem>,
    /// Where each mark that was read stands, by name.
    pub built: Vec<BuiltMark>,
    /// Each call's way, in the order in which they went out.
    pub calls: Vec<CallHistory>,
    /// Each mark's history, by name.
    pub marks: Vec<MarkHistory>,
    /// Each set-up with its readings, checks and doubts.
    pub set_ups: Vec<SetUpHistory>,
    /// What everyone did over time.
    pub lanes: Vec<Lane>,
    /// What changed in the site, and why.
    pub changes: Vec<Sentence>,
    /// The close and its signature, amendments, visitors, inspections, queries, notes, photos.
    pub record: Vec<Sentence>,
    /// Photos of the day, and older ones that have not come; oldest first.
    pub photos: Vec<PhotoCard>,
    /// What was amended of it on later days, each under a signature of its own.
    pub amended_later: Vec<Sentence>,
    /// What of each run is not proven.
    pub coverage: Vec<RunCoverage>,
    /// Hours, cost, loads, gravel, tests, where passes land.
    pub account: Box<Account>,
}

/// The review of a day; none while there is no site.
pub fn review(day: &Day<'_>) -> Option<Review> {
    let state = &day.state;
    let open_day = state.day.as_ref()?;
    Some(Review {
        site: state.site()?.name.clone(),
        day: open_day.id.clone(),
        first: open_day.first,
        last: state.seq,
        from: open_day.at,
        to: state.at,
        exceptions: exceptions::exceptions(day.entries),
        open: open::open(state),
        built: built::built(state),
        calls: calls::calls(day),
        marks: marks::marks(day),
        set_ups: set_ups::set_ups(day),
        lanes: day.lanes.clone(),
        changes: exceptions::changes(day.entries),
        record: exceptions::record(day.entries),
        photos: photos_of_the_day(state),
        amended_later: day.later.iter().map(Sentence::of).collect(),
        coverage: coverage::coverage(state),
        account: Box::new(account::account(state)),
    })
}

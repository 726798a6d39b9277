//! The record of the day beside what was dug: its close and signature, visitors, inspections, queries, notes, photos.
//!
//! | to learn | read |
//! |---|---|
//! | what keeps a day from being closed | [`missing`] |
//! | what is taken once it is closed | [`gate`] |
//! | each thing that is said | `said/close.rs`, `sign.rs`, `amend.rs`, `note.rs`, `visit.rs`, `inspection.rs`, `query.rs`, `photo.rs`, `head.rs` |

pub mod gate;
pub mod missing;

use std::collections::{BTreeMap, BTreeSet};

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::entry::Entry;
use crate::open::OpenItem;
use crate::said::amend::DayAmended;
use crate::said::close::DayClosed;
use crate::said::head::HeadMismatch;
use crate::said::inspection::{Inspected, InspectionAsked, Signature};
use crate::said::note::NoteAdded;
use crate::said::photo::{PhotoAdded, PhotoGivenUp, PhotoPromised};
use crate::said::query::{QueryAnswered, QueryOpened};
use crate::said::sign::DaySigned;
use crate::said::void::InspectionVoided;
use crate::state::State;
use crate::time::Time;

/// The fold of everything that belongs to the record.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Record {
    /// How the day that is open was closed.
    pub closed: Option<Dated<DayClosed>>,
    /// How it was signed.
    pub signed: Option<Dated<DaySigned>>,
    /// The days before, oldest first.
    pub days: Vec<PastDay>,
    /// What was amended, of whatever day, oldest first.
    pub amended: Vec<Dated<DayAmended>>,
    /// What was still open when the day began.
    pub carried: Vec<OpenItem>,
    /// Notes of the day, by entry.
    pub notes: BTreeMap<u64, Dated<NoteAdded>>,
    /// Visitors of the job, by name.
    pub visitors: BTreeMap<String, Visitor>,
    /// Inspections of the job, by the entry that asked for them or, when nobody asked, that made them.
    pub inspections: BTreeMap<u64, Inspection>,
    /// Queries of the job, by name.
    pub queries: BTreeMap<String, Query>,
    /// Photos of the job, by the name that the phone gave.
    pub photos: BTreeMap<String, Photo>,
    /// Phones that remember an end of the log that the log does not hold.
    pub mismatches: Vec<Dated<HeadMismatch>>,
}

/// What was said, by whom and when.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Dated<T> {
    /// The entry.
    pub seq: u64,
    /// When the hub took it.
    pub at: Time,
    /// Who said it.
    pub by: String,
    /// What.
    pub said: T,
}

impl<T: Clone> Dated<T> {
    /// What an entry says.
    pub(crate) fn of(entry: &Entry, said: &T) -> Self {
        Self {
            seq: entry.seq,
            at: entry.at,
            by: entry.by.person.clone(),
            said: said.clone(),
        }
    }
}

/// A day that is over.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PastDay {
    /// Its name.
    pub day: String,
    /// Its first entry.
    pub first: u64,
    /// Its last entry.
    pub last: u64,
    /// When it was closed, if it was.
    pub closed: Option<Time>,
    /// Who signed it, if anybody did.
    pub signed: Option<Signed>,
}

/// A day's signature in short.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[schema(as = DaySignedBy)]
pub struct Signed {
    /// Who.
    pub name: String,
    /// The entry up to which.
    pub seq: u64,
    /// That entry's hash.
    pub hash: String,
}

/// A visitor.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Visitor {
    /// On site since when; none while off site.
    pub here: Option<Time>,
    /// When they last left.
    pub left: Option<Time>,
    /// The targets that a supervisor shows them.
    pub shown: Vec<String>,
}

/// An inspection: asked for, made, signed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Inspection {
    /// What was asked for; none when the inspector came unasked.
    pub asked: Option<Dated<InspectionAsked>>,
    /// What came of it.
    pub made: Option<Dated<Inspected>>,
    /// The inspector's own signature.
    pub signed: Option<Dated<Signature>>,
    /// Why it does not count any more.
    #[serde(default)]
    pub void: Option<Dated<InspectionVoided>>,
}

/// A query to the engineer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Query {
    /// What is asked.
    pub opened: Dated<QueryOpened>,
    /// The answers, oldest first; the last counts.
    pub answers: Vec<Dated<QueryAnswered>>,
}

impl Query {
    /// Whether calls wait for its answer at this mark or target.
    pub fn stops(&self, mark: Option<&str>, target: Option<&str>) -> bool {
        let named = |name: &String| Some(name.as_str()) == mark || Some(name.as_str()) == target;
        self.answers.is_empty() && self.opened.said.stop && self.opened.said.on.iter().any(named)
    }
}

/// A photo: promised by a phone, and delivered or still owed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Photo {
    /// What the phone says that it is of.
    pub promised: Dated<PhotoPromised>,
    /// When it was taken, on the hub's clock as the phone knew it; none in a state from before it was kept.
    #[serde(default)]
    pub made_at: Option<Time>,
    /// Its bytes, once they have come.
    pub added: Option<Dated<PhotoAdded>>,
    /// Why nobody waits for them any more.
    #[serde(default)]
    pub given_up: Option<Dated<PhotoGivenUp>>,
}

impl Photo {
    /// Whether its bytes are still waited for.
    pub fn is_owed(&self) -> bool {
        self.added.is_none() && self.given_up.is_none()
    }
}

impl Record {
    /// The query that keeps calls from a mark or target, oldest first.
    pub fn stopped_by(&self, mark: Option<&str>, target: Option<&str>) -> Option<&String> {
        let stops = |(_, query): &(&String, &Query)| query.stops(mark, target);
        let found = self.queries.iter().filter(stops);
        found
            .min_by_key(|(_, query)| query.opened.seq)
            .map(|(id, _)| id)
    }

    /// Whether what was inspected was inspected again later.
    pub fn inspected_again(&self, earlier: &Inspection) -> bool {
        let Some(made) = &earlier.made else {
            return false;
        };
        let names = |one: &Inspected| -> BTreeSet<String> {
            let marks = one.looked_at.iter().map(|looked| looked.mark.clone());
            marks.collect()
        };
        self.inspections.values().any(|other| {
            other.made.as_ref().is_some_and(|later| {
                later.seq > made.seq
                    && (later.said.what == made.said.what
                        || names(&made.said).is_subset(&names(&later.said)))
            })
        })
    }

    /// Whether the day that holds an entry was signed; `first` is the first entry of the day that is open.
    pub fn is_signed(&self, seq: u64, first: u64) -> bool {
        if seq >= first {
            return self.signed.is_some();
        }
        let of = |day: &&PastDay| day.first <= seq && seq <= day.last;
        self.days
            .iter()
            .find(of)
            .is_some_and(|day| day.signed.is_some())
    }
}

/// A day begins: the one before is put by as it ended, what it left open goes on.
pub(crate) fn day_opened(state: &mut State, entry: &Entry, carried: &[OpenItem]) {
    let record = &mut state.record;
    let (closed, signed) = (record.closed.take(), record.signed.take());
    if let Some(day) = &state.day {
        record.days.push(PastDay {
            day: day.id.clone(),
            first: day.first,
            last: entry.seq.saturating_sub(1),
            closed: closed.map(|closed| closed.at),
            signed: signed.map(|signed| Signed {
                name: signed.said.signature.name,
                seq: signed.said.head.seq,
                hash: signed.said.head.hash,
            }),
        });
    }
    record.carried = carried.to_vec();
    record.notes.clear();
    // Nobody is known to be on site before they have said so today.
    for visitor in record.visitors.values_mut() {
        visitor.here = None;
    }
}

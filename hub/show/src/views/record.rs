//! The record of the day as the supervisor sees it: what is missing before the close, who signed, visitors, papers.

use contract::ToSchema;
use serde::Serialize;

use crate::views::exception::{Exception, ExceptionKind};
use crate::views::papers::{
    InspectedCard, PhotoCard, QueryCard, inspected_card, photos, photos_of_the_day, queries,
};
use crate::views::visitor;
use day::asked::{By, Role};
use day::open::{OpenItem, open};
use day::record::PastDay;
use day::record::missing::{CloseMissing, missing};
use day::said::close::DayClosed;
use day::said::head::HeadMismatch;
use day::said::sign::DaySigned;
use day::state::State;
use day::time::Time;

/// Everything that belongs to the record.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct RecordCard {
    /// How the day was closed; none while it is open.
    pub closed: Option<ClosedCard>,
    /// How it was signed.
    pub signed: Option<SignedCard>,
    /// What was amended, of whatever day, newest last.
    pub amended: Vec<AmendedCard>,
    /// What is missing before it can be closed; empty once it is.
    pub missing: Vec<CloseMissing>,
    /// What is open.
    pub open: Vec<OpenItem>,
    /// The days before, oldest first.
    pub days: Vec<PastDay>,
    /// Notes of the day, oldest first.
    pub notes: Vec<NoteCard>,
    /// Visitors of the job.
    pub visitors: Vec<VisitorCard>,
    /// Inspections of the job, oldest first.
    pub inspections: Vec<InspectedCard>,
    /// Queries of the job, oldest first.
    pub queries: Vec<QueryCard>,
    /// Photos of the day, and older ones that have not come; oldest first.
    pub photos: Vec<PhotoCard>,
    /// Phones that remember an end of the log that the log does not hold.
    pub mismatches: Vec<MismatchCard>,
}

/// How the day was closed.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct ClosedCard {
    /// When.
    pub at: Time,
    /// By whom.
    pub by: String,
    /// How.
    pub how: DayClosed,
}

/// How the day was signed.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct SignedCard {
    /// The entry.
    pub entry: u64,
    /// When.
    pub at: Time,
    /// How.
    pub how: DaySigned,
}

/// An amendment.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct AmendedCard {
    /// When.
    pub at: Time,
    /// The day whose entry it is.
    pub day: String,
    /// The entry that is amended.
    pub entry: u64,
    /// What is to be read with it.
    pub words: String,
    /// Whose signature it has.
    pub name: String,
}

/// A note.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct NoteCard {
    /// Its entry.
    pub entry: u64,
    /// When.
    pub at: Time,
    /// Whose.
    pub by: String,
    /// The words.
    pub words: String,
    /// The mark that it is about.
    pub mark: Option<String>,
}

/// A visitor.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct VisitorCard {
    /// Who.
    pub person: String,
    /// On site since; none while off site.
    pub here: Option<Time>,
    /// When they last left.
    pub left: Option<Time>,
    /// The targets that they are shown.
    pub shown: Vec<String>,
    /// Their phone is in today.
    pub joined: bool,
}

/// A phone that remembers what the log does not hold.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct MismatchCard {
    /// When it came.
    pub at: Time,
    /// What it remembers.
    pub what: HeadMismatch,
}

/// The record as it stands.
pub(crate) fn card(state: &State) -> RecordCard {
    let record = &state.record;
    RecordCard {
        closed: record.closed.as_ref().map(|closed| ClosedCard {
            at: closed.at,
            by: closed.by.clone(),
            how: closed.said.clone(),
        }),
        signed: record.signed.as_ref().map(|signed| SignedCard {
            entry: signed.seq,
            at: signed.at,
            how: signed.said.clone(),
        }),
        amended: record
            .amended
            .iter()
            .map(|one| AmendedCard {
                at: one.at,
                day: one.said.day.clone(),
                entry: one.said.entry,
                words: one.said.words.clone(),
                name: one.said.signature.name.clone(),
            })
            .collect(),
        missing: if record.closed.is_some() {
            vec![]
        } else {
            missing(state)
        },
        open: open(state),
        days: record.days.clone(),
        notes: record
            .notes
            .values()
            .map(|note| NoteCard {
                entry: note.seq,
                at: note.at,
                by: note.by.clone(),
                words: note.said.words.clone(),
                mark: note.said.mark.clone(),
            })
            .collect(),
        visitors: visitors(state),
        inspections: record
            .inspections
            .iter()
            .map(|(id, inspection)| inspected_card(*id, inspection))
            .collect(),
        queries: queries(state),
        photos: photos_of_the_day(state),
        mismatches: record
            .mismatches
            .iter()
            .map(|one| MismatchCard {
                at: one.at,
                what: one.said.clone(),
            })
            .collect(),
    }
}

/// Whoever has joined as a visitor today or was on site before, by name.
fn visitors(state: &State) -> Vec<VisitorCard> {
    let phones = state.devices.values();
    let phones = phones.filter(|device| !device.removed && device.roles.contains(&Role::Visitor));
    let joined: std::collections::BTreeSet<&String> = phones.map(|phone| &phone.person).collect();
    let known = state.record.visitors.keys();
    let all: std::collections::BTreeSet<&String> = known.chain(joined.iter().copied()).collect();
    all.into_iter()
        .map(|person| {
            let visitor = state.record.visitors.get(person);
            VisitorCard {
                person: person.clone(),
                here: visitor.and_then(|visitor| visitor.here),
                left: visitor.and_then(|visitor| visitor.left),
                shown: visitor
                    .map(|visitor| visitor.shown.clone())
                    .unwrap_or_default(),
                joined: joined.contains(person),
            }
        })
        .collect()
}

/// Whether somebody may see the photo with this hash: the crew every one, a visitor those of the runs that they are shown.
pub fn may_see_photo(state: &State, by: &By, sha256: &str) -> bool {
    let is = |photo: &PhotoCard| photo.sha256.as_deref() == Some(sha256);
    if by.roles == [Role::Visitor] {
        let view = visitor::view(state, &by.person);
        let runs = view.map(|view| view.runs).unwrap_or_default();
        return runs.iter().flat_map(|run| &run.photos).any(is);
    }
    photos(state).iter().any(is)
}

/// A log that was cut, queries that calls wait for.
pub(crate) fn exceptions(state: &State) -> Vec<Exception> {
    let cut = state.record.mismatches.iter().map(|one| Exception {
        since: one.at,
        what: ExceptionKind::LogCut {
            person: one.said.person.clone(),
            entry: one.said.remembered.seq,
        },
    });
    let queries = state.record.queries.iter();
    let waits = queries.filter(|(_, query)| query.opened.said.stop && query.answers.is_empty());
    let waits = waits.map(|(id, query)| Exception {
        since: query.opened.at,
        what: ExceptionKind::QueryWaits {
            query: id.clone(),
            on: query.opened.said.on.clone(),
        },
    });
    cut.chain(waits).collect()
}

//! The record of the day as the supervisor sees it: what is missing before the close, who signed, visitors, papers.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::{By, Role};
use crate::open::{OpenItem, open};
use crate::record::missing::{CloseMissing, missing};
use crate::record::{Inspection, PastDay, Photo, Query};
use crate::said::close::DayClosed;
use crate::said::head::HeadMismatch;
use crate::said::inspection::{Inspected, InspectionAsked};
use crate::said::query::{QueryAnswered, QueryOpened};
use crate::said::sign::DaySigned;
use crate::said::signature::Signature;
use crate::state::State;
use crate::time::Time;
use crate::views::exception::{Exception, ExceptionKind};
use crate::views::visitor;

/// Everything that belongs to the record.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ClosedCard {
    /// When.
    pub at: Time,
    /// By whom.
    pub by: String,
    /// How.
    pub how: DayClosed,
}

/// How the day was signed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SignedCard {
    /// The entry.
    pub entry: u64,
    /// When.
    pub at: Time,
    /// How.
    pub how: DaySigned,
}

/// An amendment.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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

/// An inspection.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct InspectedCard {
    /// Its number, for `inspect` and `sign_inspection`.
    pub inspection: u64,
    /// What was asked for, if anything.
    pub asked: Option<InspectionAsked>,
    /// When that was.
    pub asked_at: Option<Time>,
    /// What came of it.
    pub made: Option<Inspected>,
    /// The inspector's signature.
    pub signed: Option<Signature>,
    /// Why it does not count any more.
    pub void: Option<VoidCard>,
}

/// Why an inspection does not count any more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct VoidCard {
    /// Since when.
    pub at: Time,
    /// Where.
    pub mark: String,
    /// Why, in English.
    pub english: String,
    /// The same in Spanish.
    pub spanish: String,
}

/// A query to the engineer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct QueryCard {
    /// What is asked.
    pub asked: QueryOpened,
    /// When.
    pub at: Time,
    /// By whom.
    pub by: String,
    /// The answers, oldest first.
    pub answers: Vec<QueryAnswered>,
    /// When the last came.
    pub answered_at: Option<Time>,
}

/// A photo.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PhotoCard {
    /// The phone's name for it.
    pub photo: String,
    /// The entry that promised it.
    pub seq: u64,
    /// Its file, by the hash of its bytes; none while it is promised and has not come.
    pub sha256: Option<String>,
    /// Why it is not waited for any more.
    pub given_up: Option<String>,
    /// SHA-256 of the file from which it was reduced, as the phone says.
    pub original: Option<String>,
    /// The mark that it is of.
    pub mark: Option<String>,
    /// The face that it is of.
    pub face: Option<String>,
    /// The entry that it goes with.
    pub entry: Option<u64>,
    /// A word about it.
    pub words: String,
    /// Who took it.
    pub by: String,
    /// When it was taken.
    pub at: Time,
}

/// A phone that remembers what the log does not hold.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
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

/// An inspection as the pages show it.
pub(crate) fn inspected_card(id: u64, inspection: &Inspection) -> InspectedCard {
    InspectedCard {
        inspection: id,
        asked: inspection.asked.as_ref().map(|asked| asked.said.clone()),
        asked_at: inspection.asked.as_ref().map(|asked| asked.at),
        made: inspection.made.as_ref().map(|made| made.said.clone()),
        signed: inspection.signed.as_ref().map(|signed| signed.said.clone()),
        void: inspection.void.as_ref().map(|void| VoidCard {
            at: void.at,
            mark: void.said.mark.clone(),
            english: void.said.why.english(),
            spanish: void.said.why.spanish(),
        }),
    }
}

/// All queries, in the order in which they were asked.
pub(crate) fn queries(state: &State) -> Vec<QueryCard> {
    let mut queries: Vec<&Query> = state.record.queries.values().collect();
    queries.sort_by_key(|query| query.opened.seq);
    queries
        .into_iter()
        .map(|query| QueryCard {
            asked: query.opened.said.clone(),
            at: query.opened.at,
            by: query.opened.by.clone(),
            answers: query.answers.iter().map(|one| one.said.clone()).collect(),
            answered_at: query.answers.last().map(|one| one.at),
        })
        .collect()
}

/// All photos of the job, in the order in which they were taken.
pub fn photos(state: &State) -> Vec<PhotoCard> {
    cards(state.record.photos.iter())
}

/// Those that were taken or have come since the day was opened, and those that have not come.
pub(crate) fn photos_of_the_day(state: &State) -> Vec<PhotoCard> {
    let first = state.day.as_ref().map_or(0, |day| day.first);
    let photos = state.record.photos.iter();
    cards(photos.filter(|(_, photo)| {
        let settled = photo.added.as_ref().map(|added| added.seq);
        let settled = settled.or(photo.given_up.as_ref().map(|one| one.seq));
        settled.is_none_or(|seq| seq >= first)
    }))
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

fn cards<'a>(photos: impl Iterator<Item = (&'a String, &'a Photo)>) -> Vec<PhotoCard> {
    let mut photos: Vec<(&String, &Photo)> = photos.collect();
    photos.sort_by_key(|(_, photo)| photo.promised.seq);
    photos
        .into_iter()
        .map(|(name, photo)| PhotoCard {
            photo: name.clone(),
            seq: photo.promised.seq,
            sha256: photo.added.as_ref().map(|added| added.said.sha256.clone()),
            given_up: photo.given_up.as_ref().map(|one| one.said.why.clone()),
            original: photo.promised.said.original.clone(),
            mark: photo.promised.said.mark.clone(),
            face: photo.promised.said.face.clone(),
            entry: photo.promised.said.entry,
            words: photo.promised.said.words.clone(),
            by: photo.promised.by.clone(),
            at: photo.made_at.unwrap_or(photo.promised.at),
        })
        .collect()
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

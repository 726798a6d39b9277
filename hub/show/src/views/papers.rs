//! Inspections, queries and photos as the pages show them.

use contract::ToSchema;
use serde::Serialize;

use day::record::{Inspection, Photo, Query};
use day::said::inspection::{Inspected, InspectionAsked};
use day::said::query::{QueryAnswered, QueryOpened};
use day::said::signature::Signature;
use day::state::State;
use day::time::Time;
use words::Text;

/// An inspection.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct VoidCard {
    /// Since when.
    pub at: Time,
    /// Where.
    pub mark: String,
    /// Why.
    #[serde(flatten)]
    pub text: Text,
}

/// A query to the engineer.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
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
            text: void.said.why.text(),
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

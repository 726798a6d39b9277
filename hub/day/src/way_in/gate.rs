//! One machine's gate: whether its bucket is held down, and who has asked, was answered, or is in.

use std::collections::BTreeMap;

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::step::{Step, is_none};
use crate::time::{Time, seconds};

/// Nobody has answered for so long: it is asked again, louder.
pub const REPEAT_MS: i64 = seconds(15);
/// So often by itself; then it stands as NOT ANSWERED until somebody does something.
pub const REPEATS: u32 = 4;

/// One machine's gate.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Gate {
    /// BUCKET DOWN · LEVER LOCKED, while it holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    down: Option<Down>,
    /// Since when an entry without an answer has stopped the machine, until its operator has held BUCKET DOWN or RELEASE.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    startled: Option<Time>,
    /// Visits by name.
    visits: BTreeMap<String, Visit>,
    /// Visits that another phone has ended, until their own person has seen it.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    told_out: BTreeMap<String, ToldOut>,
}

/// Somebody else, or another phone, has said OUT for a person.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ToldOut {
    /// Who is said to be out.
    pub person: String,
    /// The phone that they went in with.
    pub device: String,
    /// Who saw it; none when it was said in the person's own name from another phone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub witness: Option<String>,
    /// What was seen.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub why: String,
    /// When.
    pub at: Time,
}

/// Who holds the bucket down, and since when.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Down {
    /// The operator.
    pub by: String,
    /// Since when.
    pub since: Time,
}

/// One ask and one stay of one person.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Visit {
    /// Who.
    pub person: String,
    /// On which phone.
    pub device: String,
    /// Where to, when it is a mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// Where it stands.
    pub stage: Stage,
    /// Since when it stands there.
    pub since: Time,
    /// How often it was asked again.
    #[serde(default)]
    pub repeats: u32,
    /// Since when the phone's link is gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lost: Option<Time>,
    /// How many come along, whom this person leads.
    #[serde(default, skip_serializing_if = "is_none")]
    pub others: u32,
}

impl Visit {
    /// Who it is, as it is read: the leader, and how many more.
    pub fn named(&self) -> String {
        if self.others == 0 {
            return self.person.clone();
        }
        format!("{} + {}", self.person, self.others)
    }
}

/// Where a visit stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// Asked; stay out.
    Asked,
    /// The operator said WAIT; stay out.
    Waiting,
    /// The operator said no; stay out.
    Refused,
    /// The bucket is down for this person, who may be in from now on.
    Answered,
    /// In, and the operator knew it before.
    In,
    /// In, and the operator had not agreed.
    Unconfirmed,
}

impl Stage {
    /// Whether the person may be within the keep-out.
    pub fn may_be_in(self) -> bool {
        matches!(self, Self::Answered | Self::In | Self::Unconfirmed)
    }

    /// Whether the operator owes an answer.
    pub fn is_open(self) -> bool {
        matches!(self, Self::Asked | Self::Waiting)
    }
}

/// What the cab has to show for a gate; anything but `Working` is STOP.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Phase {
    /// Nobody has asked.
    Working,
    /// Somebody asks.
    Asked,
    /// The bucket is down; nobody has said that they are in.
    Stopped,
    /// Somebody is in, and the operator agreed.
    Occupied,
    /// Somebody is in, and the operator had not agreed.
    Unconfirmed,
}

impl Gate {
    /// What the cab has to show. The gravest first: unconfirmed, occupied, stopped, asked.
    pub fn phase(&self) -> Phase {
        let any = |stage| self.visits.values().any(|visit| visit.stage == stage);
        if any(Stage::Unconfirmed) {
            Phase::Unconfirmed
        } else if any(Stage::In) {
            Phase::Occupied
        } else if self.is_held() || any(Stage::Answered) {
            Phase::Stopped
        } else if self.visits.values().any(|visit| visit.stage.is_open()) {
            Phase::Asked
        } else {
            Phase::Working
        }
    }

    /// Only the operator's RELEASE ends this stop: the bucket is held down, or somebody was in without an answer.
    pub fn is_held(&self) -> bool {
        self.down.is_some() || self.startled.is_some()
    }

    /// Who holds the bucket down.
    pub fn down(&self) -> Option<&Down> {
        self.down.as_ref()
    }

    /// A visit by its name.
    pub fn visit(&self, name: &str) -> Option<&Visit> {
        self.visits.get(name)
    }

    /// All visits, by name.
    pub fn visits(&self) -> impl Iterator<Item = (&String, &Visit)> {
        self.visits.iter()
    }

    /// Everybody who may be in, each once, by name.
    pub fn may_be_in(&self) -> Vec<String> {
        let inside = self.visits.values().filter(|visit| visit.stage.may_be_in());
        let mut people: Vec<String> = inside.map(Visit::named).collect();
        people.sort();
        people.dedup();
        people
    }

    /// Visits that another phone has ended and whose own person has not seen it, by name.
    pub fn told_out(&self) -> impl Iterator<Item = (&String, &ToldOut)> {
        self.told_out.iter()
    }

    /// Nothing stands here.
    pub fn is_idle(&self) -> bool {
        !self.is_held() && self.visits.is_empty() && self.told_out.is_empty()
    }

    /// Takes what happened at this machine. Total: what does not fit changes nothing.
    pub(super) fn take(&mut self, at: Time, step: &Step) {
        match step {
            Step::EntryAsked(b) => {
                let mut asks = visit(&b.person, &b.device, b.mark.clone(), Stage::Asked, at);
                asks.others = b.others;
                self.enter(&b.visit, asks);
            }
            Step::AskRepeated(b) => {
                if let Some(visit) = self.visits.get_mut(&b.visit) {
                    visit.stage = Stage::Asked;
                    visit.repeats += 1;
                }
            }
            Step::AskWithdrawn(b) => {
                self.visits.remove(&b.visit);
            }
            Step::EntryDelayed(b) => self.turn(&b.visit, Stage::Waiting, at),
            Step::EntryRefused(b) => self.turn(&b.visit, Stage::Refused, at),
            Step::BucketIsDown(b) => {
                self.startled = None;
                self.down.get_or_insert_with(|| Down {
                    by: b.operator.clone(),
                    since: at,
                });
                for name in &b.answers {
                    match self.visits.get(name).map(|visit| visit.stage) {
                        Some(Stage::Asked | Stage::Waiting) => self.turn(name, Stage::Answered, at),
                        Some(Stage::Unconfirmed) => self.agree(name),
                        _ => {}
                    }
                }
            }
            Step::PersonIn(b) => {
                let stage = if b.confirmed {
                    Stage::In
                } else {
                    Stage::Unconfirmed
                };
                if !b.confirmed && self.down.is_none() {
                    self.startled.get_or_insert(at);
                }
                let mut is_in = visit(&b.person, &b.device, b.mark.clone(), stage, at);
                is_in.others = b.others;
                self.enter(&b.visit, is_in);
            }
            Step::PersonOut(b) => {
                let ended = self.visits.remove(&b.visit);
                let by_another = b.witness.is_some() || b.phone.is_some();
                if let Some(ended) = ended.filter(|visit| by_another && visit.stage.may_be_in()) {
                    let told = ToldOut {
                        person: ended.person,
                        device: ended.device,
                        witness: b.witness.clone(),
                        why: b.why.clone(),
                        at,
                    };
                    self.told_out.insert(b.visit.clone(), told);
                }
            }
            Step::OutSeen(b) => {
                self.told_out.remove(&b.visit);
            }
            Step::Released(_) => (self.down, self.startled) = (None, None),
            Step::ReleaseRefused(_) | Step::LinkNoticed(_) => {}
        }
    }

    fn enter(&mut self, name: &str, visit: Visit) {
        self.told_out.remove(name);
        self.visits.insert(name.to_owned(), visit);
    }

    fn turn(&mut self, name: &str, stage: Stage, at: Time) {
        if let Some(visit) = self.visits.get_mut(name) {
            visit.stage = stage;
            visit.since = at;
        }
    }

    /// The operator now agrees with an entry that was not confirmed: the person has been in since it.
    fn agree(&mut self, name: &str) {
        if let Some(visit) = self.visits.get_mut(name) {
            visit.stage = Stage::In;
        }
    }

    pub(super) fn link(&mut self, at: Time, device: &str, lost: bool) {
        for visit in self.visits.values_mut() {
            if visit.device == device {
                visit.lost = lost.then(|| visit.lost.unwrap_or(at));
            }
        }
    }

    pub(super) fn came_again(&mut self, before: &str, now: &str, person: &str) {
        let own = |device: &str, of: &str| device == before && of == person;
        for visit in self.visits.values_mut() {
            if own(&visit.device, &visit.person) {
                now.clone_into(&mut visit.device);
            }
        }
        for told in self.told_out.values_mut() {
            if own(&told.device, &told.person) {
                now.clone_into(&mut told.device);
            }
        }
    }

    /// Yesterday's phones open nothing any more. Whoever was in is still in; whoever had only asked asks anew, and whoever was
    /// said to be out had the evening to say that they are not.
    pub(super) fn new_day(&mut self, at: Time) {
        self.told_out.clear();
        self.visits.retain(|_, visit| visit.stage.may_be_in());
        for visit in self.visits.values_mut() {
            visit.lost.get_or_insert(at);
        }
    }

    /// For walks over all states: how often something was asked again is all one.
    #[cfg(test)]
    pub(super) fn still(&mut self) {
        for visit in self.visits.values_mut() {
            visit.repeats = 1;
        }
    }

    /// When the next ask is repeated.
    pub fn next_repeat(&self) -> Option<Time> {
        let asked = self.visits.values().filter(|visit| repeats(visit));
        asked.map(due).min()
    }

    /// The asks that are to be repeated now.
    pub(super) fn due(&self, now: Time) -> impl Iterator<Item = (&String, &Visit)> {
        let asked = self.visits.iter().filter(|(_, visit)| repeats(visit));
        asked.filter(move |(_, visit)| due(visit) <= now)
    }
}

fn visit(person: &str, device: &str, mark: Option<String>, stage: Stage, since: Time) -> Visit {
    Visit {
        person: person.to_owned(),
        device: device.to_owned(),
        mark,
        stage,
        since,
        repeats: 0,
        lost: None,
        others: 0,
    }
}

fn repeats(visit: &Visit) -> bool {
    visit.stage == Stage::Asked && visit.repeats < REPEATS
}

fn due(visit: &Visit) -> Time {
    visit
        .since
        .plus_ms(REPEAT_MS * (i64::from(visit.repeats) + 1))
}

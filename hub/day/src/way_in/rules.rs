//! Which press makes what happen, and which is refused. Nothing here changes anything; a step does.

use thiserror::Error;

use super::WayIn;
use super::gate::{Gate, Stage, Visit};
use super::step::{
    AskRepeated, AskWithdrawn, BucketIsDown, EntryAsked, EntryDelayed, EntryRefused, LinkNoticed,
    ReleaseRefused, Released, Step,
};
use crate::time::{Time, seconds};

/// A press of the operator is about the bucket at this moment: one that was on its way for longer is pressed again.
pub const TOO_LATE_MS: i64 = seconds(10);

/// A person and the phone in their hand.
#[derive(Clone, Copy, Debug)]
pub struct Who<'a> {
    /// Name or initials.
    pub person: &'a str,
    /// The phone.
    pub device: &'a str,
}

/// Which machine, and which visit to it.
#[derive(Clone, Copy, Debug)]
pub struct Visiting<'a> {
    /// The machine.
    pub machine: &'a str,
    /// The visit.
    pub visit: &'a str,
}

/// Where somebody goes, and with how many.
#[derive(Clone, Copy, Debug, Default)]
pub struct Going<'a> {
    /// The mark, when it is one.
    pub mark: Option<&'a str>,
    /// Other machines whose keep-outs the same place lies in: what is asked of one is asked of all of them.
    pub also: &'a [String],
    /// How many come along, whom the asker leads; for an entry after an answer none keeps what was asked.
    pub others: Option<u32>,
}

/// Whoever has seen somebody out.
#[derive(Clone, Copy, Debug)]
pub struct Witness<'a> {
    /// Who.
    pub who: Who<'a>,
    /// The machine whose cab they sit in.
    pub sits_in: Option<&'a str>,
    /// As far as is known another person's phone, and since before the visit.
    pub known: bool,
    /// How many were seen out, for a group: the leader too.
    pub all: Option<u32>,
    /// What was seen.
    pub why: &'a str,
}

/// Why a press makes nothing happen.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum No {
    /// The same person is in there already.
    #[error("{0} is in already")]
    AlreadyIn(String),
    /// Whoever is in can't take the ask back.
    #[error("in: say out instead")]
    IsIn,
    /// No such visit waits for an answer.
    #[error("nobody waits under that name")]
    NotAsked,
    /// No such visit is in.
    #[error("nobody is in under that name")]
    NotIn,
    /// Another person's visit.
    #[error("that is {0}'s visit")]
    NotYours(String),
    /// A witness is somebody else than the one who was in, and does not sit in that cab.
    #[error("a witness is another person")]
    NoWitness,
    /// A witness whose phone can't be told from one of the person who is in.
    #[error("nobody knows the witness")]
    WitnessUnknown(String),
    /// A group comes out whole.
    #[error("{inside} are in, {said} said to be out")]
    NotAllOut {
        /// Who leads.
        person: String,
        /// How many are in, the leader too.
        inside: u32,
        /// How many were said to be out.
        said: u32,
    },
    /// A witness says what was seen.
    #[error("say what was seen")]
    SayWhat,
    /// Somebody asks: answer first.
    #[error("{0} asks")]
    AnswerFirst(String),
    /// The press was on its way for too long.
    #[error("too late")]
    TooLate,
}

impl WayIn {
    /// Asks to come in, at every machine concerned; the same visit once more asks again.
    ///
    /// # Errors
    /// [`No::AlreadyIn`], for the machine that was named: who is in at another one concerned is asked for there no more.
    pub fn ask(&self, to: Visiting<'_>, who: Who<'_>, going: Going<'_>) -> Result<Vec<Step>, No> {
        let mut steps = self.ask_one(to, who, going)?;
        for machine in going.also.iter().filter(|one| *one != to.machine) {
            let to = Visiting { machine, ..to };
            steps.extend(self.ask_one(to, who, going).unwrap_or_default());
        }
        Ok(steps)
    }

    fn ask_one(&self, to: Visiting<'_>, who: Who<'_>, going: Going<'_>) -> Result<Vec<Step>, No> {
        let gate = self.gate(to.machine);
        if let Some(visit) = gate.visit(to.visit) {
            let again = visit.stage.is_open() && visit.device == who.device;
            return Ok(if again {
                vec![repeated(to.machine, to.visit, visit)]
            } else {
                vec![]
            });
        }
        let mut inside = gate.visits().filter(|(_, visit)| {
            matches!(visit.stage, Stage::In | Stage::Unconfirmed) && visit.person == who.person
        });
        if inside.next().is_some() {
            return Err(No::AlreadyIn(who.person.to_owned()));
        }
        Ok(vec![Step::EntryAsked(EntryAsked {
            machine: to.machine.to_owned(),
            visit: to.visit.to_owned(),
            person: who.person.to_owned(),
            device: who.device.to_owned(),
            mark: going.mark.map(str::to_owned),
            others: going.others.unwrap_or(0),
        })])
    }

    /// Takes an ask back, answered or not: the person has not gone in and does not go in on it.
    ///
    /// # Errors
    /// [`No::IsIn`], [`No::NotYours`].
    pub fn withdraw(&self, to: Visiting<'_>, who: Who<'_>) -> Result<Vec<Step>, No> {
        let gate = self.gate(to.machine);
        let Some(visit) = gate.visit(to.visit) else {
            return Ok(vec![]);
        };
        own(visit, who)?;
        let stays = |visit: &Visit| matches!(visit.stage, Stage::In | Stage::Unconfirmed);
        if stays(visit) {
            return Err(No::IsIn);
        }
        let each = self.holding(to.visit).filter(|(_, visit)| !stays(visit));
        let each = each.map(|(machine, visit)| {
            Step::AskWithdrawn(AskWithdrawn {
                machine: machine.clone(),
                visit: to.visit.to_owned(),
                person: visit.person.clone(),
            })
        });
        Ok(each.collect())
    }

    /// The visits of that name at all machines: the same stay of the same person, in more than one keep-out.
    pub(super) fn holding<'a>(
        &'a self,
        name: &'a str,
    ) -> impl Iterator<Item = (&'a String, &'a Visit)> {
        let gates = self.gates.iter();
        gates.filter_map(move |(machine, gate)| Some((machine, gate.visit(name)?)))
    }

    /// The operator says WAIT.
    ///
    /// # Errors
    /// [`No::NotAsked`]: also when the bucket has been held down for that visit, which can't be unsaid.
    pub fn wait(&self, to: Visiting<'_>) -> Result<Vec<Step>, No> {
        let gate = self.gate(to.machine);
        let visit = open(&gate, to.visit)?;
        if visit.stage == Stage::Waiting {
            return Ok(vec![]);
        }
        Ok(vec![Step::EntryDelayed(EntryDelayed {
            machine: to.machine.to_owned(),
            visit: to.visit.to_owned(),
            person: visit.person.clone(),
        })])
    }

    /// The operator says no.
    ///
    /// # Errors
    /// As [`WayIn::wait`].
    pub fn refuse(&self, to: Visiting<'_>, why: &str) -> Result<Vec<Step>, No> {
        let gate = self.gate(to.machine);
        let visit = open(&gate, to.visit)?;
        Ok(vec![Step::EntryRefused(EntryRefused {
            machine: to.machine.to_owned(),
            visit: to.visit.to_owned(),
            person: visit.person.clone(),
            why: why.to_owned(),
        })])
    }

    /// The operator has held BUCKET DOWN · LEVER LOCKED with these visits on the screen. One that came meanwhile is not answered.
    ///
    /// # Errors
    /// [`No::TooLate`].
    pub fn bucket_down(
        &self,
        machine: &str,
        operator: &str,
        named: &[String],
        age_ms: i64,
    ) -> Result<Vec<Step>, No> {
        if age_ms > TOO_LATE_MS {
            return Err(No::TooLate);
        }
        let gate = self.gate(machine);
        let owed = |stage: Stage| stage.is_open() || stage == Stage::Unconfirmed;
        let answered: Vec<(&String, &Visit)> = named
            .iter()
            .filter_map(|name| Some((name, gate.visit(name)?)))
            .filter(|(_, visit)| owed(visit.stage))
            .collect();
        if answered.is_empty() && gate.down().is_some() {
            return Ok(vec![]);
        }
        Ok(vec![Step::BucketIsDown(BucketIsDown {
            machine: machine.to_owned(),
            operator: operator.to_owned(),
            answers: answered.iter().map(|(name, _)| (*name).clone()).collect(),
            people: answered.iter().map(|(_, v)| v.person.clone()).collect(),
        })])
    }

    /// The operator releases the machine; while somebody may be in, the press is kept as refused.
    ///
    /// # Errors
    /// [`No::TooLate`], [`No::AnswerFirst`].
    pub fn release(&self, machine: &str, age_ms: i64) -> Result<Vec<Step>, No> {
        let gate = self.gate(machine);
        let people = gate.may_be_in();
        if !people.is_empty() {
            return Ok(vec![Step::ReleaseRefused(ReleaseRefused {
                machine: machine.to_owned(),
                people,
            })]);
        }
        let mut asking = gate.visits().filter(|(_, visit)| visit.stage.is_open());
        if let Some((_, visit)) = asking.next() {
            return Err(No::AnswerFirst(visit.person.clone()));
        }
        if !gate.is_held() {
            return Ok(vec![]);
        }
        if age_ms > TOO_LATE_MS {
            return Err(No::TooLate);
        }
        Ok(vec![Step::Released(Released {
            machine: machine.to_owned(),
        })])
    }

    /// A phone's link was lost or came back; of account only while its person has a visit.
    pub fn link(&self, device: &str, lost: bool) -> Vec<Step> {
        let mut visits = self.gates.values().flat_map(Gate::visits);
        let news = visits.find(|(_, visit)| visit.device == device && visit.lost.is_some() != lost);
        let noticed = news.map(|(_, visit)| {
            Step::LinkNoticed(LinkNoticed {
                device: device.to_owned(),
                person: visit.person.clone(),
                lost,
            })
        });
        noticed.into_iter().collect()
    }

    /// The hub was started again: what was asked counts as not answered. Whoever is in stays in.
    pub fn restarted(&self) -> Vec<Step> {
        let fresh = |visit: &Visit| visit.stage == Stage::Asked && visit.repeats == 0;
        self.repeat(|gate| gate.visits().filter(|(_, visit)| fresh(visit)).collect())
    }

    /// When the next ask is repeated.
    pub fn next_deadline(&self) -> Option<Time> {
        self.gates.values().filter_map(Gate::next_repeat).min()
    }

    /// The asks that nobody has answered in time.
    pub fn on_deadline(&self, now: Time) -> Vec<Step> {
        self.repeat(|gate| gate.due(now).collect())
    }

    fn repeat<'a>(&'a self, of: impl Fn(&'a Gate) -> Vec<(&'a String, &'a Visit)>) -> Vec<Step> {
        let each = self.gates.iter().flat_map(|(machine, gate)| {
            let asks = of(gate).into_iter();
            asks.map(move |(name, visit)| repeated(machine, name, visit))
        });
        each.collect()
    }
}

fn repeated(machine: &str, name: &str, visit: &Visit) -> Step {
    Step::AskRepeated(AskRepeated {
        machine: machine.to_owned(),
        visit: name.to_owned(),
        person: visit.person.clone(),
    })
}

/// The visit that waits for the operator's answer.
fn open<'a>(gate: &'a Gate, name: &str) -> Result<&'a Visit, No> {
    let waits = gate.visit(name).filter(|visit| visit.stage.is_open());
    waits.ok_or(No::NotAsked)
}

/// The same phone, or the same person with another one after the first has gone.
pub(super) fn own(visit: &Visit, who: Who<'_>) -> Result<(), No> {
    let phone_gone = visit.person == who.person && visit.lost.is_some();
    if visit.device == who.device || phone_gone {
        return Ok(());
    }
    Err(No::NotYours(visit.person.clone()))
}

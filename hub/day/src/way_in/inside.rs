//! Who goes in and who is out, by whose word. Nothing here changes anything; a step does.

use super::WayIn;
use super::gate::{Stage, Visit};
use super::rules::{Going, No, Visiting, Who, Witness, own};
use super::step::{OutSeen, PersonIn, PersonOut, Step};

impl WayIn {
    /// Somebody goes in, or says so afterwards: at every machine concerned, and at each that the visit was asked of. Never
    /// refused: without the operator's answer, or with more people than that was for, it is an UNCONFIRMED ENTRY.
    pub fn go_in(&self, to: Visiting<'_>, who: Who<'_>, going: Going<'_>) -> Vec<Step> {
        let asked = self.holding(to.visit).map(|(machine, _)| machine.as_str());
        let also = going.also.iter().map(String::as_str);
        let mut machines: Vec<&str> = also.chain(asked).filter(|one| *one != to.machine).collect();
        machines.sort_unstable();
        machines.dedup();
        machines.insert(0, to.machine);
        let each = machines.into_iter();
        each.filter_map(|machine| self.go_in_one(Visiting { machine, ..to }, who, going))
            .collect()
    }

    fn go_in_one(&self, to: Visiting<'_>, who: Who<'_>, going: Going<'_>) -> Option<Step> {
        let gate = self.gate(to.machine);
        let known = gate.visit(to.visit);
        let stage = known.map(|visit| visit.stage);
        if matches!(stage, Some(Stage::In | Stage::Unconfirmed)) {
            return None;
        }
        let agreed = known.map_or(0, |visit| visit.others);
        let others = going.others.unwrap_or(agreed);
        Some(Step::PersonIn(PersonIn {
            machine: to.machine.to_owned(),
            visit: to.visit.to_owned(),
            person: who.person.to_owned(),
            device: who.device.to_owned(),
            mark: known
                .and_then(|visit| visit.mark.clone())
                .or_else(|| going.mark.map(str::to_owned)),
            confirmed: stage == Some(Stage::Answered)
                && others <= agreed
                && known.is_some_and(|visit| visit.device == who.device),
            others,
        }))
    }

    /// The person says OUT, of every keep-out that the visit is in; who leads a group says how many are out. For a visit that
    /// no gate holds, the word is kept and changes nothing.
    ///
    /// # Errors
    /// [`No::NotYours`], [`No::NotAllOut`].
    pub fn come_out(
        &self,
        to: Visiting<'_>,
        who: Who<'_>,
        all: Option<u32>,
    ) -> Result<Vec<Step>, No> {
        let word = |machine: &str, known: Option<&Visit>| {
            let other = known.filter(|visit| visit.device != who.device);
            Step::PersonOut(PersonOut {
                machine: machine.to_owned(),
                visit: to.visit.to_owned(),
                person: who.person.to_owned(),
                was_in: known.is_some_and(|visit| visit.stage.may_be_in()),
                witness: None,
                why: String::new(),
                phone: other.map(|_| who.device.to_owned()),
            })
        };
        let mut steps = Vec::new();
        for (machine, visit) in self.holding(to.visit) {
            own(visit, who)?;
            whole(visit, all)?;
            steps.push(word(machine, Some(visit)));
        }
        if steps.is_empty() {
            steps.push(word(to.machine, None));
        }
        Ok(steps)
    }

    /// Another named person has seen somebody out of that machine's keep-out, and has told them so.
    ///
    /// # Errors
    /// [`No::NotIn`], [`No::NoWitness`] for the person or the machine's own operator, [`No::WitnessUnknown`] when nothing tells
    /// the witness's phone from a second one of that person, [`No::SayWhat`], [`No::NotAllOut`].
    pub fn out_by_witness(&self, to: Visiting<'_>, witness: Witness<'_>) -> Result<Vec<Step>, No> {
        let gate = self.gate(to.machine);
        let inside = gate
            .visit(to.visit)
            .filter(|visit| visit.stage.may_be_in())
            .ok_or(No::NotIn)?;
        let who = witness.who;
        let own = who.person == inside.person || who.device == inside.device;
        if witness.sits_in == Some(to.machine) || own {
            return Err(No::NoWitness);
        }
        if !witness.known {
            return Err(No::WitnessUnknown(inside.person.clone()));
        }
        if witness.why.is_empty() {
            return Err(No::SayWhat);
        }
        whole(inside, witness.all)?;
        Ok(vec![Step::PersonOut(PersonOut {
            machine: to.machine.to_owned(),
            visit: to.visit.to_owned(),
            person: inside.person.clone(),
            was_in: true,
            witness: Some(who.person.to_owned()),
            why: witness.why.to_owned(),
            phone: Some(who.device.to_owned()),
        })])
    }

    /// Whoever was said to be out by another phone has seen it and is out.
    ///
    /// # Errors
    /// [`No::NotYours`].
    pub fn see_out(&self, to: Visiting<'_>, who: Who<'_>) -> Result<Vec<Step>, No> {
        let gate = self.gate(to.machine);
        let Some((_, told)) = gate.told_out().find(|(name, _)| *name == to.visit) else {
            return Ok(vec![]);
        };
        // Only the phone that they went in with, or their own name on another one: nobody is reassured for somebody else.
        if told.device != who.device && told.person != who.person {
            return Err(No::NotYours(told.person.clone()));
        }
        Ok(vec![Step::OutSeen(OutSeen {
            machine: to.machine.to_owned(),
            visit: to.visit.to_owned(),
            person: told.person.clone(),
        })])
    }
}

/// Whoever leads others says how many came out: all of them, or nobody is out.
fn whole(visit: &Visit, all: Option<u32>) -> Result<(), No> {
    let inside = visit.others + 1;
    let said = all.unwrap_or(1);
    if said == inside || !visit.stage.may_be_in() {
        return Ok(());
    }
    Err(No::NotAllOut {
        person: visit.person.clone(),
        inside,
        said,
    })
}

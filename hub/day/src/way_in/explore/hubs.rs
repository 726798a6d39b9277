//! The hub's side of the walk: the real rules and the real fold, each met once for each of its states and each message.

use std::collections::BTreeMap;

use super::{MACHINES, Message, Name, PEOPLE};
use crate::time::Time;
use crate::way_in::rules::{Going, No, TOO_LATE_MS, Visiting, Who, Witness};
use crate::way_in::{Phase, Stage, Step, Visit, WayIn};

/// The rules look at ages alone: the walk's clock stands, and what is late is said to be.
const NOW: Time = Time(0);

/// What the walk asks of one of the hub's states.
pub(super) struct Seen {
    hub: WayIn,
    pub(super) phases: Vec<Phase>,
    /// The asks that a cab's screen names, one bit each, by machine.
    pub(super) asks: Vec<u8>,
    /// Visits of people who may be in, one bit each, by machine.
    pub(super) may_be_in: Vec<u8>,
    /// Visits that were answered and have not said IN, one bit each, by machine.
    pub(super) answered: Vec<u8>,
    /// Visits for which another phone has said OUT, one bit each, by machine.
    pub(super) told_out: Vec<u8>,
}

/// The hub's states by number.
#[derive(Default)]
pub(super) struct Hubs {
    seen: Vec<Seen>,
    numbers: BTreeMap<String, u16>,
    after: BTreeMap<(u16, Message), u16>,
}

impl Hubs {
    pub(super) fn number(&mut self, hub: WayIn) -> u16 {
        let text = serde_json::to_string(&hub).unwrap();
        if let Some(number) = self.numbers.get(&text) {
            return *number;
        }
        let number = u16::try_from(self.seen.len()).unwrap();
        self.numbers.insert(text, number);
        self.seen.push(look(hub));
        number
    }

    pub(super) fn seen(&self, number: u16) -> &Seen {
        &self.seen[number as usize]
    }

    pub(super) fn count(&self) -> usize {
        self.seen.len()
    }

    /// The hub's state once a message has arrived.
    pub(super) fn after(&mut self, number: u16, message: Message) -> u16 {
        if let Some(after) = self.after.get(&(number, message)) {
            return *after;
        }
        let mut hub = self.seen(number).hub.clone();
        if message == Message::NextDay {
            hub.new_day(NOW);
        } else {
            for step in hear(&hub, message).unwrap_or_default() {
                hub.take(NOW, &step);
            }
        }
        for gate in hub.gates.values_mut() {
            gate.still();
        }
        let after = self.number(hub);
        self.after.insert((number, message), after);
        after
    }
}

fn hear(hub: &WayIn, message: Message) -> Result<Vec<Step>, No> {
    let at = |machine: u8| MACHINES[machine as usize];
    let (machine, name) = match message {
        Message::Ask(m, n)
        | Message::AskAll(m, n)
        | Message::InAll(m, n)
        | Message::Seen(m, n)
        | Message::In(m, n)
        | Message::Out(m, n)
        | Message::Withdraw(m, n)
        | Message::Refuse(m, n)
        | Message::Witness(m, n) => (m, n),
        Message::Down(m, bits) => {
            let named: Vec<String> = Name::all(bits).map(Name::text).collect();
            assert_eq!(
                hub.bucket_down(at(m), "OW", &named, TOO_LATE_MS + 1),
                Err(No::TooLate)
            );
            return hub.bucket_down(at(m), "OW", &named, 0);
        }
        Message::Release(m) => return hub.release(at(m), 0),
        Message::NextDay => return Ok(vec![]),
    };
    let (visit, device) = (name.text(), format!("g{}", name.person));
    let who = Who {
        person: PEOPLE[name.person as usize],
        device: &device,
    };
    let to = Visiting {
        machine: at(machine),
        visit: &visit,
    };
    let everywhere = MACHINES.map(str::to_owned);
    let all = Going {
        also: &everywhere,
        ..Going::default()
    };
    // Whoever only types the same name, or another one, ends nobody's visit while its own phone is heard.
    let stranger = Who {
        device: "x1",
        ..who
    };
    let heard = |visit: &Visit| visit.stage.may_be_in() && visit.lost.is_none();
    if hub.gate(to.machine).visit(to.visit).is_some_and(heard) {
        assert!(
            hub.come_out(to, stranger, None).is_err(),
            "a namesake's word frees"
        );
    }
    match message {
        Message::Ask(..) => hub.ask(to, who, Going::default()),
        Message::AskAll(..) => hub.ask(to, who, all),
        Message::In(..) => Ok(hub.go_in(to, who, Going::default())),
        Message::InAll(..) => Ok(hub.go_in(to, who, all)),
        Message::Out(..) => hub.come_out(to, who, None),
        Message::Seen(..) => hub.see_out(to, who),
        Message::Withdraw(..) => hub.withdraw(to, who),
        Message::Refuse(..) => hub.refuse(to, ""),
        _ => {
            let witness = Witness {
                who: Who {
                    person: "PN",
                    device: "s1",
                },
                sits_in: None,
                known: true,
                all: None,
                why: "seen",
            };
            let unknown = Witness {
                known: false,
                ..witness
            };
            let own = Witness { who, ..witness };
            assert!(
                hub.out_by_witness(to, unknown).is_err(),
                "an unknown witness"
            );
            assert!(hub.out_by_witness(to, own).is_err(), "a self-witness");
            hub.out_by_witness(to, witness)
        }
    }
}

/// What must hold in every state of the hub, whatever has led there.
fn look(hub: WayIn) -> Seen {
    let bits = |machine: &str, which: fn(Stage) -> bool| {
        let gate = hub.gate(machine);
        let found = gate.visits().filter(|(_, visit)| which(visit.stage));
        found.fold(0, |bits, (name, _)| bits | Name::of(name).bit())
    };
    let told = |machine: &str| {
        let gate = hub.gate(machine);
        let found = gate.told_out().map(|(name, _)| name);
        found.fold(0, |bits, name| {
            assert!(
                gate.visit(name).is_none(),
                "{name} is in and said to be out"
            );
            bits | Name::of(name).bit()
        })
    };
    let each = |which: fn(Stage) -> bool| MACHINES.map(|machine| bits(machine, which)).to_vec();
    for machine in MACHINES {
        let gate = hub.gate(machine);
        let people = gate.may_be_in();
        let release = hub.release(machine, 0).unwrap_or_default();
        let lets_go = release.iter().any(|step| matches!(step, Step::Released(_)));
        assert!(
            people.is_empty() || !lets_go,
            "{machine} let go with {people:?} in"
        );
        let stop = !matches!(gate.phase(), Phase::Working | Phase::Asked);
        assert!(
            people.is_empty() || stop,
            "{people:?} in, {machine} shows no STOP"
        );
        let agreed = gate
            .visits()
            .any(|(_, visit)| matches!(visit.stage, Stage::Answered | Stage::In));
        assert!(
            !agreed || gate.down().is_some(),
            "{machine} answered with its bucket up"
        );
    }
    Seen {
        phases: MACHINES.map(|machine| hub.gate(machine).phase()).to_vec(),
        asks: each(Stage::is_open),
        may_be_in: each(Stage::may_be_in),
        answered: each(|stage| stage == Stage::Answered),
        told_out: MACHINES.map(told).to_vec(),
        hub,
    }
}

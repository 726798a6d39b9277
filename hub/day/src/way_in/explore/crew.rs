//! The crew's side of the walk: what each person and each operator can do next, with what their screens showed them.

use super::hubs::Hubs;
use super::{Bounds, Message, Name};
use crate::way_in::Phase;

/// A person with a phone.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Person {
    pub(super) begun: u8,
    /// The visit that the phone is about: to which machine, which one.
    pub(super) visit: Option<(u8, u8)>,
    /// The phone has shown that the bucket is down for it.
    pub(super) answered: bool,
    /// IN was pressed.
    pub(super) pressed_in: bool,
    /// Stands within this machine's keep-out.
    pub(super) at: Option<u8>,
    /// Went in without the operator's answer.
    pub(super) unruly: bool,
}

/// A cab with its screen.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Cab {
    /// The bucket is on the ground and nobody touches the levers.
    pub(super) parked: bool,
    /// The screen shows STOP.
    pub(super) stop: bool,
    /// The asks that the screen names, one bit each.
    pub(super) asks: u8,
}

/// The crew, its screens, what is on its way, and the hub's state by number.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct World {
    pub(super) hub: u16,
    pub(super) people: [Person; 3],
    pub(super) cabs: [Cab; 2],
    /// One bit for each message that was ever sent.
    pub(super) sent: u64,
}

/// What the messages of a walk are called: a bit each.
#[derive(Default)]
pub(super) struct Post(Vec<Message>);

impl Post {
    fn bit(&mut self, message: Message) -> u64 {
        let at = self.0.iter().position(|one| *one == message);
        let at = at.unwrap_or_else(|| {
            self.0.push(message);
            self.0.len() - 1
        });
        assert!(at < 64, "too many kinds of messages for one walk");
        1 << at
    }

    pub(super) fn on_the_way(&self, sent: u64) -> impl Iterator<Item = Message> {
        let some = self.0.iter().enumerate();
        some.filter(move |(i, _)| sent & (1 << i) != 0)
            .map(|(_, message)| *message)
    }
}

impl World {
    /// The world as one number: worlds that are alike are one state.
    pub(super) fn packed(&self) -> (u64, u128) {
        let mut key = u128::from(self.hub);
        for person in &self.people {
            let visit = person
                .visit
                .map_or(0, |(machine, nth)| 1 + machine * 2 + nth);
            let flags = u8::from(person.answered)
                | u8::from(person.pressed_in) << 1
                | u8::from(person.unruly) << 2;
            let at = person.at.map_or(0, |at| at + 1);
            key = key << 10 | u128::from(person.begun) << 8 | u128::from(visit) << 5;
            key |= u128::from(flags) << 2 | u128::from(at);
        }
        for cab in &self.cabs {
            let flags = u8::from(cab.parked) | u8::from(cab.stop) << 1;
            key = key << 8 | u128::from(flags) << 6 | u128::from(cab.asks & 0x3f);
        }
        (self.sent, key)
    }

    /// Everything that the crew can do next.
    pub(super) fn acts(&self, bounds: Bounds, hubs: &Hubs, post: &mut Post) -> Vec<Self> {
        let mut next = Vec::new();
        for who in 0..bounds.people {
            self.person_acts(who, bounds, hubs, post, &mut next);
        }
        for machine in 0..bounds.machines {
            self.operator_acts(machine, bounds, hubs, post, &mut next);
        }
        next
    }

    fn person_acts(
        &self,
        who: u8,
        bounds: Bounds,
        hubs: &Hubs,
        post: &mut Post,
        next: &mut Vec<Self>,
    ) {
        let me = self.people[who as usize];
        let mut act = |sent: Option<Message>, me: Person| {
            let mut world = *self;
            world.people[who as usize] = me;
            world.sent |= sent.map_or(0, |message| post.bit(message));
            next.push(world);
        };
        let Some((machine, nth)) = me.visit else {
            for machine in 0..bounds.machines {
                if me.begun < bounds.visits && me.at.is_none() {
                    let asks = Name {
                        person: who,
                        nth: me.begun,
                    };
                    let asking = Person {
                        begun: me.begun + 1,
                        visit: Some((machine, me.begun)),
                        ..Person::default()
                    };
                    let ask = if bounds.both {
                        Message::AskAll(machine, asks)
                    } else {
                        Message::Ask(machine, asks)
                    };
                    act(Some(ask), asking);
                }
            }
            return;
        };
        let name = Name { person: who, nth };
        let gone = Person {
            begun: me.begun,
            ..Person::default()
        };
        if me.pressed_in {
            // In and out of the keep-out without a word, as long as nobody has said OUT.
            if !me.unruly {
                let at = if me.at.is_some() { None } else { Some(machine) };
                act(None, Person { at, ..me });
            }
            act(Some(Message::Out(me.at.unwrap_or(machine), name)), gone);
        } else {
            let seen = hubs.seen(self.hub);
            let answers = |at: u8| seen.answered[at as usize] & name.bit() != 0;
            let answered = if bounds.both {
                (0..bounds.machines).all(answers)
            } else {
                answers(machine)
            };
            if answered && !me.answered {
                act(None, Person { answered, ..me });
            }
            if me.answered {
                let inside = Person {
                    pressed_in: true,
                    at: Some(machine),
                    ..me
                };
                let goes = if bounds.both {
                    Message::InAll(machine, name)
                } else {
                    Message::In(machine, name)
                };
                act(Some(goes), inside);
            }
            for wrong in 0..bounds.machines {
                if bounds.unruly && (wrong != machine || !me.answered) {
                    let inside = Person {
                        pressed_in: true,
                        at: Some(wrong),
                        unruly: true,
                        ..me
                    };
                    act(Some(Message::In(wrong, name)), inside);
                }
            }
            act(Some(Message::Withdraw(machine, name)), gone);
        }
        if me.at.is_none() {
            // Somebody sees this person out, tells them so, and says it.
            act(Some(Message::Witness(machine, name)), gone);
        }
        if bounds.wrong && me.pressed_in && me.at == Some(machine) {
            self.seen_out_wrongly(who, hubs, post, next);
        }
    }

    /// A witness says OUT for somebody who is in. The person's own phone then says so, and whoever sees it is still in: from then
    /// on it is an entry without an answer, and the machine stops. Until then nothing but eyes can know better.
    fn seen_out_wrongly(&self, who: u8, hubs: &Hubs, post: &mut Post, next: &mut Vec<Self>) {
        let me = self.people[who as usize];
        let Some((machine, nth)) = me.visit else {
            return;
        };
        let name = Name { person: who, nth };
        let mut act = |message: Message, me: Person| {
            let mut world = *self;
            world.people[who as usize] = me;
            world.sent |= post.bit(message);
            next.push(world);
        };
        let told = hubs.seen(self.hub).told_out[machine as usize] & name.bit() != 0;
        if told {
            act(Message::In(machine, name), Person { unruly: true, ..me });
            let out = Person {
                begun: me.begun,
                ..Person::default()
            };
            act(Message::Seen(machine, name), out);
        } else {
            act(
                Message::Witness(machine, name),
                Person { unruly: true, ..me },
            );
        }
    }

    fn operator_acts(
        &self,
        machine: u8,
        bounds: Bounds,
        hubs: &Hubs,
        post: &mut Post,
        next: &mut Vec<Self>,
    ) {
        let at = machine as usize;
        let cab = self.cabs[at];
        let mut act = |sent: Option<Message>, cab: Cab| {
            let mut world = *self;
            world.cabs[at] = cab;
            world.sent |= sent.map_or(0, |message| post.bit(message));
            next.push(world);
        };
        let seen = hubs.seen(self.hub);
        let shows = Cab {
            stop: seen.phases[at] != Phase::Working,
            asks: seen.asks[at],
            ..cab
        };
        act(None, shows);
        if cab.asks != 0 || bounds.moody {
            let parked = Cab {
                parked: true,
                ..cab
            };
            act(Some(Message::Down(machine, cab.asks)), parked);
        }
        if bounds.moody {
            for name in Name::all(cab.asks) {
                act(Some(Message::Refuse(machine, name)), cab);
            }
        }
        if cab.parked && cab.stop {
            act(Some(Message::Release(machine)), cab);
        }
        if cab.parked && !cab.stop {
            let moves = Cab {
                parked: false,
                ..cab
            };
            act(None, moves);
        }
    }

    /// A new day: the phones of the day before are known no more, so nothing that they sent arrives; who was not answered asks anew.
    pub(super) fn next_day(&self, hubs: &mut Hubs) -> Self {
        let mut world = *self;
        for (who, person) in (0_u8..).zip(&mut world.people) {
            let Some((machine, nth)) = person.visit else {
                continue;
            };
            let may_be_in = hubs.seen(self.hub).may_be_in[machine as usize];
            if person.at.is_none() && may_be_in & (Name { person: who, nth }).bit() == 0 {
                *person = Person {
                    begun: person.begun,
                    ..Person::default()
                };
            }
        }
        world.sent = 0;
        world.hub = hubs.after(self.hub, Message::NextDay);
        world
    }

    /// What must hold: who went in by the rules is named on every screen, and the machine stands still under STOP.
    pub(super) fn judge(&self, bounds: Bounds, hubs: &Hubs) -> Result<(), String> {
        for (who, person) in (0_u8..).zip(&self.people) {
            let (Some(at), false) = (person.at, person.unruly) else {
                continue;
            };
            for machine in 0..bounds.machines {
                if machine == at || bounds.both {
                    self.judge_at(machine, who, hubs)?;
                }
            }
        }
        self.judge_told(hubs)
    }

    /// Whoever another phone said to be out is told so on their own, as long as they have not answered and nothing else names them.
    fn judge_told(&self, hubs: &Hubs) -> Result<(), String> {
        let seen = hubs.seen(self.hub);
        for (at, told) in seen.told_out.iter().enumerate() {
            if told & seen.may_be_in[at] != 0 {
                return Err(format!("said to be in and out at machine {at}"));
            }
        }
        Ok(())
    }

    fn judge_at(&self, machine: u8, who: u8, hubs: &Hubs) -> Result<(), String> {
        let cab = self.cabs[machine as usize];
        let mine = Name::all(0xff).filter(|name| name.person == who);
        let mine = mine.fold(0, |bits, name| bits | name.bit());
        let fault = if hubs.seen(self.hub).may_be_in[machine as usize] & mine == 0 {
            "no screen names them"
        } else if !cab.parked {
            "the machine moves"
        } else if !cab.stop {
            "the cab's screen shows no STOP"
        } else {
            return Ok(());
        };
        Err(format!("person {who} is in and {fault}"))
    }
}

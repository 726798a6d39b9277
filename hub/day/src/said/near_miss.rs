//! A near miss: each ALL STOP opens one with what the hub knew at that moment. A supervisor adds what happened and closes it.

use contract::ToSchema;
use earthwork::length::Length;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::asked::{By, Role};
use crate::cuts::strip;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::machine::PlaceCard;
use crate::saying::{Asking, Closed, Saying};
use crate::site::{Machine, Site};
use crate::state::State;
use crate::time::Time;
use crate::way_in::people::{self, EntryCard};

/// A face farther than this from a machine has nothing to do with it (common practice: twice a tall face and its crest).
const NEAR_A_FACE: Length = Length::from_hundredths_of_a_foot(5_000);

/// A near miss was opened, with what the hub knew then.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct NearMissOpened {
    /// Counts up over the job: the first is NM-1.
    pub number: u32,
    /// What was said with the press that opened it; may be empty.
    pub why: String,
    /// Each machine as the hub knew it.
    pub machines: Vec<MachineThen>,
    /// The faces that had been left.
    pub faces_left: Vec<String>,
}

impl Happening for NearMissOpened {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_opened(state, entry, self);
    }
}

/// A machine as the hub knew it at a stop. Nothing senses it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MachineThen {
    /// Which.
    pub machine: String,
    /// Where it was last said to stand; nothing when nobody had said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<PlaceCard>,
    /// The call that was live.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub call: Option<CallThen>,
    /// Who asked, was told to come in, or was in.
    pub people: Vec<EntryCard>,
    /// The nearest face, when one is near.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub face: Option<FaceThen>,
}

/// The call that was live at a stop.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallThen {
    /// Its number.
    pub call: u64,
    /// The mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// Its line.
    #[serde(flatten)]
    pub text: Text,
}

/// The face nearest to a machine at a stop.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct FaceThen {
    /// Which.
    pub zone: String,
    /// From where the machine was said to stand to the toe.
    pub away: Length,
}

/// A supervisor says what happened, or closes a near miss.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TellNearMiss {
    /// Which: 1 for NM-1.
    pub number: u32,
    /// What happened and what was done about it.
    pub words: String,
    /// Nothing is left to do about it: it leaves the open list.
    #[serde(default)]
    pub close: bool,
}

impl Saying for TellNearMiss {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        tell(at.state, self)
    }
}

/// Something was said about a near miss.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct NearMissTold {
    /// Which.
    pub number: u32,
    /// What.
    pub words: String,
    /// It left the open list.
    pub closed: bool,
}

impl Happening for NearMissTold {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_told(state, entry, self);
    }
}

/// Near misses of the job: they outlive the day until a supervisor closes them.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct NearMisses {
    /// How many were opened.
    pub count: u32,
    /// Those that are open, oldest first.
    pub open: Vec<NearMissCard>,
}

/// An open near miss, as the supervisor sees it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct NearMissCard {
    /// The entry that opened it; 0 in a state from before it was kept.
    #[serde(default)]
    #[schema(required)]
    pub entry: u64,
    /// Since when.
    pub since: Time,
    /// What the hub knew.
    pub then: NearMissOpened,
    /// Who pressed STOP while it stood, with what they said: the first opened it.
    pub voices: Vec<Voice>,
    /// What a supervisor has said about it since.
    pub told: Vec<Voice>,
}

/// Something that somebody said.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Voice {
    /// Who.
    pub by: String,
    /// When.
    pub at: Time,
    /// What; may be empty.
    pub words: String,
}

/// The name that people read.
pub fn name(number: u32) -> String {
    format!("NM-{number}")
}

/// What an ALL STOP opens; nothing for a further voice while every machine stands still already.
pub(crate) fn open(state: &State, site: &Site, why: &str) -> Option<Body> {
    let stands = |machine: &Machine| {
        let cab = state.cabs.get(&machine.id);
        cab.and_then(|cab| cab.stop.as_ref())
            .is_some_and(|stop| stop.all)
    };
    if site.machines.iter().all(stands) {
        return None;
    }
    let left = site.cuts.faces.iter().filter(|face| {
        let now = state.cuts.face(&face.id);
        now.is_some_and(|now| now.alarm.is_some())
    });
    Some(Body::NearMissOpened(NearMissOpened {
        number: state.near_misses.count + 1,
        why: why.to_owned(),
        machines: site
            .machines
            .iter()
            .map(|machine| machine_then(state, site, &machine.id))
            .collect(),
        faces_left: left.map(|face| face.id.clone()).collect(),
    }))
}

fn machine_then(state: &State, site: &Site, machine: &str) -> MachineThen {
    let place = state.cabs.get(machine).and_then(|cab| cab.place.clone());
    let nearest = place.as_ref().and_then(|place| {
        let toes = site.cuts.faces.iter().filter_map(|zone| {
            let away = strip::on_toe(zone, place.at)?.away;
            (away <= NEAR_A_FACE).then(|| (away, zone.id.clone()))
        });
        toes.min()
    });
    MachineThen {
        machine: machine.to_owned(),
        call: state.live_call(machine).map(|(call, live)| CallThen {
            call,
            mark: live.sent.mark.clone(),
            text: live.sent.text.clone(),
        }),
        people: people::at(&state.way_in, machine),
        face: nearest.map(|(away, zone)| FaceThen { zone, away }),
        place,
    }
}

pub(crate) fn tell(state: &State, asked: &TellNearMiss) -> Result<Vec<Body>, Refusal> {
    let mut open = state.near_misses.open.iter();
    if !open.any(|one| one.then.number == asked.number) {
        return Err(Refusal::Unknown {
            what: Thing::NearMiss,
            name: name(asked.number),
        });
    }
    let words = asked.words.trim();
    if words.is_empty() {
        return Err(Refusal::say_why(
            words::near_miss::what_happened_what_done_about(),
        ));
    }
    Ok(vec![Body::NearMissTold(NearMissTold {
        number: asked.number,
        words: words.to_owned(),
        closed: asked.close,
    })])
}

/// A further press while the stop stands is a further voice about the same near miss.
pub(crate) fn add_voice(state: &mut State, by: &By, at: Time, words: &str) {
    if let Some(newest) = state.near_misses.open.last_mut() {
        newest.voices.push(voice(&by.person, at, words));
    }
}

pub(crate) fn apply_opened(state: &mut State, entry: &Entry, body: &NearMissOpened) {
    state.near_misses.count = body.number;
    state.near_misses.open.push(NearMissCard {
        entry: entry.seq,
        since: entry.at,
        then: body.clone(),
        voices: vec![voice(&entry.by.person, entry.at, &body.why)],
        told: vec![],
    });
}

pub(crate) fn apply_told(state: &mut State, entry: &Entry, body: &NearMissTold) {
    let open = &mut state.near_misses.open;
    if body.closed {
        open.retain(|one| one.then.number != body.number);
    } else if let Some(one) = open.iter_mut().find(|one| one.then.number == body.number) {
        one.told
            .push(voice(&entry.by.person, entry.at, &body.words));
    }
}

fn voice(by: &str, at: Time, words: &str) -> Voice {
    Voice {
        by: by.to_owned(),
        at,
        words: words.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, operator, supervisor};
    use crate::said::day::OpenDay;
    use crate::said::stop::{LiftStop, StopAll};
    use crate::said::way_in::ask::AskIn;

    fn stop(crew: &mut Crew, by: &By, why: &str) {
        let why = why.into();
        crew.says(by, Command::StopAll(StopAll { why })).unwrap();
    }

    fn lift(crew: &mut Crew, machine: Option<&str>) {
        let lift = LiftStop {
            machine: machine.map(Into::into),
            press: u64::MAX,
            why: "nobody there, eyes met".into(),
        };
        crew.says(&supervisor(), Command::LiftStop(lift)).unwrap();
    }

    fn told(number: u32, words: &str, close: bool) -> Command {
        Command::TellNearMiss(TellNearMiss {
            number,
            words: words.into(),
            close,
        })
    }

    #[test]
    fn an_all_stop_opens_a_near_miss_with_what_the_hub_knew() {
        let mut crew = Crew::digging();
        crew.place("EX-1", "30 ft", "40 ft");
        crew.reads("P-1", "4.70").unwrap();
        let ask = AskIn {
            machine: "EX-1".into(),
            visit: "visit-0001".into(),
            mark: Some("P-1".into()),
            others: None,
        };
        crew.says(&ground(), Command::AskIn(ask)).unwrap();
        stop(&mut crew, &ground(), "driver on foot");
        let [open] = &crew.state.near_misses.open[..] else {
            panic!("{:?}", crew.state.near_misses);
        };
        let [first, second] = &open.then.machines[..] else {
            panic!("two machines");
        };
        assert_eq!((open.then.number, open.voices.len()), (1, 1));
        assert_eq!(first.call.as_ref().unwrap().text.english, "DOWN 3");
        assert_eq!(
            first.place.as_ref().unwrap().at,
            crate::given::at("30 ft", "40 ft")
        );
        assert_eq!(first.people[0].person, "RT");
        assert!(second.call.is_none() && second.people.is_empty());
    }

    #[test]
    fn a_further_press_is_a_voice_and_a_stop_after_one_machine_was_lifted_is_another_near_miss() {
        let mut crew = Crew::digging();
        stop(&mut crew, &ground(), "");
        stop(&mut crew, &operator("EX-2"), "I saw him too");
        assert_eq!(crew.state.near_misses.open.len(), 1);
        let voices = &crew.state.near_misses.open[0].voices;
        assert_eq!(voices[1].words, "I saw him too");
        lift(&mut crew, Some("EX-2"));
        assert!(crew.state.cabs["EX-1"].stop.is_some(), "EX-1 stays stopped");
        assert!(crew.state.cabs["EX-2"].stop.is_none());
        stop(&mut crew, &ground(), "again");
        let numbers: Vec<u32> = crew
            .state
            .near_misses
            .open
            .iter()
            .map(|one| one.then.number)
            .collect();
        assert_eq!(numbers, [1, 2]);
    }

    #[test]
    fn a_near_miss_stays_open_over_the_day_until_a_supervisor_closes_it_with_words() {
        let mut crew = Crew::digging();
        stop(&mut crew, &ground(), "driver on foot");
        lift(&mut crew, None);
        let day = OpenDay {
            day: "2030-05-15".into(),
        };
        crew.says(&By::hub(), Command::OpenDay(day)).unwrap();
        let waits = |crew: &Crew| {
            let mut open = crew.state.near_misses.open.iter();
            open.any(|one| one.then.number == 1 && one.told.is_empty())
        };
        assert!(waits(&crew));
        assert!(matches!(
            crew.says(&supervisor(), told(1, " ", true)),
            Err(Refusal::SayWhy { .. })
        ));
        assert!(matches!(
            crew.says(&ground(), told(1, "seen", true)),
            Err(Refusal::NotAllowed { .. })
        ));
        crew.says(&supervisor(), told(1, "driver briefed", false))
            .unwrap();
        assert!(!waits(&crew), "somebody has said what happened");
        assert_eq!(crew.state.near_misses.open[0].told[0].by, "PN");
        crew.says(&supervisor(), told(1, "trucks wait at the street", true))
            .unwrap();
        assert!(crew.state.near_misses.open.is_empty());
        assert!(matches!(
            crew.says(&supervisor(), told(1, "more", false)),
            Err(Refusal::Unknown { .. })
        ));
        stop(&mut crew, &ground(), "");
        assert_eq!(
            crew.state.near_misses.open[0].then.number, 2,
            "names are not used again"
        );
    }
}

//! A call goes out, is acknowledged, refused, taken back, or ends. What has ended never comes back.

use earthwork::correction::Correction;
use earthwork::length::Length;
use earthwork::pace::stale_after_ms;
use earthwork::words::{CallText, Language, ScreenUnit, call_text, edge_text, quick_text};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::asked::{By, Role};
use crate::decide::When;
use crate::entry::{Body, Entry};
use crate::keep_out;
use crate::refusal::Refusal;
use crate::said::stop::Stopped;
use crate::state::{Call, State};
use crate::time::Time;
use crate::views::call::{CallState, Ending, Label, Message, Reminder};
use crate::views::ground::CantCard;

/// A call went out. Its number is the sequence number of this entry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallSent {
    /// The machine.
    pub machine: String,
    /// The mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// The target.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target: Option<String>,
    /// The target's revision.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub revision: Option<u32>,
    /// The set-up that it rests on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub set_up: Option<String>,
    /// What is told.
    pub message: Message,
    /// The aim in force.
    pub aim: Length,
    /// The entries of the readings behind it.
    pub readings: Vec<u64>,
    /// What to know about it.
    pub labels: Vec<Label>,
    /// The laser's last good check, when the label says that there was none since.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub checked_at: Option<Time>,
    /// The keep-out reminder.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reminder: Option<Reminder>,
    /// When it will be too old.
    pub stale_at: Time,
    /// Its line in English.
    pub english: String,
    /// Its line in Spanish.
    pub spanish: String,
}

/// A call is no longer live.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallEnded {
    /// Which.
    pub call: u64,
    /// The machine that it is for.
    pub machine: String,
    /// The mark that it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// How.
    pub how: Ending,
}

/// A call is taken back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WithdrawCall {
    /// Which.
    pub call: u64,
}

/// The operator has it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct GotIt {
    /// Which.
    pub call: u64,
}

/// The ground person saw the operator nod.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SawNod {
    /// Which.
    pub call: u64,
}

/// A call was acknowledged.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CallGot {
    /// Which.
    pub call: u64,
    /// The machine that it is for.
    pub machine: String,
    /// The mark that it is about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
    /// Who saw the nod, when it was not pressed in the cab.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub witness: Option<String>,
}

/// The operator wants somebody to look.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckMe {}

/// The operator asked for a look.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LookAsked {
    /// The machine.
    pub machine: String,
}

/// The operator can't do what was called.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SayCant {
    /// Why.
    pub why: CantReason,
}

/// The operator can't.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CantSaid {
    /// The machine.
    pub machine: String,
    /// Why.
    pub why: CantReason,
    /// The call that was live.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub call: Option<u64>,
    /// Its mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mark: Option<String>,
}

/// Why the operator can't.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum CantReason {
    /// Rock or old concrete.
    HardGround,
    /// Water in the hole.
    Water,
    /// A pipe or cable: the machine stops.
    Pipe,
    /// The line is too near.
    Line,
    /// The face moves or looks wrong: the machine stops.
    Face,
    /// Something else: come and look.
    Other,
}

/// A machine digs about this fast until its own rate is learned, in feet a minute (common practice).
pub(crate) const DIG_RATE_FT_PER_MIN: f64 = 0.05;

/// A call about to be sent.
pub(crate) struct Draft {
    pub(crate) machine: String,
    pub(crate) mark: Option<String>,
    pub(crate) target: Option<(String, u32)>,
    pub(crate) set_up: Option<String>,
    pub(crate) message: Message,
    pub(crate) aim: Length,
    pub(crate) readings: Vec<u64>,
    pub(crate) labels: Vec<Label>,
    pub(crate) checked_at: Option<Time>,
}

/// The entry that sends a call.
pub(crate) fn send(state: &State, by: &By, when: When, draft: Draft) -> Body {
    let amount = match draft.message {
        Message::Measured { amount, .. } => amount.abs(),
        Message::ByEye { .. } | Message::Edge { .. } => Length::ZERO,
    };
    let reminder = keep_out::reminder(state, by, when.now, &draft.machine, draft.mark.as_deref());
    let line = |language| text(&draft.message, language, ScreenUnit::Tenths).line;
    let (target, revision) = draft.target.unzip();
    Body::CallSent(CallSent {
        stale_at: when
            .made_at
            .plus_ms(stale_after_ms(amount, DIG_RATE_FT_PER_MIN)),
        english: line(Language::English),
        spanish: line(Language::Spanish),
        machine: draft.machine,
        mark: draft.mark,
        target,
        revision,
        set_up: draft.set_up,
        message: draft.message,
        aim: draft.aim,
        readings: draft.readings,
        labels: draft.labels,
        checked_at: draft.checked_at,
        reminder,
    })
}

/// What a screen shows for a message.
pub fn text(message: &Message, language: Language, unit: ScreenUnit) -> CallText {
    match message {
        Message::Measured {
            correction, amount, ..
        } => call_text(correction, *amount, language, unit),
        Message::ByEye { word } => quick_text(*word, language),
        Message::Edge { shot } => edge_text(shot, language, unit),
    }
}

/// The entry that ends a call.
fn ended(id: u64, call: &Call, how: Ending) -> Body {
    Body::CallEnded(CallEnded {
        call: id,
        machine: call.sent.machine.clone(),
        mark: call.sent.mark.clone(),
        how,
    })
}

/// Ends the live call of a machine, if it has one.
pub(crate) fn end_live(state: &State, machine: &str, how: Ending) -> Option<Body> {
    let (id, call) = state.live_call(machine)?;
    Some(ended(id, call, how))
}

fn live(state: &State, id: u64) -> Result<&Call, Refusal> {
    state
        .calls
        .get(&id)
        .filter(|call| {
            state
                .live_call(&call.sent.machine)
                .is_some_and(|(live, _)| live == id)
        })
        .ok_or(Refusal::CallNotLive)
}

/// The live call, which must be for the asker's own machine.
pub(crate) fn own_live<'a>(state: &'a State, by: &By, id: u64) -> Result<&'a Call, Refusal> {
    let call = live(state, id)?;
    if by.machine.as_deref() != Some(&call.sent.machine) {
        return Err(Refusal::NotAllowed {
            roles: vec![Role::Operator],
            machine: Some(call.sent.machine.clone()),
        });
    }
    Ok(call)
}

/// The machine whose cab the asker sits in.
pub(crate) fn own_machine(by: &By) -> Result<String, Refusal> {
    by.machine.clone().ok_or_else(|| Refusal::NotAllowed {
        roles: vec![Role::Operator],
        machine: None,
    })
}

pub(crate) fn withdraw(state: &State, asked: &WithdrawCall) -> Result<Vec<Body>, Refusal> {
    let call = live(state, asked.call)?;
    Ok(vec![ended(asked.call, call, Ending::Withdrawn)])
}

pub(crate) fn got(state: &State, by: &By, asked: &GotIt) -> Result<Vec<Body>, Refusal> {
    let call = own_live(state, by, asked.call)?;
    Ok(acknowledge(call, asked.call, None))
}

pub(crate) fn saw_nod(state: &State, by: &By, asked: &SawNod) -> Result<Vec<Body>, Refusal> {
    let call = live(state, asked.call)?;
    Ok(acknowledge(call, asked.call, Some(by.person.clone())))
}

fn acknowledge(call: &Call, id: u64, witness: Option<String>) -> Vec<Body> {
    if call.state == CallState::Got {
        return vec![];
    }
    vec![Body::CallGot(CallGot {
        call: id,
        machine: call.sent.machine.clone(),
        mark: call.sent.mark.clone(),
        witness,
    })]
}

pub(crate) fn check_me(state: &State, by: &By, _: &CheckMe) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    if state
        .cabs
        .get(&machine)
        .is_some_and(|cab| cab.look_asked_at.is_some())
    {
        return Ok(vec![]);
    }
    Ok(vec![Body::LookAsked(LookAsked { machine })])
}

/// The operator can't. The call ends; a pipe or a moving face stops the machine.
pub(crate) fn cant(state: &State, by: &By, asked: &SayCant) -> Result<Vec<Body>, Refusal> {
    let machine = own_machine(by)?;
    let live = state.live_call(&machine);
    let mut bodies = vec![Body::CantSaid(CantSaid {
        machine: machine.clone(),
        why: asked.why,
        call: live.map(|(id, _)| id),
        mark: live.and_then(|(_, call)| call.sent.mark.clone()),
    })];
    bodies.extend(end_live(state, &machine, Ending::Refused));
    if matches!(asked.why, CantReason::Pipe | CantReason::Face) {
        let why = match asked.why {
            CantReason::Pipe => "pipe or cable / tubo o cable",
            _ => "face / talud",
        };
        bodies.push(Body::Stopped(Stopped {
            machines: vec![machine],
            all: false,
            why: why.to_owned(),
        }));
    }
    Ok(bodies)
}

fn runs(state: &State) -> impl Iterator<Item = (u64, &Call)> {
    // The clock of a call stands still while its machine is stopped.
    state
        .cabs
        .values()
        .filter(|cab| cab.stop.is_none())
        .filter_map(|cab| cab.live)
        .filter_map(|id| Some((id, state.calls.get(&id)?)))
}

pub(crate) fn next_deadline(state: &State) -> Option<Time> {
    runs(state).map(|(_, call)| call.stale_at).min()
}

pub(crate) fn on_deadline(state: &State, now: Time) -> Vec<Body> {
    runs(state)
        .filter(|(_, call)| call.stale_at <= now)
        .map(|(id, call)| {
            let grade = matches!(
                call.sent.message,
                Message::Measured {
                    correction: Correction::Grade,
                    ..
                }
            );
            let how = if grade {
                Ending::GradeRanOut
            } else {
                Ending::StaleByAge
            };
            ended(id, call, how)
        })
        .collect()
}

pub(crate) fn apply_sent(state: &mut State, entry: &Entry, body: &CallSent) {
    state.calls.insert(
        entry.seq,
        Call {
            sent: body.clone(),
            by: entry.by.person.clone(),
            made_at: entry.made_at,
            sent_at: entry.at,
            stale_at: body.stale_at,
            state: CallState::Sent,
            delivered_at: None,
            shown_at: None,
            got_at: None,
            witness: None,
            ended_at: None,
        },
    );
    let cab = state.cab_mut(&body.machine);
    cab.live = Some(entry.seq);
    cab.last = Some(entry.seq);
    cab.called_at = Some(entry.at);
    cab.look_asked_at = None;
    cab.cant = None;
    if body.reminder.as_ref().is_some_and(|reminder| reminder.loud) {
        cab.loud_at = Some(entry.at);
    }
    if body.set_up.is_some() {
        cab.works_from.clone_from(&body.set_up);
        cab.last_mark.clone_from(&body.mark);
        cab.paused = None;
    }
}

pub(crate) fn apply_got(state: &mut State, entry: &Entry, body: &CallGot) {
    if let Some(call) = state.calls.get_mut(&body.call) {
        call.state = CallState::Got;
        call.got_at = Some(entry.at);
        call.witness.clone_from(&body.witness);
    }
}

pub(crate) fn apply_ended(state: &mut State, entry: &Entry, body: &CallEnded) {
    let Some(call) = state.calls.get_mut(&body.call) else {
        return;
    };
    call.state = CallState::Ended { how: body.how };
    call.ended_at = Some(entry.at);
    let machine = call.sent.machine.clone();
    let cab = state.cab_mut(&machine);
    if cab.live == Some(body.call) {
        cab.live = None;
    }
}

pub(crate) fn apply_look(state: &mut State, entry: &Entry, body: &LookAsked) {
    state.cab_mut(&body.machine).look_asked_at = Some(entry.at);
}

pub(crate) fn apply_cant(state: &mut State, entry: &Entry, body: &CantSaid) {
    state.cab_mut(&body.machine).cant = Some(CantCard {
        why: body.why,
        mark: body.mark.clone(),
        at: entry.at,
    });
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answer::Outcome;
    use crate::asked::Command;
    use crate::given::{Crew, ground, operator};
    use crate::said::quick_call::QuickCall;
    use crate::said::receipt::{Delivered, Shown};
    use crate::time::minutes;
    use crate::views::operator::{self as cab, CabScreen};
    use earthwork::keep_out::Nearness;
    use earthwork::words::QuickWord;

    fn called(crew: &mut Crew, mark: &str, text: &str) -> u64 {
        match crew.reads(mark, text).unwrap().outcome {
            Outcome::Called { call, .. } => call,
            other => panic!("no call: {other:?}"),
        }
    }

    #[test]
    fn a_call_goes_from_sent_to_got_it() {
        let mut crew = Crew::digging();
        let call = called(&mut crew, "P-1", "4.70");
        let cab = operator("EX-1");
        crew.says(&cab, Command::Delivered(Delivered { call }))
            .unwrap();
        assert_eq!(crew.state.calls[&call].state, CallState::Delivered);
        let shown = Shown {
            call,
            language: Language::Spanish,
            unit: ScreenUnit::Tenths,
        };
        crew.says(&cab, Command::Shown(shown)).unwrap();
        assert_eq!(crew.state.calls[&call].state, CallState::Shown);
        crew.says(&cab, Command::GotIt(GotIt { call })).unwrap();
        assert_eq!(crew.state.calls[&call].state, CallState::Got);
        // The log keeps the exact text that was shown.
        assert!(crew.log.iter().any(|entry| matches!(
            &entry.body,
            Body::CallShown(shown) if shown.text == "BAJE 3"
        )));
        let before = crew.log.len();
        crew.says(&cab, Command::GotIt(GotIt { call })).unwrap();
        assert_eq!(crew.log.len(), before, "the second press adds nothing");
    }

    #[test]
    fn another_cab_can_not_acknowledge() {
        let mut crew = Crew::digging();
        let call = called(&mut crew, "P-1", "4.70");
        assert!(matches!(
            crew.says(&operator("EX-2"), Command::GotIt(GotIt { call })),
            Err(Refusal::NotAllowed { .. })
        ));
    }

    #[test]
    fn a_nod_is_witnessed_by_name() {
        let mut crew = Crew::digging();
        let call = called(&mut crew, "P-1", "4.70");
        crew.says(&ground(), Command::SawNod(SawNod { call }))
            .unwrap();
        assert_eq!(crew.state.calls[&call].witness.as_deref(), Some("RT"));
    }

    #[test]
    fn what_was_taken_back_is_gone_and_stays_gone() {
        let mut crew = Crew::digging();
        let call = called(&mut crew, "P-1", "4.70");
        crew.says(&ground(), Command::WithdrawCall(WithdrawCall { call }))
            .unwrap();
        assert!(matches!(
            cab::view(&crew.state, "EX-1").unwrap().screen,
            CabScreen::Old {
                why: Ending::Withdrawn,
                ..
            }
        ));
        assert_eq!(
            crew.says(&operator("EX-1"), Command::GotIt(GotIt { call })),
            Err(Refusal::CallNotLive)
        );
    }

    #[test]
    fn grade_ends_quietly_and_a_number_is_said_to_be_old() {
        let mut crew = Crew::digging();
        called(&mut crew, "P-1", "5.00");
        crew.wait(minutes(8));
        assert_eq!(
            cab::view(&crew.state, "EX-1").unwrap().screen,
            CabScreen::NoCall
        );
    }

    #[test]
    fn the_clock_of_a_call_stands_still_while_the_machine_is_stopped() {
        let mut crew = Crew::digging();
        called(&mut crew, "P-1", "4.70");
        crew.says(
            &ground(),
            Command::StopAll(crate::said::stop::StopAll {
                why: "man in swing".into(),
            }),
        )
        .unwrap();
        crew.wait(minutes(30));
        assert!(crew.state.live_call("EX-1").is_some());
        assert!(matches!(
            cab::view(&crew.state, "EX-1").unwrap().screen,
            CabScreen::Stop { all: true, .. }
        ));
        let lift = |why: &str| {
            Command::LiftStop(crate::said::stop::LiftStop {
                machine: None,
                why: why.into(),
            })
        };
        assert!(crew.says(&crate::given::supervisor(), lift(" ")).is_err());
        crew.says(&crate::given::supervisor(), lift("driver is in his truck"))
            .unwrap();
        crew.wait(minutes(9) - 1);
        assert!(crew.state.live_call("EX-1").is_some());
        crew.wait(1);
        assert!(crew.state.live_call("EX-1").is_none());
    }

    #[test]
    fn a_pipe_stops_the_machine_and_hard_ground_does_not() {
        let mut crew = Crew::digging();
        let cant = |why| Command::SayCant(SayCant { why });
        crew.says(&operator("EX-1"), cant(CantReason::HardGround))
            .unwrap();
        assert!(crew.state.cabs["EX-1"].stop.is_none());
        crew.says(&operator("EX-1"), cant(CantReason::Pipe))
            .unwrap();
        assert!(crew.state.cabs["EX-1"].stop.is_some());
        assert!(crew.state.cabs["EX-2"].stop.is_none());
    }

    #[test]
    fn a_word_by_eye_is_marked_so_and_closes_no_mark() {
        let mut crew = Crew::digging();
        called(&mut crew, "P-1", "4.70");
        crew.says(
            &ground(),
            Command::QuickCall(QuickCall {
                machine: "EX-1".into(),
                word: QuickWord::There,
                mark: Some("P-1".into()),
            }),
        )
        .unwrap();
        let (_, call) = crew.state.live_call("EX-1").unwrap();
        assert!(matches!(call.sent.message, Message::ByEye { .. }));
        let (_, taken) = crew.state.last_reading("P-1").unwrap();
        let verdict = taken.reading.judged.as_ref().unwrap().verdict;
        assert_eq!(verdict, earthwork::tolerance::Verdict::High);
    }

    #[test]
    fn inside_the_keep_out_a_strip_stands_with_every_call_and_is_loud_at_first_only() {
        let mut crew = Crew::digging();
        crew.place("EX-1", "30 ft", "30 ft");
        let reminder = |crew: &mut Crew, text| {
            let call = called(crew, "P-1", text);
            crew.state.calls[&call].sent.reminder.clone()
        };
        let first = reminder(&mut crew, "4.40").unwrap();
        assert_eq!((first.who.as_str(), first.loud), ("RT", true));
        assert!(matches!(first.nearness, Nearness::Inside { .. }));
        assert!(!reminder(&mut crew, "4.50").unwrap().loud);
        crew.wait(minutes(20));
        assert!(reminder(&mut crew, "4.60").unwrap().loud);
        let moved = crate::said::machine::SayMoved {
            machine: "EX-1".into(),
        };
        crew.says(&ground(), Command::SayMoved(moved)).unwrap();
        let unknown = reminder(&mut crew, "4.70").unwrap();
        assert_eq!(unknown.nearness, Nearness::PlaceUnknown);
        assert!(unknown.loud);
        crew.place("EX-1", "900 ft", "900 ft");
        assert_eq!(reminder(&mut crew, "4.75"), None);
    }
}

//! What fills one machine's screen in the cab: the gravest thing that stands. Whether a number may be read there hangs on it.

use crate::call::{CallState, Ending};
use crate::cuts::now::{Alarm, MustLeave};
use crate::cuts::plan::FaceZone;
use crate::said::set_up::DoubtReason;
use crate::said::stop::StopCard;
use crate::state::{Cab, Call, MustSee, Screen, SetUpState, State};
use crate::time::Time;
use crate::way_in::Phase;

/// What fills the screen. Anything but a live call shows no number.
#[derive(Clone, Copy, Debug)]
pub enum Fills<'a> {
    /// A stop: only a supervisor lifts it.
    Stop(&'a StopCard),
    /// The machine may be under a face that is left.
    LeaveFace {
        /// Which.
        zone: &'a FaceZone,
        /// Why and since when.
        alarm: &'a Alarm,
        /// What its operator owes.
        must: &'a MustLeave,
    },
    /// Somebody asks to come in, or is in.
    WayIn,
    /// The site has this machine no more.
    OffSite,
    /// The laser is in doubt: the number is withdrawn.
    Pause {
        /// Which set-up.
        set_up: &'a str,
        /// Why.
        why: &'a DoubtReason,
        /// Since when.
        since: Time,
    },
    /// The target changed under a live call.
    NewTarget(&'a MustSee),
    /// The live call and its number.
    Call(u64, &'a Call),
    /// The last call has ended, and its screen says so.
    Old {
        /// The call.
        call: &'a Call,
        /// How it ended.
        why: Ending,
    },
    /// Nothing has been called, or what was has gone quietly.
    NoCall,
}

/// Whether a call fills the screen, and nothing graver.
pub fn fills_with_a_call(state: &State, machine: &str) -> bool {
    matches!(fills(state, machine), Fills::Call(..))
}

/// The number of its live call stands there, with nothing graver in its place and no panel over it.
pub fn number_in_view(state: &State, machine: &str) -> bool {
    let covered = |cab: &Cab| cab.page.covered;
    !state.cabs.get(machine).is_some_and(covered) && fills_with_a_call(state, machine)
}

/// Nobody has tapped its page since it was loaded: it can make no sound. Without a page there is none to be mute.
pub fn is_mute(state: &State, machine: &str) -> bool {
    let mute = |cab: &Cab| cab.page.mute && !matches!(cab.screen, Screen::None);
    state.cabs.get(machine).is_some_and(mute)
}

/// The gravest thing first: a stop hides who is in, that hides a face to leave, that hides who asks to come in (and stays
/// out meanwhile), then a pause, then a call.
pub fn fills<'a>(state: &'a State, machine: &str) -> Fills<'a> {
    let Some(cab) = state.cabs.get(machine) else {
        return Fills::NoCall;
    };
    if let Some(stop) = &cab.stop {
        return Fills::Stop(stop);
    }
    let phase = state.way_in.gate(machine).phase();
    if !matches!(phase, Phase::Working | Phase::Asked) {
        return Fills::WayIn;
    }
    if let Some(leave) = leave_face(state, machine) {
        return leave;
    }
    if phase == Phase::Asked {
        return Fills::WayIn;
    }
    if state
        .site()
        .is_some_and(|site| site.machine(machine).is_none())
    {
        return Fills::OffSite;
    }
    if let Some((set_up, since)) = &cab.paused
        && let Some(SetUpState::InDoubt { why, .. }) =
            state.set_up(set_up).map(|set_up| &set_up.state)
    {
        return Fills::Pause {
            set_up,
            why,
            since: *since,
        };
    }
    if let Some(must) = &cab.must_see {
        return Fills::NewTarget(must);
    }
    if let Some((id, call)) = cab.live.and_then(|id| Some((id, state.calls.get(&id)?))) {
        return Fills::Call(id, call);
    }
    match cab.last.and_then(|id| state.calls.get(&id)) {
        Some(call) => ended(call),
        None => Fills::NoCall,
    }
}

fn leave_face<'a>(state: &'a State, machine: &str) -> Option<Fills<'a>> {
    // The oldest first; the next one comes when it has been left.
    let must = state.cuts.owed_by(machine).first()?;
    let zone = state.site()?.cuts.face(&must.zone)?;
    let alarm = state.cuts.face(&must.zone)?.alarm.as_ref()?;
    Some(Fills::LeaveFace { zone, alarm, must })
}

/// What is left of a call that has ended: gone quietly, or said to be old.
fn ended(call: &Call) -> Fills<'_> {
    let CallState::Ended { how } = call.state else {
        return Fills::NoCall;
    };
    match how {
        Ending::GradeRanOut | Ending::Done | Ending::Refused | Ending::Ruled => Fills::NoCall,
        why => Fills::Old { call, why },
    }
}

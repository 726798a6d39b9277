//! From an entry to the state. Total: no rule, no error. This file only dispatches, and keeps the answers.

use crate::answer::Answer;
use crate::entry::{Body, Entry};
use crate::said;
use crate::state::State;

/// Takes one entry into the state.
pub fn apply(state: &mut State, entry: &Entry) {
    state.seq = entry.seq;
    state.at = state.at.max(entry.at);
    match &entry.body {
        Body::DayOpened(b) => said::day::apply_opened(state, entry, b),
        Body::SiteTaken(b) => said::site::apply_taken(state, b),
        Body::SiteChangeFound(b) => said::site::apply_found(state, entry, b),
        Body::SiteRevised(b) => said::site::apply_revised(state, entry, b),
        Body::Joined(b) => said::join::apply_joined(state, entry, b),
        Body::ScreenChanged(b) => said::join::apply_screen(state, b),
        Body::PhoneRemoved(b) => said::join::apply_removed(state, b),
        Body::CodesRenewed(b) => state.codes_generation = b.generation,
        Body::CodesLast(b) => said::codes::apply_last(state, b),
        Body::CabGiven(b) => said::person::apply_given(state, entry.at, b),
        Body::PersonConfirmed(b) => said::person::apply_confirmed(state, &entry.by, b),
        Body::PhoneStays(b) => said::stay::apply_stays(state, b),
        Body::WhoSaid(b) => said::stay::apply_who(state, entry, b),
        Body::LaserSetUp(b) => said::set_up::apply_set_up(state, entry, b),
        Body::SetUpRestated(b) => said::set_up::apply_restated(state, entry, b),
        Body::SetUpProven(b) => said::set_up::apply_proven(state, entry, b),
        Body::SetUpClosed(b) => said::set_up::apply_closed(state, b),
        Body::CheckShot(b) => said::check_shot::apply_check(state, entry, b),
        Body::SetUpDoubted(b) => said::check_shot::apply_doubted(state, entry, b),
        Body::LaserTested(b) => said::laser_test::apply_tested(state, entry, b),
        Body::LevelsRun(b) => said::turning::apply_run(state, entry, b),
        Body::BenchmarkAdded(b) => said::turning::apply_added(state, b),
        Body::BlindPair(b) => said::blind::apply_pair(state, b),
        Body::CheckFellDue(b) => said::check_due::apply_due(state, entry, b),
        Body::SuspectWindow(b) => said::suspect::apply_window(state, b),
        Body::MarkRepeated(b) => said::repeat::apply_repeated(state, entry, b),
        Body::QuestionSettled(b) => said::settle::apply_settled(state, b),
        Body::ReadingTaken(b) => said::reading::apply_taken(state, entry, b),
        Body::ReadingAsked(b) => said::reading::apply_asked(state, entry, b),
        Body::ReadingLate(_)
        | Body::DiagonalsMeasured(_)
        | Body::SetUpsCompared(_)
        | Body::NearFound(_)
        | Body::DepthOwed(_) => {}
        Body::EdgeRead(b) => said::edge::apply_read(state, b),
        Body::MarksLaid(b) => said::marks::apply_laid(state, entry, b),
        Body::MarksChecked(b) => said::marks::apply_checked(state, b),
        Body::MarksScraped(b) => said::marks::apply_scraped(state, entry, b),
        Body::TiesTaken(b) => said::ties::apply_taken(state, entry, b),
        Body::AcceptanceVoided(b) => said::void::apply_acceptance(state, entry, b),
        Body::CallSent(b) => said::call::apply_sent(state, entry, b),
        Body::CallDelivered(b) => said::receipt::apply_delivered(state, entry, b),
        Body::CallShown(b) => said::receipt::apply_shown(state, entry, b),
        Body::CallGot(b) => said::call::apply_got(state, entry, b),
        Body::CallEnded(b) => said::call::apply_ended(state, entry, b),
        Body::LookAsked(b) => said::call::apply_look(state, entry, b),
        Body::CantSaid(b) => said::call::apply_cant(state, entry, b),
        Body::ScreenNoticed(b) => said::receipt::apply_noticed(state, entry, b),
        Body::Stopped(b) => said::stop::apply_stopped(state, entry, b),
        Body::StopLifted(b) => said::stop::apply_lifted(state, entry, b),
        Body::AimSet(b) => said::aim::apply_set(state, b),
        Body::SiteChanged(b) => said::change::apply_changed(state, entry, b),
        Body::TargetRevised(b) => said::revise::apply_revised(state, entry, b),
        Body::TargetTyped(b) => said::prove::apply_typed(state, entry, b),
        Body::TargetSeen(b) => said::revise::apply_seen(state, b),
        Body::Ruled(b) => said::rule::apply_ruled(state, b),
        Body::MachinePlaced(b) => said::machine::apply_placed(state, entry, b),
        Body::MachineMoved(b) => said::machine::apply_moved(state, b),
        Body::EntryAsked(_)
        | Body::AskRepeated(_)
        | Body::AskWithdrawn(_)
        | Body::EntryDelayed(_)
        | Body::EntryRefused(_)
        | Body::BucketIsDown(_)
        | Body::PersonIn(_)
        | Body::PersonOut(_)
        | Body::OutSeen(_)
        | Body::ReleaseRefused(_)
        | Body::Released(_) => said::way_in::apply(state, entry),
        Body::LinkNoticed(b) => {
            said::way_in::apply(state, entry);
            said::spotter::apply_link(state, entry, b);
        }
        other => of_the_rest(state, entry, other),
    }
    // What machines do after the close is no hour of that day.
    if state.record.closed.is_none() || matches!(entry.body, Body::DayClosed(_)) {
        crate::account::meter::tick(state, entry.at);
    }
    if !entry.key.is_empty() {
        let answers = state.answers.entry(entry.by.device.clone()).or_default();
        answers
            .entry(entry.key.clone())
            .or_insert_with(|| Answer::begun(entry.seq))
            .absorb(entry);
    }
}

/// Faces and what is buried, else what goes on round the machines.
fn of_the_rest(state: &mut State, entry: &Entry, body: &Body) {
    match body {
        Body::FaceInspected(b) => said::face_inspect::apply_inspected(state, entry, b),
        Body::SoilRetyped(b) => said::face_design::apply_retyped(state, b),
        Body::FaceRevised(b) => said::face_design::apply_revised(state, b),
        Body::DaylightFound(b) => said::face_design::apply_daylight(state, entry, b),
        Body::SeenAtFace(b) => said::face_seen::apply_seen(state, entry, b),
        Body::SloughSeen(b) => said::face_seen::apply_slough(state, entry, b),
        Body::PinsRead(b) => said::face_pins::apply_read(state, entry, b),
        Body::FaceAlarmed(b) => said::face_alarm::apply_alarmed(state, entry, b),
        Body::FaceLeft(b) => said::face_alarm::apply_left(state, b),
        Body::TicketChecked(b) => said::ticket::apply_checked(state, entry, b),
        Body::PaintSaid(b) => said::ticket::apply_paint(state, entry, b),
        Body::PotholeDug(b) => said::pothole::apply_dug(state, entry, b),
        Body::DigAllowed(b) => said::allow_dig::apply_allowed(state, b),
        other => round_machines(state, entry, other),
    }
}

/// The start of the day, who watches a machine, what two operators agreed, near misses; else the record, else the account.
fn round_machines(state: &mut State, entry: &Entry, body: &Body) {
    match body {
        Body::StartCheckSaid(b) => said::start_checks::apply_said(state, entry, b),
        Body::DayReady(b) => said::start_checks::apply_ready(state, entry, b),
        Body::SlewProposed(b) => said::slew::apply_proposed(state, entry, b),
        Body::SlewAgreed(b) => said::slew::apply_agreed(state, b),
        Body::SlewVoided(b) => said::slew::apply_voided(state, b),
        Body::SpotterSet(b) => said::spotter::apply_set(state, entry, b),
        Body::SpotterGone(b) => said::spotter::apply_gone(state, b),
        Body::BatterySaid(b) => said::battery::apply_said(state, entry, b),
        Body::NearMissOpened(b) => said::near_miss::apply_opened(state, entry, b),
        Body::NearMissTold(b) => said::near_miss::apply_told(state, entry, b),
        other => {
            if !crate::record::apply(state, entry) {
                crate::account::apply(state, entry, other);
            }
        }
    }
}

/// The answer already given to a device's key, from the entries of this day.
pub fn answered(state: &State, device: &str, key: &str) -> Option<Answer> {
    state.answers.get(device)?.get(key).cloned()
}

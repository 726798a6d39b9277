//! What the log does not say about a place and a time. A page that hides its gaps proves nothing.

use contract::ToSchema;
use serde::Serialize;

use super::{NEAR, ToldPage, checked};
use crate::review::Day;
use crate::review::lanes::{LaneOf, LaneWhat};
use day::call::Message;
use day::lengths::feet;
use day::state::State;
use day::time::{Time, minutes};
use words::Text;

/// Longer without a reading is a gap (common practice).
const LONGEST_QUIET_MS: i64 = minutes(30);

/// Something that the log does not say.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Gap {
    /// From when, when it is a stretch of time.
    pub from: Option<Time>,
    /// Until when.
    pub to: Option<Time>,
    /// What it does not say.
    #[serde(flatten)]
    pub text: Text,
}

impl Gap {
    fn new(text: impl Into<Text>) -> Self {
        Self {
            from: None,
            to: None,
            text: text.into(),
        }
    }

    fn between(from: Time, to: Time, text: impl Into<Text>) -> Self {
        Self {
            from: Some(from),
            to: Some(to),
            ..Self::new(text)
        }
    }
}

pub(super) fn gaps(day: &Day<'_>, page: &ToldPage) -> Vec<Gap> {
    let mut gaps = Vec::new();
    calls(page, &mut gaps);
    screens(day, page, &mut gaps);
    quiet(page, &mut gaps);
    edges(page, &mut gaps);
    lasers(page, &mut gaps);
    marks(page, &mut gaps);
    without_a_place(&day.state, page, &mut gaps);
    photos(page, &mut gaps);
    gaps
}

fn calls(page: &ToldPage, gaps: &mut Vec<Gap>) {
    for call in &page.calls {
        let (id, line) = (call.call, &call.text);
        if call.shown_at.is_none() {
            gaps.push(Gap::new(words::told_gaps::call(&id, line)));
        } else if call.got_at.is_none() {
            gaps.push(Gap::new(words::told_gaps::call_2(&id, line)));
        }
    }
}

fn screens(day: &Day<'_>, page: &ToldPage, gaps: &mut Vec<Gap>) {
    let machine = &page.asked.machine;
    let own = LaneOf::Screen(machine.clone());
    let lane = day.lanes.iter().find(|lane| lane.of == own);
    let mut seen = false;
    for span in lane.into_iter().flat_map(|lane| &lane.spans) {
        let (from, to) = (span.from.max(page.asked.from), span.to.min(page.asked.to));
        if from >= to {
            continue;
        }
        seen = true;
        if span.what != LaneWhat::Showing {
            gaps.push(Gap::between(
                from,
                to,
                words::told_gaps::screen_not_showing(&machine),
            ));
        }
    }
    if !seen {
        gaps.push(Gap::new(words::told_gaps::no_screen_had_joined_for(
            &machine,
        )));
    }
}

/// Stretches of the time that was asked about in which nobody read the ground within reach.
fn quiet(page: &ToldPage, gaps: &mut Vec<Gap>) {
    let moments = page.readings.iter().map(|one| one.at);
    let near = feet(NEAR);
    let mut last = page.asked.from;
    for next in moments.chain([page.asked.to]) {
        if next.ms_since(last) > LONGEST_QUIET_MS {
            gaps.push(Gap::between(
                last,
                next,
                words::told_gaps::no_rod_reading_within(&near),
            ));
        }
        last = last.max(next);
    }
}

fn edges(page: &ToldPage, gaps: &mut Vec<Gap>) {
    let near = feet(NEAR);
    for line in &page.lines {
        let mut taped = page.edges.iter().filter(|edge| edge.line == line.line);
        let (to, others) = match taped.next() {
            Some(first) => (first.said.at, true),
            None => (page.asked.to, false),
        };
        let id = &line.line;
        let what = if others {
            words::told_gaps::before_the_first()
        } else {
            words::told_gaps::at_all()
        };
        gaps.push(Gap::between(
            page.asked.from,
            to,
            words::told_gaps::no_tape_to_within(&id, &near, &what),
        ));
    }
}

fn lasers(page: &ToldPage, gaps: &mut Vec<Gap>) {
    for proof in &page.lasers {
        let name = day::read_as::set_up(&proof.set_up);
        if proof.before.is_none() {
            gaps.push(Gap::new(words::told_gaps::no_good_check_before_first(
                &name,
            )));
        }
        if !proof.holds() {
            gaps.push(Gap::new(words::told_gaps::no_good_check_after_last(&name)));
        }
    }
}

fn marks(page: &ToldPage, gaps: &mut Vec<Gap>) {
    if page.marks.is_empty() {
        let near = feet(NEAR);
        gaps.push(Gap::new(words::told_gaps::no_mark_lies_within(&near)));
    }
    for mark in &page.marks {
        let id = &mark.mark;
        if mark.paint.is_none() {
            gaps.push(Gap::new(words::told_gaps::nobody_said_from_what_laid(&id)));
        } else if !checked(mark) {
            gaps.push(Gap::new(words::told_gaps::no_second_person_measured_where(
                &id,
            )));
        }
    }
}

/// A picture settles more than a number; whether there is one is said either way.
fn photos(page: &ToldPage, gaps: &mut Vec<Gap>) {
    if page.photos.is_empty() {
        gaps.push(Gap::new(words::told_gaps::no_photo_mark_within_reach()));
    }
}

/// Words by eye need no mark: such a call may have been about this place too.
fn without_a_place(state: &State, page: &ToldPage, gaps: &mut Vec<Gap>) {
    let asked = &page.asked;
    let loose = state.calls.values().filter(|call| {
        call.sent.machine == asked.machine
            && call.sent.mark.is_none()
            && call.sent_at >= asked.from
            && call.sent_at <= asked.to
            && matches!(
                call.sent.message,
                Message::ByEye { .. } | Message::Edge { .. }
            )
    });
    let many = loose.count();
    if many > 0 {
        let machine = &asked.machine;
        gaps.push(Gap::new(words::told_gaps::calls_to_named_no_mark(
            &many, &machine,
        )));
    }
}

//! What the log does not say about a place and a time. A page that hides its gaps proves nothing.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{NEAR, ToldPage, checked};
use crate::review::Day;
use crate::review::lanes::{LaneOf, LaneWhat};
use day::call::Message;
use day::lengths::feet;
use day::state::State;
use day::time::{Time, minutes};

/// Longer without a reading is a gap (common practice).
const LONGEST_QUIET_MS: i64 = minutes(30);

/// Something that the log does not say.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Gap {
    /// From when, when it is a stretch of time.
    pub from: Option<Time>,
    /// Until when.
    pub to: Option<Time>,
    /// In English.
    pub english: String,
    /// In Spanish.
    pub spanish: String,
}

impl Gap {
    fn new(english: String, spanish: String) -> Self {
        Self {
            from: None,
            to: None,
            english,
            spanish,
        }
    }

    fn between(from: Time, to: Time, english: String, spanish: String) -> Self {
        Self {
            from: Some(from),
            to: Some(to),
            ..Self::new(english, spanish)
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
        let (id, line) = (call.call, &call.english);
        if call.shown_at.is_none() {
            gaps.push(Gap::new(
                format!("Call {id}, {line}: no screen has painted it."),
                format!("Orden {id}, {}: ninguna pantalla la mostró.", call.spanish),
            ));
        } else if call.got_at.is_none() {
            gaps.push(Gap::new(
                format!("Call {id}, {line}: painted, and nobody pressed GOT IT."),
                format!(
                    "Orden {id}, {}: se mostró, y nadie apretó ENTENDIDO.",
                    call.spanish
                ),
            ));
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
                format!("The screen in {machine} was not showing."),
                format!("La pantalla en {machine} no se veía."),
            ));
        }
    }
    if !seen {
        gaps.push(Gap::new(
            format!("No screen had joined for {machine}."),
            format!("Ninguna pantalla había entrado para {machine}."),
        ));
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
                format!("No rod reading within {near}."),
                format!("Ninguna lectura a menos de {near}."),
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
        let (en, es) = if others {
            ("before the first", "antes de la primera")
        } else {
            ("at all", "en absoluto")
        };
        gaps.push(Gap::between(
            page.asked.from,
            to,
            format!("No tape to {id} within {near} {en}."),
            format!("Ninguna cinta a {id} a menos de {near} {es}."),
        ));
    }
}

fn lasers(page: &ToldPage, gaps: &mut Vec<Gap>) {
    for proof in &page.lasers {
        let (name, puesta) = day::read_as::set_up_in_both(&proof.set_up);
        if proof.before.is_none() {
            gaps.push(Gap::new(
                format!("{name}: no good check before the first of these calls."),
                format!("{puesta}: sin comprobación buena antes de la primera de estas órdenes."),
            ));
        }
        if !proof.holds() {
            gaps.push(Gap::new(
                format!("{name}: no good check after the last of these calls, and nothing that stands either way."),
                format!("{puesta}: sin comprobación buena después de la última, y nada que valga de ambos modos."),
            ));
        }
    }
}

fn marks(page: &ToldPage, gaps: &mut Vec<Gap>) {
    if page.marks.is_empty() {
        let near = feet(NEAR);
        gaps.push(Gap::new(
            format!("No mark lies within {near}."),
            format!("No hay marca a menos de {near}."),
        ));
    }
    for mark in &page.marks {
        let id = &mark.mark;
        if mark.paint.is_none() {
            gaps.push(Gap::new(
                format!("{id}: nobody said from what it was laid."),
                format!("{id}: nadie dijo de qué se puso."),
            ));
        } else if !checked(mark) {
            gaps.push(Gap::new(
                format!("{id}: no second person measured it where it lies now."),
                format!("{id}: ninguna segunda persona la midió donde está ahora."),
            ));
        }
    }
}

/// A picture settles more than a number; whether there is one is said either way.
fn photos(page: &ToldPage, gaps: &mut Vec<Gap>) {
    if page.photos.is_empty() {
        gaps.push(Gap::new(
            "No photo of a mark within reach.".to_owned(),
            "Ninguna foto de una marca al alcance.".to_owned(),
        ));
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
        gaps.push(Gap::new(
            format!(
                "{many} calls to {machine} named no mark: they may have been about this place."
            ),
            format!(
                "{many} órdenes a {machine} no nombraron marca: pueden haber sido de este lugar."
            ),
        ));
    }
}

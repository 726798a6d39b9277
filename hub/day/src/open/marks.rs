//! Marks that are open: not at grade, not ruled on, not read, not proven, not taped, gone.

use std::collections::BTreeSet;

use earthwork::length::Length;
use earthwork::tolerance::Verdict;

use super::{List, OpenKind};
use crate::built::{self, BuiltMark};
use crate::coverage;
use crate::lengths::{feet, signed};
use crate::said::edge;
use crate::said::marks::NEAR_A_LINE;
use crate::site::{Mark, Site};
use crate::state::State;

pub(super) fn marks(state: &State, site: &Site, list: &mut List) {
    let built = built::built(state);
    for mark in &built {
        of_mark(mark, list);
    }
    let read = built.iter().map(|one| one.mark.as_str()).collect();
    not_read(&read, site, list);
    not_proven(state, list);
    edges(state, site, list);
}

fn of_mark(mark: &BuiltMark, list: &mut List) {
    let (id, dev) = (&mark.mark, mark.mean.map(signed).unwrap_or_default());
    if mark.scraped {
        list.push(
            OpenKind::Scraped,
            id,
            format!("{id}: its paint is gone."),
            format!("{id}: se borró la pintura."),
        );
    }
    if let Some(void) = &mark.void {
        let (en, es) = (void.english(), void.spanish());
        list.push(
            OpenKind::InDoubt,
            id,
            format!("{id}: accepted, but {en} since; look and shoot it again."),
            format!("{id}: estaba aceptada, pero {es}; mírela y lea otra vez."),
        );
    }
    if mark.changed {
        if mark.void.is_none() {
            list.push(
                OpenKind::InDoubt,
                id,
                format!("{id} was {dev} before its target changed: shoot it again."),
                format!("{id} estaba {dev} antes de que cambiara su rasante: lea otra vez."),
            );
        }
        return;
    }
    let settled = mark.ruling.is_some() || mark.patch.is_some();
    match mark.verdict {
        Some(Verdict::High) => list.push(
            OpenKind::High,
            id,
            format!("{id} stands HIGH by {dev}: never brought to grade."),
            format!("{id} está ALTO {dev}: nunca llegó a nivel."),
        ),
        Some(Verdict::Low) if !settled => list.push(
            OpenKind::Low,
            id,
            format!("{id} is LOW by {dev}: no patch and no ruling."),
            format!("{id} está HONDO {dev}: sin parche ni decisión."),
        ),
        Some(Verdict::TooCloseHigh | Verdict::TooCloseLow) if !settled => list.push(
            OpenKind::Ruling,
            id,
            format!("{id}, {dev}: too close to call, and nobody has ruled."),
            format!("{id}, {dev}: muy justo para decir, y nadie ha decidido."),
        ),
        _ => {}
    }
}

fn not_read(read: &BTreeSet<&str>, site: &Site, list: &mut List) {
    for target in &site.targets {
        let own = site
            .marks
            .iter()
            .filter(|mark| mark.target.as_deref() == Some(&target.id));
        let unread: Vec<&str> = own
            .filter(|mark| !read.contains(mark.id.as_str()))
            .map(|mark| mark.id.as_str())
            .collect();
        if !unread.is_empty() {
            let names = unread.join(", ");
            list.push(
                OpenKind::NotRead,
                &target.id,
                format!("{}: nobody has read {names}.", target.name),
                format!("{}: nadie ha leído {names}.", target.name),
            );
        }
    }
}

fn not_proven(state: &State, list: &mut List) {
    for run in coverage::coverage(state) {
        if run.unproven_length == Length::ZERO {
            continue;
        }
        let stretches: Vec<String> = run
            .unproven
            .iter()
            .map(|gap| format!("{}–{}", plain(gap.from), plain(gap.to)))
            .collect();
        let (where_, all) = (stretches.join(", "), feet(run.unproven_length));
        list.push(
            OpenKind::NotProven,
            &run.target,
            format!("{}: {all} not proven, stations {where_}.", run.name),
            format!("{}: {all} sin probar, estaciones {where_}.", run.name),
        );
    }
}

/// A station without its unit.
fn plain(length: Length) -> String {
    let text = feet(length);
    text.strip_suffix(" ft").unwrap_or(&text).to_owned()
}

/// Marks without a target beside a line that nobody may cross are there for a tape.
fn edges(state: &State, site: &Site, list: &mut List) {
    for line in site.lines.iter().filter(|line| line.no_cross) {
        let kept = edge::kept(line);
        let near = |mark: &&Mark| {
            mark.target.is_none()
                && kept
                    .distance(mark.place)
                    .is_ok_and(|away| away.abs() <= NEAR_A_LINE)
        };
        let not_taped: Vec<&str> = site
            .marks
            .iter()
            .filter(near)
            .map(|mark| mark.id.as_str())
            .filter(|mark| !state.taped.contains(*mark))
            .collect();
        if !not_taped.is_empty() {
            let names = not_taped.join(", ");
            list.push(
                OpenKind::Edge,
                &line.id,
                format!("{}: not proven, no tape at {names}.", line.id),
                format!("{}: sin probar, sin cinta en {names}.", line.id),
            );
        }
    }
}

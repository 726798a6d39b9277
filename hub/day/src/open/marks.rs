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
        list.push(OpenKind::Scraped, id, words::open::its_paint_is_gone(&id));
    }
    if let Some(void) = &mark.void {
        list.push(
            OpenKind::InDoubt,
            id,
            words::open::accepted_but_since(&id, &void.text()),
        );
    }
    if mark.changed {
        if mark.void.is_none() {
            list.push(
                OpenKind::InDoubt,
                id,
                words::open::was_before_its_target_changed(&id, &dev),
            );
        }
        return;
    }
    let settled = mark.ruling.is_some() || mark.patch.is_some();
    match mark.verdict {
        Some(Verdict::High) => {
            list.push(OpenKind::High, id, words::open::stands_high_by(&id, &dev));
        }
        Some(Verdict::Low) if !settled => {
            list.push(OpenKind::Low, id, words::open::is_low_by(&id, &dev));
        }
        Some(Verdict::TooCloseHigh | Verdict::TooCloseLow) if !settled => list.push(
            OpenKind::Ruling,
            id,
            words::open::too_close_call_nobody_has(&id, &dev),
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
                words::open::nobody_has_read(&target.name, &names),
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
            words::open::not_proven_stations(&run.name, &all, &where_),
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
                words::open::not_proven_no_tape_at(&line.id, &names),
            );
        }
    }
}

//! What of cuts and buried lines needs somebody: faces left or not inspected, lines crossed, tickets that lapse.

use crate::views::cuts::{self, InspectionCard};
use crate::views::exception::{Exception, ExceptionKind};
use day::cuts::buried::crossings;
use day::cuts::now::FaceNow;
use day::cuts::strip;
use day::near;
use day::said::struck;
use day::state::State;
use day::time::Time;

/// A ticket is spoken of when no more days than these are left (common practice: renew two working days before).
const SAID_EARLY: i64 = 4;

/// Everything that needs somebody.
pub(crate) fn exceptions(state: &State) -> Vec<Exception> {
    let (Some(site), Some(day)) = (state.site(), state.day.as_ref()) else {
        return vec![];
    };
    let mut found = Vec::new();
    let mut push = |since: Time, what: ExceptionKind| found.push(Exception { since, what });
    let empty = FaceNow::default();
    for zone in &site.cuts.faces {
        let now = state.cuts.face(&zone.id).unwrap_or(&empty);
        let id = || zone.id.clone();
        if let Some(alarm) = &now.alarm {
            push(
                alarm.since,
                ExceptionKind::FaceLeft {
                    zone: id(),
                    why: alarm.why.clone(),
                },
            );
        }
        let height = strip::highest(state, zone);
        match cuts::inspection(state, site, zone, now, height) {
            Some(InspectionCard::Due { why, since }) => push(
                since,
                ExceptionKind::InspectionDue {
                    zone: id(),
                    why,
                    overdue: false,
                },
            ),
            Some(InspectionCard::Overdue { why, since, .. }) => push(
                since,
                ExceptionKind::InspectionDue {
                    zone: id(),
                    why,
                    overdue: true,
                },
            ),
            Some(InspectionCard::Signed { .. }) | None => {}
        }
        if let (Some(daylight), Some(since)) = (&now.daylight, now.daylight_at) {
            for line in daylight.lines.iter().filter(|line| !line.over.is_empty()) {
                push(
                    since,
                    ExceptionKind::DaylightOver {
                        zone: id(),
                        line: line.line.clone(),
                        no_cross: line.no_cross,
                        least: line.least,
                    },
                );
            }
        }
    }
    for struck in struck::cards(state) {
        push(struck.since, ExceptionKind::LineStruck { struck });
    }
    let needs = site.cuts.rules().spoil.distance;
    for (pile, zone, back) in near::piles_at_crests(state, site) {
        push(
            day.at,
            ExceptionKind::PileAtCrest {
                pile,
                zone,
                back,
                needs,
            },
        );
    }
    for crossing in crossings(state)
        .into_iter()
        .filter(day::cuts::buried::Crossing::too_near)
    {
        let bared = state
            .cuts
            .utilities
            .get(&crossing.utility)
            .and_then(|now| now.potholes.last())
            .map_or(day.at, |hole| hole.since);
        push(bared, ExceptionKind::CrossingTooNear { crossing });
    }
    for (utility, now) in &state.cuts.utilities {
        if let Some(since) = now.paint_gone {
            push(
                since,
                ExceptionKind::PaintGone {
                    utility: utility.clone(),
                },
            );
        }
    }
    for card in cuts::card(state, false).tickets {
        let soon = card.days_left.is_none_or(|days| days <= SAID_EARLY);
        if card.checked.is_none() || soon || !card.silent.is_empty() {
            push(day.at, ExceptionKind::TicketWaits { ticket: card });
        }
    }
    found
}

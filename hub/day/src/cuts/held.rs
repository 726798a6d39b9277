//! What holds a call back: a face that is left, a daylight line over a line, ground that nobody has located.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};
use words::Text;

use super::buried::{crossings, from_line};
use super::plan::Ticket;
use super::strip;
use crate::call::Ending;
use crate::refusal::Refusal;
use crate::said::reading::SpotReason;
use crate::site::Site;
use crate::state::State;

/// Where the paint is gone, calls this near the line wait for it (common practice).
const NO_PAINT: Length = Length::from_hundredths_of_a_foot(500);

/// What holds a call back.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum HeldBy {
    /// People have left the face.
    FaceLeft {
        /// Which.
        zone: String,
    },
    /// A buried line was struck near it.
    LineStruck {
        /// Which; none when it is not drawn.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        line: Option<String>,
    },
    /// The face would come to daylight over a line that nobody may cross.
    Daylight {
        /// Which face.
        zone: String,
    },
    /// No ticket covers the place.
    NotLocated {
        /// The mark there; entries from before it was asked for have none, and let go on everywhere.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        mark: Option<String>,
    },
    /// The ticket that covers it has lapsed.
    TicketLapsed {
        /// Which.
        ticket: String,
    },
    /// A line's paint is gone.
    PaintGone {
        /// Which.
        utility: String,
    },
    /// A line was bared and the trench crosses it too near.
    TooNear {
        /// The trench.
        zone: String,
        /// The line.
        utility: String,
    },
    /// The engineer was asked and has not answered.
    Query {
        /// Which query.
        query: String,
    },
}

impl HeldBy {
    /// Why a reading there is a spot elevation.
    pub fn spot(&self) -> SpotReason {
        match self {
            Self::FaceLeft { .. } => SpotReason::FaceLeft,
            Self::LineStruck { .. } => SpotReason::LineStruck,
            Self::Daylight { .. } => SpotReason::DaylightOver,
            Self::NotLocated { .. } => SpotReason::NotLocated,
            Self::TicketLapsed { .. } => SpotReason::TicketLapsed,
            Self::PaintGone { .. } => SpotReason::PaintGone,
            Self::TooNear { .. } => SpotReason::CrossingTooNear,
            Self::Query { .. } => SpotReason::QueryOpen,
        }
    }

    /// How a live call ends that it holds.
    pub(crate) fn ending(&self) -> Ending {
        match self {
            Self::FaceLeft { .. } => Ending::StaleByFace,
            Self::Query { .. } => Ending::QueryAsked,
            Self::Daylight { .. }
            | Self::NotLocated { .. }
            | Self::TicketLapsed { .. }
            | Self::PaintGone { .. }
            | Self::TooNear { .. }
            | Self::LineStruck { .. } => Ending::Held,
        }
    }

    /// What a person reads: what holds, and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::FaceLeft { zone } => words::held::face_left(zone),
            Self::LineStruck { line } => words::held::line_struck(&line.as_deref().unwrap_or("?")),
            Self::Daylight { zone } => words::held::daylight(zone),
            Self::NotLocated { mark: None } => words::held::not_located().into(),
            Self::NotLocated { mark: Some(mark) } => words::held::not_located_at(mark),
            Self::TicketLapsed { ticket } => words::held::ticket_lapsed(ticket),
            Self::PaintGone { utility } => words::held::paint_gone(utility),
            Self::TooNear { zone, utility } => words::held::too_near(zone, utility),
            Self::Query { query } => words::held::query(query),
        }
    }

    /// The same as a refusal.
    pub fn refusal(&self) -> Refusal {
        Refusal::HeldBack(self.text())
    }
}

/// What holds a call at a mark's place back; the gravest first. What a supervisor let go on today does not.
pub(crate) fn at(state: &State, mark: &str, place: Point, target: Option<&str>) -> Option<HeldBy> {
    let site = state.site()?;
    if site.cuts.is_empty() && state.cuts.struck.is_empty() {
        return None;
    }
    let mut found = Vec::new();
    for (zone, here) in strip::zones_at(state, site, place) {
        let Some(now) = state.cuts.face(&zone.id) else {
            continue;
        };
        if now.alarm.is_some() {
            // Not for a supervisor's word: the competent person inspects it.
            return Some(HeldBy::FaceLeft {
                zone: zone.id.clone(),
            });
        }
        let over = now.daylight.as_ref().is_some_and(|found| {
            found.crossed().any(|line| {
                line.over
                    .iter()
                    .any(|part| part.from <= here.station && here.station <= part.to)
            })
        });
        if over {
            found.push(HeldBy::Daylight {
                zone: zone.id.clone(),
            });
        }
    }
    if let Some(held) = crate::said::struck::holds(state, site, place) {
        return Some(held);
    }
    found.extend(not_located(state, site, mark, place));
    for utility in &site.cuts.utilities {
        let gone = state
            .cuts
            .utilities
            .get(&utility.id)
            .is_some_and(|now| now.paint_gone.is_some());
        if gone && from_line(utility, place).is_some_and(|away| away <= NO_PAINT) {
            found.push(HeldBy::PaintGone {
                utility: utility.id.clone(),
            });
        }
    }
    found.extend(too_near(state, site, place, target));
    found.into_iter().find(|held| !let_go_on(state, held))
}

/// A leave to dig where nothing is located is for one mark; one from before that was asked for is for all of them.
pub(crate) fn let_go_on(state: &State, held: &HeldBy) -> bool {
    let everywhere = HeldBy::NotLocated { mark: None };
    let allowed = &state.cuts.allowed;
    let not_located = matches!(held, HeldBy::NotLocated { .. });
    allowed.contains(held) || (not_located && allowed.contains(&everywhere))
}

/// The same for a mark, which a query to the engineer may hold back too; no supervisor's word replaces the answer.
pub fn at_mark(state: &State, mark: &str) -> Option<HeldBy> {
    let target = state
        .site()?
        .mark(mark)
        .and_then(|mark| mark.target.clone());
    let held = at(
        state,
        mark,
        strip::place_of(state, mark)?,
        target.as_deref(),
    );
    held.or_else(|| by_query(state, mark, target.as_deref()))
}

/// The same for a call to a machine, with a mark or without one: whoever has yet to leave a face is called nowhere.
pub(crate) fn call(
    state: &State,
    machine: &str,
    mark: Option<&str>,
    target: Option<&str>,
) -> Option<HeldBy> {
    if let Some(must) = state.cuts.owed_by(machine).first() {
        return Some(HeldBy::FaceLeft {
            zone: must.zone.clone(),
        });
    }
    let mark = mark?;
    // A word by eye and an edge name no target: what holds the mark's own holds them.
    let own = state
        .site()?
        .mark(mark)
        .and_then(|one| one.target.as_deref());
    let target = target.or(own);
    let held = at(state, mark, strip::place_of(state, mark)?, target);
    held.or_else(|| by_query(state, mark, target))
}

/// The query that waits for its answer at a mark or its target.
pub(crate) fn by_query(state: &State, mark: &str, target: Option<&str>) -> Option<HeldBy> {
    let query = state.record.stopped_by(Some(mark), target)?.clone();
    Some(HeldBy::Query { query })
}

fn not_located(state: &State, site: &Site, mark: &str, place: Point) -> Option<HeldBy> {
    if site.cuts.tickets.is_empty() {
        return None;
    }
    let day = state.day.as_ref()?.id.as_str();
    let covers = |ticket: &&Ticket| earthwork::point::is_within(&ticket.area, place);
    let mut covering = site.cuts.tickets.iter().filter(covers);
    if covering.clone().any(|ticket| ticket.holds(day)) {
        return None;
    }
    Some(match covering.next() {
        Some(ticket) => HeldBy::TicketLapsed {
            ticket: ticket.id.clone(),
        },
        None => HeldBy::NotLocated {
            mark: Some(mark.to_owned()),
        },
    })
}

fn too_near(state: &State, site: &Site, place: Point, target: Option<&str>) -> Vec<HeldBy> {
    let beside: Vec<&str> = super::buried::by_hand(site, place)
        .map(|one| one.id.as_str())
        .collect();
    if beside.is_empty() {
        return vec![];
    }
    crossings(state)
        .into_iter()
        .filter(|crossing| crossing.too_near() && crossing.target.as_deref() == target)
        .filter(|crossing| beside.contains(&crossing.utility.as_str()))
        .map(|crossing| HeldBy::TooNear {
            zone: crossing.zone,
            utility: crossing.utility,
        })
        .collect()
}

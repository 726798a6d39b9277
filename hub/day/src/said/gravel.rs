//! Gravel is ordered before the pit closes; when something makes the order too small, everybody hears it at once.

use contract::ToSchema;
use earthwork::amount::CubicFeet;
use earthwork::figure::{Figure, can_be};
use serde::{Deserialize, Serialize};

use crate::account::need;
use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// A shortage that grows by less is not said again, in tons.
pub const WORTH_SAYING: f64 = 0.5;

/// A supervisor orders gravel.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OrderGravel {
    /// How much, in tons.
    pub tons: f64,
    /// Where, and what was agreed.
    #[serde(default)]
    pub note: String,
}

impl Saying for OrderGravel {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        order(at.state, self)
    }
}

/// Gravel was ordered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct GravelOrdered {
    /// How much, in tons.
    pub tons: f64,
    /// What the mean was then, in tons; none without a price list.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mean_tons: Option<f64>,
    /// What was enough nine times in ten then, in tons.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub enough_tons: Option<f64>,
    /// Where, and what was agreed.
    #[serde(default)]
    pub note: String,
}

impl Happening for GravelOrdered {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_ordered(state, entry, self);
    }
}

/// The orders do not cover what is needed any more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct GravelShort {
    /// What is enough nine times in ten, in tons.
    pub enough_tons: f64,
    /// What is ordered, in tons.
    pub ordered_tons: f64,
    /// What is missing, in tons.
    pub short_tons: f64,
}

impl Happening for GravelShort {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_short(state, self);
    }
}

pub(crate) fn order(state: &State, asked: &OrderGravel) -> Result<Vec<Body>, Refusal> {
    let tons = can_be(Figure::Tons, asked.tons).map_err(|error| Refusal::figure(&error))?;
    let forecast = need::forecast(state, &[]);
    Ok(vec![Body::GravelOrdered(GravelOrdered {
        tons,
        mean_tons: forecast.as_ref().map(|found| found.mean_tons.0),
        enough_tons: forecast.as_ref().map(|found| found.enough_tons.0),
        note: asked.note.trim().to_owned(),
    })])
}

/// Says that the orders have become too small, when what is about to be added makes them so.
pub(crate) fn short_after(state: &State, extra: &[CubicFeet]) -> Option<Body> {
    let short_tons = need::short_tons(state, extra);
    if short_tons < state.account.short_tons + WORTH_SAYING {
        return None;
    }
    let ordered_tons = need::ordered_tons(state);
    Some(Body::GravelShort(GravelShort {
        enough_tons: ordered_tons + short_tons,
        ordered_tons,
        short_tons,
    }))
}

pub(crate) fn apply_ordered(state: &mut State, entry: &Entry, body: &GravelOrdered) {
    state.account.orders.push((entry.made_at, body.clone()));
    state.account.short_tons = need::short_tons(state, &[]);
}

pub(crate) fn apply_short(state: &mut State, body: &GravelShort) {
    state.account.short_tons = body.short_tons;
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{ground, len, priced, supervisor};
    use crate::said::patch::AddPatch;

    #[test]
    fn an_order_that_becomes_too_small_is_said_once() {
        let mut crew = priced();
        crew.reads("P-1", "5.30").unwrap();
        let need = need::forecast(&crew.state, &[]).unwrap();
        let tons = need.enough_tons.0 + 0.2;
        let order = OrderGravel {
            tons,
            note: String::new(),
        };
        crew.says(&supervisor(), Command::OrderGravel(order))
            .unwrap();
        let patch = |length: &str| {
            Command::AddPatch(AddPatch {
                mark: "P-1".into(),
                length: len(length),
                width: len("7 ft"),
                depth: Some(len("1 ft")),
            })
        };
        let before = crew.log.len();
        crew.says(&ground(), patch("12 ft")).unwrap();
        let said = |from: usize, crew: &crate::given::Crew| {
            let short = crew.log[from..]
                .iter()
                .filter_map(|entry| match &entry.body {
                    Body::GravelShort(short) => Some(short.short_tons),
                    _ => None,
                });
            short.collect::<Vec<_>>()
        };
        // 84 ft³ at 138 lb/ft³ are 5.8 t; a fifth of a ton was to spare, the doubt of what is enough adds a little.
        let short = said(before, &crew);
        assert!(
            short.len() == 1 && (5.4..6.2).contains(&short[0]),
            "{short:?}"
        );
        let before = crew.log.len();
        crew.says(&ground(), patch("0.2 ft")).unwrap();
        assert!(
            said(before, &crew).is_empty(),
            "a tenth of a ton more is not said again"
        );
    }
}

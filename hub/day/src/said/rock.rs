//! Rock is met: a point on its top, with who and when, so that extra work can be measured and not argued.

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// A point on rock.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PointRock {
    /// The mark there.
    pub mark: String,
    /// Where, when it is not at the mark itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at: Option<Point>,
    /// The rock's top; as the mark's last reading has it when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub top: Option<Length>,
    /// What it is: rock, old concrete.
    #[serde(default)]
    pub what: String,
}

impl Saying for PointRock {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::TakenLate;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        point(at.state, self)
    }
}

/// Rock was met.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct RockPointed {
    /// Its name, such as `RK1`.
    pub point: String,
    /// The mark there.
    pub mark: String,
    /// Where.
    pub at: Point,
    /// The rock's top.
    pub top: Length,
    /// What it is.
    #[serde(default)]
    pub what: String,
}

impl Happening for RockPointed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_pointed(state, entry, self);
    }
}

pub(crate) fn point(state: &State, asked: &PointRock) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    let mark = site.mark(&asked.mark).ok_or_else(|| Refusal::Unknown {
        what: Thing::Mark,
        name: asked.mark.clone(),
    })?;
    let read = state
        .last_reading(&asked.mark)
        .map(|(_, taken)| taken.reading.elevation);
    let top = asked
        .top
        .or(read)
        .ok_or_else(|| Refusal::account(words::rock::has_no_reading_take_rock(&asked.mark)))?;
    Ok(vec![Body::RockPointed(RockPointed {
        point: format!("RK{}", state.account.rock.len() + 1),
        mark: asked.mark.clone(),
        at: asked.at.unwrap_or(mark.place),
        top,
        what: asked.what.trim().to_owned(),
    })])
}

pub(crate) fn apply_pointed(state: &mut State, entry: &Entry, body: &RockPointed) {
    state.account.rock.push((entry.made_at, body.clone()));
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len};

    fn rock(mark: &str, top: Option<&str>) -> Command {
        Command::PointRock(PointRock {
            mark: mark.into(),
            at: None,
            top: top.map(len),
            what: "old concrete".into(),
        })
    }

    #[test]
    fn the_last_reading_is_the_rocks_top() {
        let mut crew = Crew::digging();
        assert!(matches!(
            crew.says(&ground(), rock("P-1", None)),
            Err(Refusal::Account { .. })
        ));
        assert!(matches!(
            crew.says(&ground(), rock("Z", None)),
            Err(Refusal::Unknown { .. })
        ));
        crew.reads("P-1", "4.20").unwrap();
        crew.says(&ground(), rock("P-1", None)).unwrap();
        crew.says(&ground(), rock("P-2", Some("100.90 ft")))
            .unwrap();
        let tops: Vec<_> = crew
            .state
            .account
            .rock
            .iter()
            .map(|(_, one)| (one.point.as_str(), one.top))
            .collect();
        assert_eq!(tops, [("RK1", len("100.80 ft")), ("RK2", len("100.90 ft"))]);
    }
}

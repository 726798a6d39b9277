//! How long the codes on the tailgate last: today, this week, or until a supervisor makes new ones.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::cuts::plan::day_number;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::Refusal;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;

/// How long codes last.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Lasts {
    /// Until the next day is opened.
    #[default]
    Today,
    /// Until a day of another week is opened; weeks begin on Monday (ISO 8601).
    ThisWeek,
    /// Until a supervisor makes new ones.
    UntilRenewed,
}

/// The codes that hold.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct CodesNow {
    /// How long they last.
    pub lasts: Lasts,
    /// The day that they were made for; empty in a state that is older than this field: the day that is open.
    pub made_for: String,
}

/// A supervisor voids the codes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RenewCodes {}

impl Saying for RenewCodes {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        Ok(renew(at.state, self))
    }
}

/// The codes were made anew.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CodesRenewed {
    /// How often, since the day that they were first made for.
    pub generation: u32,
}

impl Happening for CodesRenewed {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        state.codes_generation = self.generation;
    }
}

/// A supervisor says how long codes last.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SetCodesLast {
    /// How long.
    pub lasts: Lasts,
}

impl Saying for SetCodesLast {
    const BY: &'static [Role] = &[Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        Ok(set_last(at.state, self))
    }
}

/// How long codes last was said.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct CodesLast {
    /// How long.
    pub lasts: Lasts,
}

impl Happening for CodesLast {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, _entry: &Entry) {
        apply_last(state, self);
    }
}

pub(crate) fn renew(state: &State, _: &RenewCodes) -> Vec<Body> {
    vec![Body::CodesRenewed(CodesRenewed {
        generation: state.codes_generation + 1,
    })]
}

pub(crate) fn set_last(state: &State, asked: &SetCodesLast) -> Vec<Body> {
    if state.codes.lasts == asked.lasts {
        return vec![];
    }
    vec![Body::CodesLast(CodesLast { lasts: asked.lasts })]
}

pub(crate) fn apply_last(state: &mut State, body: &CodesLast) {
    state.codes.lasts = body.lasts;
}

/// A new day begins: codes that do not last until it are void.
pub(crate) fn new_day(state: &mut State, day: &str) {
    let made_for = &state.codes.made_for;
    let kept = !made_for.is_empty()
        && match state.codes.lasts {
            Lasts::Today => false,
            Lasts::ThisWeek => week(made_for).is_some_and(|week_of| week(day) == Some(week_of)),
            Lasts::UntilRenewed => true,
        };
    if !kept {
        day.clone_into(&mut state.codes.made_for);
        state.codes_generation = 0;
    }
}

/// The week that a day named by its date lies in, counted from the one of 29 December 1969; none for another name.
fn week(day: &str) -> Option<i64> {
    // The second day of a date is named by the date and a number. 1 January 1970 was a Thursday.
    Some((day_number(day.get(..10)?)? + 3).div_euclid(7))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::{By, Command};
    use crate::given::{Crew, ground, supervisor};
    use crate::said::day::OpenDay;

    /// 13 May 2030 is a Monday (Zeller's congruence), so the 14th lies in its week and the 20th does not.
    #[test]
    fn weeks_begin_on_monday() {
        assert_eq!(week("2030-05-13"), week("2030-05-19-2"));
        assert_eq!(week("2030-05-12").map(|week| week + 1), week("2030-05-13"));
        assert_eq!(week("2030-05-20"), week("2030-05-13").map(|week| week + 1));
        assert_eq!(week("1970-01-01"), Some(0));
        for no in ["", "the day", "2030-13-01", "2030-05", "2030-5-1é"] {
            assert_eq!(week(no), None, "{no}");
        }
    }

    fn opens(crew: &mut Crew, day: &str) {
        let open = OpenDay { day: day.into() };
        crew.says(&By::hub(), Command::OpenDay(open)).unwrap();
    }

    fn lasts(crew: &mut Crew, lasts: Lasts) {
        let set = Command::SetCodesLast(SetCodesLast { lasts });
        assert!(
            crew.says(&ground(), set.clone()).is_err(),
            "a supervisor says it"
        );
        crew.says(&supervisor(), set).unwrap();
    }

    fn code(crew: &Crew) -> (String, u32) {
        (
            crew.state.codes.made_for.clone(),
            crew.state.codes_generation,
        )
    }

    #[test]
    fn codes_last_as_long_as_the_supervisor_says_and_new_ones_void_the_old() {
        let mut crew = Crew::opened();
        let renew = |crew: &mut Crew| {
            let renew = Command::RenewCodes(RenewCodes {});
            crew.says(&supervisor(), renew).unwrap();
        };
        renew(&mut crew);
        opens(&mut crew, "2030-05-15");
        assert_eq!(code(&crew), ("2030-05-15".into(), 0), "a day by itself");
        lasts(&mut crew, Lasts::ThisWeek);
        renew(&mut crew);
        opens(&mut crew, "2030-05-17");
        assert_eq!(code(&crew), ("2030-05-15".into(), 1));
        opens(&mut crew, "2030-05-20");
        assert_eq!(code(&crew), ("2030-05-20".into(), 0), "another week");
        lasts(&mut crew, Lasts::UntilRenewed);
        opens(&mut crew, "2031-01-06");
        let before = code(&crew);
        assert_eq!(before, ("2030-05-20".into(), 0));
        renew(&mut crew);
        assert_ne!(code(&crew), before);
    }
}

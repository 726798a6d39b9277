//! Is the laser itself true: the field test of a rotating laser and the two-peg test, kept for each laser. What they find
//! feeds the doubt of every shot.

use contract::ToSchema;
use earthwork::laser::field_test::{FieldTest, SERVICE_BEYOND, field_test};
use earthwork::length::Length;
use earthwork::two_peg::{Pegs, TwoPegError, over, slant};
use serde::{Deserialize, Serialize};

use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::set_up::rod_value;
use crate::saying::{Asking, Closed, Saying};
use crate::state::{State, TestedLaser};

/// A laser was tested.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TestLaser {
    /// Which.
    pub laser: String,
    /// The rod.
    pub rod: String,
    /// What was read.
    pub test: LaserTest,
}

impl Saying for TestLaser {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Refused;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        test(at.state, self)
    }
}

/// What was read in a test; rod values as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum LaserTest {
    /// One rod, the laser turned by a quarter each time.
    Turned {
        /// From the laser to the rod; 100 ft or more shows most.
        distance: Length,
        /// The first axis toward the rod.
        first: String,
        /// The first axis turned half round.
        first_turned: String,
        /// The second axis toward the rod.
        second: String,
        /// The second axis turned half round.
        second_turned: String,
    },
    /// Two pegs: read from the middle, then from near one of them.
    TwoPeg {
        /// Peg A from the middle.
        middle_a: String,
        /// Peg B from the middle.
        middle_b: String,
        /// Peg A from near A.
        near_a: String,
        /// Peg B from near A.
        far_b: String,
        /// From the laser near A to peg A.
        to_a: Length,
        /// From the laser near A to peg B.
        to_b: Length,
    },
}

/// A laser was tested.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LaserTested {
    /// Which.
    pub laser: String,
    /// The rod.
    pub rod: String,
    /// What was read.
    pub test: LaserTest,
    /// The slant that was found, over 100 ft.
    pub slant_per_100_ft: Length,
    /// Beyond 0.01 ft in 100 ft the laser goes to service.
    pub service: bool,
}

impl Happening for LaserTested {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_tested(state, entry, self);
    }
}

pub(crate) fn test(state: &State, asked: &TestLaser) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if site.laser(&asked.laser).is_none() {
        return Err(Refusal::Unknown {
            what: Thing::Laser,
            name: asked.laser.clone(),
        });
    }
    let value = |text: &str| rod_value(site, &asked.rod, text).map(|reading| reading.value);
    let worst = match &asked.test {
        LaserTest::Turned {
            distance,
            first,
            first_turned,
            second,
            second_turned,
        } => {
            let found = field_test(&FieldTest {
                distance: *distance,
                first: value(first)?,
                first_turned: value(first_turned)?,
                second: value(second)?,
                second_turned: value(second_turned)?,
            })
            .map_err(refused)?;
            found.first_slant.abs().max(found.second_slant.abs())
        }
        LaserTest::TwoPeg {
            middle_a,
            middle_b,
            near_a,
            far_b,
            to_a,
            to_b,
        } => {
            let pegs = |a: &str, b: &str| -> Result<Pegs, Refusal> {
                Ok(Pegs {
                    a: value(a)?,
                    b: value(b)?,
                })
            };
            let middle = pegs(middle_a, middle_b)?.difference();
            let seen = pegs(near_a, far_b)?.difference();
            slant(middle, seen, *to_a, *to_b).map_err(refused)?.abs()
        }
    };
    Ok(vec![Body::LaserTested(LaserTested {
        laser: asked.laser.clone(),
        rod: asked.rod.clone(),
        test: asked.test.clone(),
        slant_per_100_ft: over(worst, Length::from_hundredths_of_a_foot(10_000)),
        // A billionth is rounding, not slant.
        service: worst > SERVICE_BEYOND + 1e-9,
    })])
}

#[expect(clippy::needless_pass_by_value, reason = "handed to map_err")]
fn refused(error: TwoPegError) -> Refusal {
    Refusal::Levels(error.text())
}

/// A test outlives its day: it is about the laser, not about where it stands.
pub(crate) fn apply_tested(state: &mut State, entry: &Entry, body: &LaserTested) {
    let tested = TestedLaser {
        slant_per_100_ft: body.slant_per_100_ft,
        service: body.service,
        at: entry.at,
    };
    for set_up in &mut state.set_ups {
        if set_up.laser == body.laser {
            set_up.tested = Some(tested);
        }
    }
    state.tested.insert(body.laser.clone(), tested);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len};

    fn turned(first_turned: &str) -> Command {
        Command::TestLaser(TestLaser {
            laser: "L1".into(),
            rod: "A".into(),
            test: LaserTest::Turned {
                distance: len("100 ft"),
                first: "5.00".into(),
                first_turned: first_turned.into(),
                second: "5.00".into(),
                second_turned: "5.00".into(),
            },
        })
    }

    fn guard(crew: &mut Crew) -> Length {
        let taken = crew.reads("P-1", "5.00").unwrap().first;
        let judged = crew.state.readings[&taken].reading.judged.as_ref();
        judged.unwrap().guard
    }

    /// Half of 0.04 ft over 100 ft is twice what is allowed (common practice).
    #[test]
    fn what_a_test_finds_widens_the_guard_band_and_never_narrows_it() {
        let mut crew = Crew::digging();
        let usual = guard(&mut crew);
        crew.says(&ground(), turned("5.00")).unwrap();
        assert_eq!(
            guard(&mut crew),
            usual,
            "a test without slant proves no less doubt"
        );
        crew.says(&ground(), turned("4.96")).unwrap();
        assert!(guard(&mut crew) > usual);
        let card = crew.state.set_ups[0].tested;
        let card = card.unwrap();
        assert_eq!(card.slant_per_100_ft, len("0.02 ft"));
        assert!(card.service);
    }

    /// From the middle A reads 0.50 more than B; from beside A it reads 0.49 more: 0.01 ft in 100 ft, just allowed.
    #[test]
    fn two_pegs_find_the_slant_and_equal_sights_do_not() {
        let mut crew = Crew::digging();
        let pegs = |to_a: &str| {
            Command::TestLaser(TestLaser {
                laser: "L1".into(),
                rod: "A".into(),
                test: LaserTest::TwoPeg {
                    middle_a: "5.00".into(),
                    middle_b: "4.50".into(),
                    near_a: "5.20".into(),
                    far_b: "4.71".into(),
                    to_a: len(to_a),
                    to_b: len("110 ft"),
                },
            })
        };
        crew.says(&ground(), pegs("10 ft")).unwrap();
        let tested = crew.state.tested["L1"];
        assert_eq!(
            (tested.slant_per_100_ft, tested.service),
            (len("0.01 ft"), false)
        );
        let refusal = crew.says(&ground(), pegs("110 ft")).unwrap_err();
        assert!(refusal.to_string().contains("equal sights"), "{refusal}");
    }
}

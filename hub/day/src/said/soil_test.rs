//! The soil is tested, as its tester states it; a test belongs to an elevation and is void when the ground moves.

use contract::ToSchema;
use earthwork::amount::{CubicFeet, PoundsPerCubicFoot, PoundsPerSquareFoot};
use earthwork::length::Length;
use earthwork::soil::bearing;
use earthwork::soil::density::{self, Wanted};
use serde::{Deserialize, Serialize};

use crate::account::Test;
use crate::asked::Role;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::refusal::{Refusal, Thing};
use crate::said::gravel::short_after;
use crate::said::patch::{self, PatchMoved, PatchStep};
use crate::said::reading::Judged;
use crate::said::undercut::{self, AskedUndercut};
use crate::said::void::VoidCause;
use crate::saying::{Asking, Closed, Saying};
use crate::state::State;
use crate::time::Time;

pub mod stated;

/// A soil test.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TestSoil {
    /// The mark.
    pub mark: String,
    /// Who tested.
    pub tester: String,
    /// What was measured.
    pub test: Box<SoilTest>,
    /// Which lift, from 1 at the bottom; none for the ground itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lift: Option<u32>,
    /// The patch in which it was made.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub patch: Option<String>,
    /// What the tester has dug out where it fails.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub undercut: Option<Box<AskedUndercut>>,
    /// A word about it.
    #[serde(default)]
    pub note: String,
}

impl Saying for TestSoil {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        test(at.state, self)
    }
}

/// What was measured.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum SoilTest {
    /// A bearing pressure, as the tester states it.
    Bearing {
        /// Stated, in pounds per square foot.
        stated_psf: f64,
        /// Asked by the drawing; the price list's when left out.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        asked_psf: Option<f64>,
    },
    /// A density.
    Density {
        /// Wet, in pounds per cubic foot.
        wet_pcf: f64,
        /// Water in percent of dry weight.
        water_percent: f64,
        /// What is asked; the price list's when left out.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        wanted: Option<Wanted>,
    },
}

/// The soil was tested.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SoilTested {
    /// The mark.
    pub mark: String,
    /// Who tested.
    pub tester: String,
    /// What was measured, with what was asked.
    pub test: SoilTest,
    /// The elevation of the ground that was tested.
    pub elevation: Length,
    /// The reading that it is from.
    pub reading: u64,
    /// It passes.
    pub passes: bool,
    /// A density, judged.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density: Option<density::Judged>,
    /// The test that it repeats: one that failed or is void.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub retests: Option<u64>,
    /// Which lift.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lift: Option<u32>,
    /// The patch in which it was made.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub patch: Option<String>,
    /// A word about it.
    #[serde(default)]
    pub note: String,
}

impl Happening for SoilTested {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_tested(state, entry, self);
    }
}

/// A test does not count any more.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TestVoided {
    /// The test's entry.
    pub test: u64,
    /// Its mark.
    pub mark: String,
    /// Why.
    pub why: VoidCause,
}

impl Happening for TestVoided {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_voided(state, entry.at, self);
    }
}

/// Somebody voids a test: rain, a slough, a doubt.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct VoidTest {
    /// The test's entry.
    pub test: u64,
    /// Why.
    pub why: String,
}

impl Saying for VoidTest {
    const BY: &'static [Role] = &[Role::Ground, Role::Supervisor];
    const CLOSED: Closed = Closed::Taken;

    fn decide(&self, at: &Asking<'_>) -> Result<Vec<Body>, Refusal> {
        void(at.state, self)
    }
}

/// The elevation of a judged reading, as the mean of its shots has it.
pub(crate) fn elevation(judged: &Judged) -> Length {
    judged.dig_to + judged.mean
}

pub(crate) fn test(state: &State, asked: &TestSoil) -> Result<Vec<Body>, Refusal> {
    let site = state.site().ok_or(Refusal::NoSite)?;
    if site.mark(&asked.mark).is_none() {
        return Err(Refusal::Unknown {
            what: Thing::Mark,
            name: asked.mark.clone(),
        });
    }
    if asked.tester.trim().is_empty() {
        return Err(Refusal::say_why(words::soil_test::who_tested()));
    }
    if let Some(patch) = &asked.patch {
        patch::named(state, patch)?;
    }
    let (reading, taken) = state
        .last_reading(&asked.mark)
        .ok_or_else(|| Refusal::account(words::soil_test::test_belongs_elevation(&asked.mark)))?;
    let judged = taken.reading.judged.as_ref();
    let (test, passes, density) = judge(state, &asked.test)?;
    let earlier = state.account.tests.iter().rev();
    let retests = earlier
        .filter(|(_, one)| one.tested.mark == asked.mark && !one.stands())
        .map(|(entry, _)| *entry)
        .next();
    let mut bodies = vec![Body::SoilTested(SoilTested {
        mark: asked.mark.clone(),
        tester: asked.tester.trim().to_owned(),
        test,
        elevation: judged.map_or(taken.reading.elevation, elevation),
        reading,
        passes,
        density,
        retests,
        lift: asked.lift,
        patch: asked.patch.clone(),
        note: asked.note.trim().to_owned(),
    })];
    match (&asked.patch, &asked.undercut) {
        (Some(patch), _) if passes => bodies.push(Body::PatchMoved(PatchMoved {
            patch: patch.clone(),
            to: PatchStep::Tested,
        })),
        (_, Some(asked_undercut)) if !passes => {
            let proposed = undercut::propose(site, &asked.mark, asked_undercut)?;
            let gravel = state.prices().and_then(|prices| prices.gravel.as_ref());
            let fills = &proposed.undercut.material;
            let taken = gravel.is_some_and(|gravel| gravel.name.eq_ignore_ascii_case(fills));
            let volume = CubicFeet(proposed.volume_cf);
            bodies.push(Body::UndercutProposed(proposed));
            if taken {
                bodies.extend(short_after(state, &[volume]));
            }
        }
        _ => {}
    }
    Ok(bodies)
}

/// A test with what was asked, whether it passes, and a density as judged.
type Weighed = Result<(SoilTest, bool, Option<density::Judged>), Refusal>;

/// Held against what is asked, which must be known.
fn judge(state: &State, test: &SoilTest) -> Weighed {
    let prices = state.prices();
    match test {
        SoilTest::Bearing {
            stated_psf,
            asked_psf,
        } => {
            let asked = asked_psf.or_else(|| prices?.bearing_psf).ok_or_else(|| {
                Refusal::account(words::soil_test::say_what_bearing_drawing_asks())
            })?;
            let passes =
                bearing::passes(PoundsPerSquareFoot(*stated_psf), PoundsPerSquareFoot(asked))
                    .map_err(|error| Refusal::figure(&error))?;
            let test = SoilTest::Bearing {
                stated_psf: *stated_psf,
                asked_psf: Some(asked),
            };
            Ok((test, passes, None))
        }
        SoilTest::Density {
            wet_pcf,
            water_percent,
            wanted,
        } => {
            let wanted = wanted.or_else(|| prices?.density).ok_or_else(|| {
                Refusal::account(words::soil_test::say_laboratory_greatest_density_percentage())
            })?;
            let judged = density::dry(PoundsPerCubicFoot(*wet_pcf), *water_percent)
                .and_then(|dry| density::judge(dry, *water_percent, &wanted))
                .map_err(|error| Refusal::figure(&error))?;
            let test = SoilTest::Density {
                wet_pcf: *wet_pcf,
                water_percent: *water_percent,
                wanted: Some(wanted),
            };
            Ok((test, judged.passes, Some(judged)))
        }
    }
}

pub(crate) fn void(state: &State, asked: &VoidTest) -> Result<Vec<Body>, Refusal> {
    let test = state
        .account
        .tests
        .get(&asked.test)
        .ok_or_else(|| Refusal::Unknown {
            what: Thing::Test,
            name: asked.test.to_string(),
        })?;
    if asked.why.trim().is_empty() {
        return Err(Refusal::say_why(words::soil_test::why_test_does_not_count()));
    }
    if test.void.is_some() {
        return Ok(vec![]);
    }
    Ok(vec![Body::TestVoided(TestVoided {
        test: asked.test,
        mark: test.tested.mark.clone(),
        why: VoidCause::Said {
            why: asked.why.trim().to_owned(),
        },
    })])
}

pub(crate) fn apply_tested(state: &mut State, entry: &Entry, body: &SoilTested) {
    let at = state
        .site()
        .and_then(|site| site.mark(&body.mark))
        .map(|mark| mark.place);
    state.account.tests.insert(
        entry.seq,
        Test {
            tested: body.clone(),
            at,
            made_at: entry.made_at,
            void: None,
        },
    );
}

pub(crate) fn apply_voided(state: &mut State, at: Time, body: &TestVoided) {
    if let Some(test) = state.account.tests.get_mut(&body.test) {
        test.void = Some((at, body.why.clone()));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::asked::Command;
    use crate::given::{Crew, ground, len, priced, supervisor};
    use crate::said::undercut::ConfirmUndercut;
    use crate::time::minutes;

    fn bearing(mark: &str, stated_psf: f64, undercut: Option<AskedUndercut>) -> Command {
        Command::TestSoil(TestSoil {
            mark: mark.into(),
            tester: "HF".into(),
            test: Box::new(SoilTest::Bearing {
                stated_psf,
                asked_psf: None,
            }),
            lift: None,
            patch: None,
            undercut: undercut.map(Box::new),
            note: String::new(),
        })
    }

    fn standing(crew: &Crew) -> Vec<(&str, bool)> {
        let tests = crew.state.account.tests.values();
        tests
            .map(|one| (one.tested.mark.as_str(), one.stands()))
            .collect()
    }

    #[test]
    fn a_test_belongs_to_an_elevation_and_is_void_when_the_ground_moves() {
        let mut crew = priced();
        assert!(matches!(
            crew.says(&ground(), bearing("P-1", 3100.0, None)),
            Err(Refusal::Account { .. })
        ));
        crew.reads("P-1", "5.00").unwrap();
        crew.says(&ground(), bearing("P-1", 3100.0, None)).unwrap();
        crew.wait(600_000);
        crew.reads("P-1", "5.05").unwrap();
        assert_eq!(
            standing(&crew),
            [("P-1", true)],
            "0.05 is not more than 0.05"
        );
        crew.wait(600_000);
        crew.reads("P-1", "5.06").unwrap();
        assert_eq!(standing(&crew), [("P-1", false)]);
        crew.says(&ground(), bearing("P-1", 2500.0, None)).unwrap();
        let retest = crew.state.account.tests.values().last().unwrap();
        assert!(retest.stands() && retest.tested.retests.is_some());
    }

    #[test]
    fn a_failed_test_proposes_an_undercut_that_a_supervisor_confirms() {
        let mut crew = priced();
        crew.reads("R-1", "7.50").unwrap();
        let asked = AskedUndercut {
            from: Some(len("5 ft")),
            to: Some(len("15 ft")),
            width: len("7 ft"),
            depth: len("1 ft"),
            material: "gravel".into(),
            lifts: 2,
        };
        crew.says(&ground(), bearing("R-1", 1750.0, Some(asked)))
            .unwrap();
        let proposal = *crew.state.account.undercuts.keys().next().unwrap();
        let confirm = |why: &str| {
            Command::ConfirmUndercut(ConfirmUndercut {
                undercut: proposal,
                why: why.into(),
            })
        };
        assert!(crew.says(&supervisor(), confirm(" ")).is_err());
        crew.says(&supervisor(), confirm("HF, in writing")).unwrap();
        let target = crew.state.site().unwrap().target("RUN").unwrap();
        assert_eq!((target.revision, target.grade.undercuts.len()), (2, 1));
        let within = &target.grade.undercuts[0].within;
        assert!(
            (crate::account::need::area_sf(within) - 70.0).abs() < 1e-6,
            "{within:?}"
        );
        assert!(crew.state.account.undercuts.is_empty());
        assert_eq!(standing(&crew), [("R-1", false)], "a failure stays one");
    }

    /// A bottom on grade whose soil fails is not done: it is tested again or dug out before anything counts it as proven.
    #[test]
    fn ground_that_failed_its_test_proves_nothing_until_it_is_tested_again() {
        let mut crew = priced();
        crew.reads("P-1", "5.00").unwrap();
        crew.wait(minutes(1));
        crew.check("S1", "BM-2", "3.48").unwrap();
        let proven = |crew: &Crew| crate::coverage::proven(&crew.state, "P-1");
        assert!(proven(&crew));
        crew.says(&ground(), bearing("P-1", 1_750.0, None)).unwrap();
        assert!(!proven(&crew));
        let built = crate::built::built(&crew.state);
        assert!(
            built[0].text.english.contains("SOIL TEST FAILED"),
            "{built:?}"
        );
        crew.says(&ground(), bearing("P-1", 3_000.0, None)).unwrap();
        assert!(proven(&crew));
    }

    #[test]
    fn rain_voids_a_test_and_a_density_is_judged_as_it_is() {
        let mut crew = priced();
        crew.reads("P-1", "5.00").unwrap();
        let density = Command::TestSoil(TestSoil {
            mark: "P-1".into(),
            tester: "HF".into(),
            test: Box::new(SoilTest::Density {
                wet_pcf: 124.8,
                water_percent: 11.2,
                wanted: None,
            }),
            lift: Some(1),
            patch: None,
            undercut: None,
            note: String::new(),
        });
        crew.says(&ground(), density).unwrap();
        let (entry, test) = crew.state.account.tests.iter().next().unwrap();
        assert!(!test.tested.passes, "94.71 is not 95");
        let entry = *entry;
        let void = |why: &str| {
            Command::VoidTest(VoidTest {
                test: entry,
                why: why.into(),
            })
        };
        assert!(crew.says(&ground(), void("")).is_err());
        crew.says(&ground(), void("rain overnight")).unwrap();
        let before = crew.log.len();
        crew.says(&ground(), void("rain overnight")).unwrap();
        assert_eq!(crew.log.len(), before, "void once is void");
    }
}

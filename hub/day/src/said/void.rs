//! What voids itself. An acceptance, a soil test and an inspection hold for the ground that was looked at, and no longer.
//!
//! | what happens | a mark that was accepted | a soil test | an inspection |
//! |---|---|---|---|
//! | the surface moves by more than 0.05 ft | the new reading takes its place | void | void |
//! | the target is revised there, or undercut | not proven on the new revision | void | void |
//! | its laser is found to have moved so that the verdict may turn | to be shot again | – | void |
//! | rain begins, rain stops | – | void | void |
//! | water is pumped out | – | void | void |
//! | a test or an inspection comes late, from before the newest word about rain, or before water was pumped out there | – | void | void |
//! | a face comes down within 10 ft, where somebody said at which mark | void | void | void |

use contract::ToSchema;
use earthwork::length::Length;
use earthwork::point::Point;
use earthwork::tolerance::Verdict;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::account::Test;
use crate::built;
use crate::entry::{Body, Entry};
use crate::happening::{Happening, Touches};
use crate::lengths::signed;
use crate::read_as;
use crate::record::Inspection;
use crate::said::face_seen::AtFace;
use crate::said::inspection::{InspectionResult, LookedAt};
use crate::said::soil_test::{self, TestVoided};
use crate::said::suspect::Standing;
use crate::state::State;
use crate::time::{Time, When};

/// A surface that moved by more than this is not the one that was looked at: 0.05 ft (common practice).
const MOVED: Length = Length::from_hundredths_of_a_foot(5);
/// What comes down from a face covers or loosens the ground this near to it: 10 ft (common practice).
const SLOUGHED: Length = Length::from_hundredths_of_a_foot(1_000);

/// Why something does not count any more.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum VoidCause {
    /// The surface moved.
    Moved {
        /// Now − when it was looked at: positive is higher.
        by: Length,
    },
    /// The target was revised there, or is undercut.
    Revised {
        /// Which.
        target: String,
    },
    /// The laser that it rests on had moved.
    Laser {
        /// The set-up.
        set_up: String,
    },
    /// It rained on it.
    Rain {},
    /// It stood in water.
    Water {},
    /// A face came down beside it.
    Slough {
        /// Which.
        zone: String,
    },
    /// Somebody said so: a doubt, a truck that drove over it.
    Said {
        /// What.
        why: String,
    },
}

impl VoidCause {
    /// The cause.
    pub fn text(&self) -> Text {
        match self {
            Self::Moved { by } => words::void::moved(&signed(*by)),
            Self::Revised { target } => words::void::revised(target),
            Self::Laser { set_up } => words::void::laser(&read_as::set_up(set_up)),
            Self::Rain {} => words::void::rain().into(),
            Self::Water {} => words::void::water().into(),
            Self::Slough { zone } => words::void::slough(zone),
            Self::Said { why } => Text::alike(why),
        }
    }
}

/// A mark that was accepted is to be looked at and shot again.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct AcceptanceVoided {
    /// The mark.
    pub mark: String,
    /// The reading by which it was accepted.
    pub reading: u64,
    /// Why.
    pub why: VoidCause,
}

impl Happening for AcceptanceVoided {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_acceptance(state, entry, self);
    }
}

/// An inspection does not count any more.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct InspectionVoided {
    /// Which: its number in the view.
    pub inspection: u64,
    /// What had been inspected.
    pub what: String,
    /// The first mark that it does not hold for any more.
    pub mark: String,
    /// Why.
    pub why: VoidCause,
}

impl Happening for InspectionVoided {
    const TOUCHES: Touches = Touches::All;

    fn apply(&self, state: &mut State, entry: &Entry) {
        apply_inspection(state, entry, self);
    }
}

/// Something that happened to the ground or to what is asked of it.
enum Happened<'a> {
    /// A mark was measured anew.
    Measured { mark: &'a str, now: Length },
    /// What is asked changes at marks.
    Revised { target: String, marks: Vec<&'a str> },
    /// Readings on a set-up are to be shot again.
    Doubted { set_up: &'a str, readings: Vec<u64> },
    /// Rain fell.
    Rained,
    /// Ground stood in water that was pumped out.
    Pumped { marks: &'a [String] },
    /// A face came down, half of its length to either side of a mark.
    Sloughed {
        zone: &'a str,
        mark: &'a str,
        half: Length,
    },
}

fn happened(body: &Body) -> Option<Happened<'_>> {
    match body {
        Body::ReadingTaken(taken) if taken.spot.is_none() => {
            let judged = taken.reading.judged.as_ref()?;
            judged.surface.is_none().then(|| Happened::Measured {
                mark: &taken.reading.mark,
                now: soil_test::elevation(judged),
            })
        }
        Body::TargetRevised(revised) => Some(Happened::Revised {
            target: revised.target.clone(),
            marks: revised.touches.names().collect(),
        }),
        Body::SiteChanged(changed) => Some(Happened::Revised {
            target: changed.touches.names().collect::<Vec<_>>().join(", "),
            marks: changed.touches.names().collect(),
        }),
        Body::SiteRevised(revised) => Some(Happened::Revised {
            target: revised.touches.names().collect::<Vec<_>>().join(", "),
            marks: revised.touches.names().collect(),
        }),
        Body::SuspectWindow(window) => Some(Happened::Doubted {
            set_up: &window.set_up,
            readings: window
                .marks
                .iter()
                .filter(|mark| mark.standing == Standing::ShootAgain)
                .map(|mark| mark.reading)
                .collect(),
        }),
        Body::SeenAtFace(seen) if seen.what == (AtFace::Rain {}) => Some(Happened::Rained),
        Body::RainBegan(_) | Body::RainStopped(_) => Some(Happened::Rained),
        Body::WaterPumped(pumped) => Some(Happened::Pumped {
            marks: &pumped.marks,
        }),
        Body::SloughSeen(seen) => Some(Happened::Sloughed {
            zone: &seen.zone,
            mark: seen.mark.as_deref()?,
            half: Length::from_tenth_micrometres(seen.length.tenth_micrometres() / 2),
        }),
        _ => None,
    }
}

/// A place of the ground as it was when somebody looked at it.
struct Ground<'a> {
    mark: &'a str,
    at: Option<Point>,
    elevation: Length,
    reading: u64,
}

impl Happened<'_> {
    fn voids(&self, state: &State, ground: &Ground<'_>) -> Option<VoidCause> {
        match self {
            Self::Measured { mark, now } => {
                let by = *now - ground.elevation;
                (*mark == ground.mark && by.abs() > MOVED).then_some(VoidCause::Moved { by })
            }
            Self::Revised { target, marks } => {
                let touched = marks.contains(&ground.mark);
                touched.then(|| VoidCause::Revised {
                    target: target.clone(),
                })
            }
            Self::Doubted { set_up, readings } => {
                let doubted = readings.contains(&ground.reading);
                doubted.then(|| VoidCause::Laser {
                    set_up: (*set_up).to_owned(),
                })
            }
            Self::Rained => Some(VoidCause::Rain {}),
            Self::Pumped { marks } => {
                let stood = marks.iter().any(|mark| mark == ground.mark);
                stood.then_some(VoidCause::Water {})
            }
            Self::Sloughed { zone, mark, half } => {
                let fell = state.site()?.mark(mark)?.place;
                let near = fell.distance(ground.at?) <= SLOUGHED + *half;
                near.then(|| VoidCause::Slough {
                    zone: (*zone).to_owned(),
                })
            }
        }
    }
}

/// What does not count any more once these entries are made.
pub(crate) fn after(state: &State, when: When, bodies: &[Body]) -> Vec<Body> {
    let mut found = late(state, when, bodies);
    for happened in bodies.iter().filter_map(happened) {
        let more = acceptances(state, &happened)
            .into_iter()
            .chain(tests(state, &happened))
            .chain(inspections(state, &happened));
        // One thing voids once, whatever else happened to it in the same moment.
        for body in more {
            if !found.iter().any(|one| same(one, &body)) {
                found.push(body);
            }
        }
    }
    found
}

/// What was looked at before it rained or was pumped out there, and comes after: nothing of it counts from the start.
fn late(state: &State, when: When, bodies: &[Body]) -> Vec<Body> {
    let before = |then: Option<Time>| then.is_some_and(|then| when.made_at < then);
    let wet = |mark: &str| {
        if before(state.rain.at) {
            return Some(VoidCause::Rain {});
        }
        before(state.cuts.pumped.get(mark).copied()).then_some(VoidCause::Water {})
    };
    let entries = (state.seq + 1..).zip(bodies);
    let voided = entries.filter_map(|(entry, body)| match body {
        Body::SoilTested(tested) => Some(Body::TestVoided(TestVoided {
            test: entry,
            mark: tested.mark.clone(),
            why: wet(&tested.mark)?,
        })),
        Body::Inspected(made) => {
            let looked_at = made.looked_at.iter();
            let (mark, why) = looked_at
                .map(|one| &one.mark)
                .find_map(|mark| Some((mark, wet(mark)?)))?;
            Some(Body::InspectionVoided(InspectionVoided {
                inspection: made.asked.unwrap_or(entry),
                what: made.what.clone(),
                mark: mark.clone(),
                why,
            }))
        }
        _ => None,
    });
    voided.collect()
}

fn same(one: &Body, other: &Body) -> bool {
    match (one, other) {
        (Body::AcceptanceVoided(one), Body::AcceptanceVoided(other)) => one.mark == other.mark,
        (Body::TestVoided(one), Body::TestVoided(other)) => one.test == other.test,
        (Body::InspectionVoided(one), Body::InspectionVoided(other)) => {
            one.inspection == other.inspection
        }
        _ => false,
    }
}

/// Only a face that came down is not told by the mark's own reading, its target's revision or the laser's doubt.
fn acceptances(state: &State, happened: &Happened<'_>) -> Vec<Body> {
    if !matches!(happened, Happened::Sloughed { .. }) {
        return vec![];
    }
    let built = built::built(state).into_iter();
    built
        .filter(|mark| mark.verdict == Some(Verdict::On) && mark.void.is_none())
        .filter_map(|mark| {
            let ground = Ground {
                mark: &mark.mark,
                at: mark.place,
                elevation: mark.elevation,
                reading: mark.reading,
            };
            Some(Body::AcceptanceVoided(AcceptanceVoided {
                why: happened.voids(state, &ground)?,
                reading: mark.reading,
                mark: mark.mark.clone(),
            }))
        })
        .collect()
}

/// A test of a lift lies above the dig: another reading of the dig does not move it. The soil is what it is, whatever laser
/// measured its height.
fn tests(state: &State, happened: &Happened<'_>) -> Vec<Body> {
    let holds = |test: &Test| match happened {
        Happened::Measured { .. } => test.tested.lift.is_none(),
        Happened::Doubted { .. } => false,
        _ => true,
    };
    let standing = state.account.tests.iter().filter(|(_, test)| test.stands());
    standing
        .filter(|(_, test)| holds(test))
        .filter_map(|(entry, test)| {
            let ground = Ground {
                mark: &test.tested.mark,
                at: test.at,
                elevation: test.tested.elevation,
                reading: test.tested.reading,
            };
            Some(Body::TestVoided(TestVoided {
                test: *entry,
                mark: test.tested.mark.clone(),
                why: happened.voids(state, &ground)?,
            }))
        })
        .collect()
}

fn inspections(state: &State, happened: &Happened<'_>) -> Vec<Body> {
    let all = state.record.inspections.iter();
    all.filter(|(_, inspection)| inspection.stands())
        .filter_map(|(id, inspection)| {
            let made = &inspection.made.as_ref()?.said;
            let voids = |one: &LookedAt| {
                let ground = Ground {
                    mark: &one.mark,
                    at: one.place,
                    elevation: one.elevation,
                    reading: one.reading,
                };
                let why = happened.voids(state, &ground)?;
                Some(Body::InspectionVoided(InspectionVoided {
                    inspection: *id,
                    what: made.what.clone(),
                    mark: one.mark.clone(),
                    why,
                }))
            };
            made.looked_at.iter().find_map(voids)
        })
        .collect()
}

impl Inspection {
    /// Whether work may still go by it: made, not failed, and of ground that has not changed since.
    pub fn stands(&self) -> bool {
        let passed =
            |made: &crate::said::inspection::Inspected| made.result != InspectionResult::Failed;
        self.void.is_none() && self.made.as_ref().is_some_and(|made| passed(&made.said))
    }
}

pub(crate) fn apply_acceptance(state: &mut State, entry: &Entry, body: &AcceptanceVoided) {
    let mark = state.marks.entry(body.mark.clone()).or_default();
    mark.void = Some((entry.at, body.why.clone()));
}

pub(crate) fn apply_inspection(state: &mut State, entry: &Entry, body: &InspectionVoided) {
    if let Some(inspection) = state.record.inspections.get_mut(&body.inspection) {
        inspection.void = Some(crate::record::Dated::of(entry, body));
    }
}

#[cfg(test)]
mod tests;

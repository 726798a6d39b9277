//! One shot of the rod: what it measures, and how it is judged.

use std::borrow::Cow;

use earthwork::length::Length;
use earthwork::level;
use earthwork::rod::{Rod, RodReading};
use earthwork::slip::Mode;
use earthwork::target::DigTo;
use earthwork::tolerance::{Verdict, verdict};
use earthwork::uncertainty::{self, Care, DoubtParts, Doubts};

use super::place::{self, Placed};
use super::{Judged, Reading, SpotReason, StepSide, TakeReading};
use crate::refusal::{Refusal, Thing};
use crate::said::blind;
use crate::said::set_up::rod_value;
use crate::site::{Machine, Mark, Site, Target, UnsettledHigh};
use crate::state::{SetUp, State};

/// A distance that nobody has measured is taken as this: far, so that the doubt is not made small.
const UNKNOWN_DISTANCE: Length = Length::from_hundredths_of_a_foot(15_000);

/// Shots joined in one mean.
pub(super) const MOST_SHOTS: usize = 3;

/// Everything that a rod value is measured against.
pub(super) struct Shot<'a> {
    pub(super) site: &'a Site,
    pub(super) mark: Cow<'a, Mark>,
    /// How the place was computed, when the rod stands on no mark.
    placed: Option<Placed>,
    /// The surface that is judged, when it is not the ground to dig to.
    pub(super) surface: Option<String>,
    pub(super) set_up: &'a SetUp,
    pub(super) rod: &'a Rod,
    pub(super) target: Option<&'a Target>,
    /// The machine that the mark's target is assigned to.
    pub(super) assigned: Option<&'a Machine>,
    /// The machine that is told.
    pub(super) machine: Option<&'a Machine>,
    pub(super) dig_to: Option<Length>,
    pub(super) value: Option<RodReading>,
    pub(super) elevation: Length,
    care: Care,
    /// What this person's own blind pairs show of one reading with this rod.
    own_doubt: Option<Length>,
}

/// How a shot was read.
#[derive(Clone, Copy, Debug)]
struct Read {
    care: Care,
    /// Typed to the tenth alone.
    coarse_text: bool,
    /// Shots that are averaged.
    shots: u32,
    /// One standard deviation of this person's readings, when it is known.
    own_doubt: Option<Length>,
}

impl<'a> Shot<'a> {
    pub(super) fn of(state: &'a State, person: &str, asked: &TakeReading) -> Result<Self, Refusal> {
        let site = state.site().ok_or(Refusal::NoSite)?;
        if state.day.is_none() {
            return Err(Refusal::NoDay);
        }
        let unknown = |what, name: &str| Refusal::Unknown {
            what,
            name: name.to_owned(),
        };
        let (mark, placed) = if let Some(said) = &asked.place {
            let (mark, placed) = place::mark(site, &asked.mark, said)?;
            (Cow::Owned(mark), Some(placed))
        } else {
            let mark = site.mark(&asked.mark);
            let mark = mark.ok_or_else(|| unknown(Thing::Mark, &asked.mark))?;
            (Cow::Borrowed(mark), None)
        };
        let surface = asked
            .surface
            .as_deref()
            .filter(|name| !name.trim().is_empty());
        let set_up = state
            .set_up(&asked.set_up)
            .ok_or_else(|| unknown(Thing::SetUp, &asked.set_up))?;
        if !set_up.closed && matches!(set_up.state, crate::state::SetUpState::Unproven) {
            return Err(Refusal::SetUpNotProven {
                set_up: set_up.id.clone(),
            });
        }
        let rod = site
            .rod(&asked.rod)
            .ok_or_else(|| unknown(Thing::Rod, &asked.rod))?;
        let target = site.target_of(&mark);
        let assigned = target.and_then(|target| site.machine_for(&target.id));
        let machine = match &asked.machine {
            Some(id) => Some(
                site.machine(id)
                    .ok_or_else(|| unknown(Thing::Machine, id))?,
            ),
            None => assigned,
        };
        let dig_to = match target {
            Some(target) => Some(surface_at(target, &mark, asked.side, surface)?),
            None => None,
        };
        let height = set_up.height_at(mark.place);
        let (value, elevation) = measure(site, height, asked, dig_to)?;
        Ok(Self {
            site,
            mark,
            placed,
            surface: surface.map(str::to_owned),
            set_up,
            rod,
            target,
            assigned,
            machine,
            dig_to,
            value,
            elevation,
            care: asked.care,
            own_doubt: blind::own_doubt(state, person, &asked.rod),
        })
    }

    /// Why this reading gets no call, if so.
    pub(super) fn spot_reason(&self) -> Option<SpotReason> {
        if self.set_up.closed {
            Some(SpotReason::SetUpClosed)
        } else if !self.set_up.usable() {
            Some(SpotReason::SetUpInDoubt)
        } else if self.target.is_none() {
            Some(SpotReason::NoTarget)
        } else if self.machine.is_none() {
            Some(SpotReason::NoMachine)
        } else {
            None
        }
    }

    /// Measured − dig-to; on a cut face square to it.
    pub(super) fn dev(&self) -> Option<Length> {
        let up = self.elevation - self.dig_to?;
        let square = self
            .target
            .map_or(1.0, |target| target.grade.square_to_face(self.mark.place));
        if square < 1.0 {
            return Length::from_feet(up.feet() * square).ok();
        }
        Some(up)
    }

    /// Judges this shot together with earlier ones of the same ground.
    pub(super) fn judge(&self, joined: &[(u64, Length)], settle: bool) -> Option<Judged> {
        let (Some(target), Some(dig_to), Some(dev)) = (self.target, self.dig_to, self.dev()) else {
            return None;
        };
        let devs: Vec<Length> = joined.iter().map(|(_, dev)| *dev).chain([dev]).collect();
        let shots = u32::try_from(devs.len()).unwrap_or(u32::MAX);
        let coarse = self.value.as_ref().is_some_and(|value| value.coarse);
        let guard = guard(
            self.site,
            self.set_up,
            &self.mark,
            target,
            Read {
                care: self.care,
                coarse_text: coarse,
                shots,
                own_doubt: self.own_doubt,
            },
        );
        let sideways = self
            .placed
            .as_ref()
            .map_or(Length::ZERO, |placed| place::sideways(target, placed));
        let guard = with_sideways(guard, sideways, target.guard_factor);
        let verdict = verdict(&devs, target.tolerance, guard);
        let unsettled = settle && devs.len() > 1;
        let trims = self.site.rules.unsettled_high == UnsettledHigh::Trim;
        let settled_high = unsettled && trims && verdict == Verdict::TooCloseHigh;
        let needs_ruling = unsettled
            && !settled_high
            && matches!(verdict, Verdict::TooCloseHigh | Verdict::TooCloseLow);
        Some(Judged {
            target: target.id.clone(),
            revision: target.revision,
            surface: self.surface.clone(),
            dig_to,
            dev,
            joined: joined.iter().map(|(id, _)| *id).collect(),
            mean: mean(&devs),
            guard,
            verdict,
            settled_high,
            needs_ruling,
        })
    }

    /// The reading as the log keeps it.
    pub(super) fn reading(&self, asked: &TakeReading, judged: Option<Judged>) -> Reading {
        Reading {
            mark: self.mark.id.clone(),
            placed: self.placed.clone(),
            machine: self.machine.map(|machine| machine.id.clone()),
            set_up: self.set_up.id.clone(),
            basis: u32::try_from(self.set_up.basis.len()).unwrap_or(u32::MAX),
            height: self.set_up.height(),
            height_here: self
                .set_up
                .slope
                .map(|_| self.set_up.height_at(self.mark.place)),
            rod: self.rod.id.clone(),
            text: asked.text.clone(),
            mode: asked.mode,
            care: asked.care,
            coarse: self.value.as_ref().is_some_and(|value| value.coarse),
            value: self.value.as_ref().map(|value| value.value),
            elevation: self.elevation,
            judged,
            side: asked.side,
            sure: asked.sure,
            restates: asked.restates,
            rocked: asked.rocked.clone(),
            blind: asked.blind && asked.paper.is_none(),
            waited: asked.waited && asked.paper.is_none(),
            paper: asked.paper.as_deref().map(|by| by.trim().to_owned()),
        }
    }
}

/// The guard band with what a doubtful place adds to it on a slope: independent doubts add as squares.
fn with_sideways(guard: Length, sideways: Length, factor: f64) -> Length {
    if sideways == Length::ZERO {
        return guard;
    }
    let feet = guard.feet().hypot(sideways.feet() * factor.max(0.0));
    Length::from_feet(feet).unwrap_or(guard).max(guard)
}

/// The elevation to dig to at a mark; within half a foot of a step, on the side that was said.
///
/// # Errors
/// A refusal when the target asks for nothing there, or it is within half a foot of a step and no side was said.
pub fn dig_to(target: &Target, mark: &Mark, side: Option<StepSide>) -> Result<Length, Refusal> {
    surface_at(target, mark, side, None)
}

/// The elevation of a surface of the stack at a mark; of the ground to dig to when none is named.
pub(crate) fn surface_at(
    target: &Target,
    mark: &Mark,
    side: Option<StepSide>,
    surface: Option<&str>,
) -> Result<Length, Refusal> {
    let at = match surface {
        None => target.grade.dig_to(mark.place),
        Some(surface) => target.grade.named(surface, mark.place),
    };
    let at =
        at.map_err(|error| Refusal::NoGrade(words::reading::at_mark(&mark.id, &error.text())))?;
    match (at, side) {
        (DigTo::At(elevation), _) => Ok(elevation),
        (DigTo::NearStep { before, .. }, Some(StepSide::Before)) => Ok(before),
        (DigTo::NearStep { after, .. }, Some(StepSide::After)) => Ok(after),
        (DigTo::NearStep { .. }, None) => Err(Refusal::WhichSide {
            mark: mark.id.clone(),
        }),
    }
}

/// The elevation of the ground: from the rod, or from a receiver fixed at the grade rod.
fn measure(
    site: &Site,
    height: Length,
    asked: &TakeReading,
    dig_to: Option<Length>,
) -> Result<(Option<RodReading>, Length), Refusal> {
    let off = |sign: i64| -> Result<(Option<RodReading>, Length), Refusal> {
        let grade =
            dig_to.ok_or_else(|| Refusal::NoGrade(words::reading::has_no_target(&asked.mark)))?;
        let tenths = tenths(&asked.text)?;
        Ok((None, grade + tenths * sign))
    };
    match asked.mode {
        Mode::Rod => {
            let value = rod_value(site, &asked.rod, &asked.text)?;
            let elevation = level::elevation(height, value.value);
            Ok((Some(value), elevation))
        }
        Mode::ReceiverHigh => off(1),
        Mode::ReceiverLow => off(-1),
    }
}

/// Tenths of a foot as tapped on the receiver page, in halves: `2`, `3.5`.
fn tenths(text: &str) -> Result<Length, Refusal> {
    let refused = || Refusal::RodValue(words::reading::not_number_tenths(&text));
    let value: f64 = text
        .trim()
        .replace(',', ".")
        .parse()
        .map_err(|_parse: std::num::ParseFloatError| refused())?;
    if !(0.0..=30.0).contains(&value) {
        return Err(refused());
    }
    Length::from_feet(value / 10.0).map_err(|_length| refused())
}

/// The mean, rounded to the nearest count; verdicts compare sums and never see it.
fn mean(devs: &[Length]) -> Length {
    let n = i64::try_from(devs.len().max(1)).unwrap_or(1);
    let sum: i64 = devs.iter().map(|dev| dev.tenth_micrometres()).sum();
    let half = if sum < 0 { -n / 2 } else { n / 2 };
    Length::from_tenth_micrometres((sum + half) / n)
}

/// The guard band of a shot at a mark.
fn guard(site: &Site, set_up: &SetUp, mark: &Mark, target: &Target, read: Read) -> Length {
    uncertainty::guard(&doubts(site, set_up, mark, read), target.guard_factor)
}

/// What is known of the doubt of any shot at a mark before it is read: a phone says the call with it beforehand.
pub fn parts(site: &Site, set_up: &SetUp, mark: &Mark) -> DoubtParts {
    let usual = Read {
        care: Care::Coarse,
        coarse_text: false,
        shots: 1,
        own_doubt: None,
    };
    doubts(site, set_up, mark, usual).parts()
}

fn doubts(site: &Site, set_up: &SetUp, mark: &Mark, read: Read) -> Doubts {
    let basis = set_up.basis();
    let benchmark = basis.and_then(|basis| site.benchmark(&basis.benchmark));
    let laser = site.laser(&set_up.laser);
    let apart =
        |a: Option<earthwork::point::Point>, b: Option<earthwork::point::Point>| match (a, b) {
            (Some(a), Some(b)) => a.distance(b),
            _ => UNKNOWN_DISTANCE,
        };
    Doubts {
        benchmark: benchmark.map_or(Length::ZERO, |benchmark| benchmark.doubt),
        reading: read.care,
        coarse_text: read.coarse_text,
        surface: mark.surface,
        // A test that finds less than the usual figure proves no less doubt.
        laser_per_100_ft: laser
            .map_or(Length::ZERO, |laser| laser.doubt_per_100_ft)
            .max(
                set_up
                    .tested
                    .map_or(Length::ZERO, |found| found.slant_per_100_ft),
            ),
        backsight_distance: apart(set_up.place, benchmark.and_then(|mark| mark.place)),
        foresight_distance: apart(set_up.place, Some(mark.place)),
        shots: read.shots,
        own_reading: read.own_doubt,
    }
}

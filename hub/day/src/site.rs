//! The site: what the crew works to. Taken from the site file as entries, revised by entries.

use contract::ToSchema;
use earthwork::keep_out::Reach;
use earthwork::length::Length;
use earthwork::level::CheckLimits;
use earthwork::machine::Geometry;
use earthwork::point::Point;
use earthwork::rod::Rod;
use earthwork::site_frame::{FrameError, Pin, PlanNumber, PlanPoint, PlanUnit, SiteFrame};
use earthwork::target;
use earthwork::tolerance::Tolerance;
use earthwork::uncertainty::Surface;
use serde::{Deserialize, Serialize};

use crate::prices::Prices;

use crate::cuts::plan::Cuts;

pub mod drawn;

/// One job: control, lines, marks, targets, machines, rods, rules.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Site {
    /// What the crew calls the job.
    pub name: String,
    /// Points of known elevation.
    pub benchmarks: Vec<Benchmark>,
    /// Property, easement, setback and limit lines.
    #[serde(default)]
    pub lines: Vec<Line>,
    /// The grades to reach.
    pub targets: Vec<Target>,
    /// The layout marks, in the order of work.
    pub marks: Vec<Mark>,
    /// The machines on the job.
    pub machines: Vec<Machine>,
    /// The rods in the truck.
    pub rods: Vec<Rod>,
    /// The lasers in the truck.
    pub lasers: Vec<Laser>,
    /// What is allowed high and low of a target that does not say it itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tolerance: Option<Tolerance>,
    /// What this site has settled on.
    #[serde(default)]
    pub rules: Rules,
    /// How the plan's coordinates come on to the site, when it has any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub frame: Option<Frame>,
    /// Cuts and what is buried.
    #[serde(default, skip_serializing_if = "Cuts::is_empty")]
    pub cuts: Cuts,
    /// Prices, factors and asked values, when the file has any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub prices: Option<Box<Prices>>,
}

/// How the plan's coordinates come on to the site.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Frame {
    /// What the plan counts in.
    pub unit: PlanUnit,
    /// The plan's east of the site's corner, as written.
    pub east: String,
    /// The plan's north of the site's corner, as written.
    pub north: String,
    /// How far the site's x axis is turned left of the plan's east, in degrees.
    pub turn: f64,
    /// Pins of the plan that were found and measured on the site.
    #[serde(default)]
    pub pins: Vec<FoundPin>,
}

/// A pin of the plan as it was found.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FoundPin {
    /// Its name.
    pub id: String,
    /// Its east on the plan, as written.
    pub east: String,
    /// Its north on the plan, as written.
    pub north: String,
    /// Where it was measured on the site.
    pub at: Point,
}

impl Frame {
    /// The plan's coordinates of the site's corner.
    ///
    /// # Errors
    /// When they are no plain numbers.
    pub fn origin(&self) -> Result<PlanPoint, FrameError> {
        Ok(PlanPoint {
            east: PlanNumber::parse(&self.east)?,
            north: PlanNumber::parse(&self.north)?,
        })
    }

    /// The frame, ready to bring places on to the site.
    ///
    /// # Errors
    /// When a number is none.
    pub fn made(&self) -> Result<SiteFrame, FrameError> {
        SiteFrame::new(self.unit, self.origin()?, self.turn)
    }

    /// Each found pin by its name, with its place on the plan; none whose numbers are no plain ones.
    pub fn named(&self) -> impl Iterator<Item = (String, PlanPoint)> + '_ {
        self.pins.iter().filter_map(|pin| {
            let at = PlanPoint {
                east: PlanNumber::parse(&pin.east).ok()?,
                north: PlanNumber::parse(&pin.north).ok()?,
            };
            Some((pin.id.clone(), at))
        })
    }

    /// Each found pin by the plan, brought on to the site, and as it was measured.
    ///
    /// # Errors
    /// When a number is none.
    pub fn pairs(&self) -> Result<Vec<Pin>, FrameError> {
        let frame = self.made()?;
        let pairs = self.pins.iter().map(|pin| {
            let plan = frame.to_site(PlanPoint {
                east: PlanNumber::parse(&pin.east)?,
                north: PlanNumber::parse(&pin.north)?,
            })?;
            Ok(Pin { plan, site: pin.at })
        });
        pairs.collect()
    }
}

/// A point of known elevation.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Benchmark {
    /// Its name on the ground.
    pub id: String,
    /// Elevation on the site's datum.
    pub elevation: Length,
    /// Where it is, when known.
    #[serde(default)]
    pub place: Option<Point>,
    /// One standard deviation of its elevation.
    pub doubt: Length,
    /// What it looks like, so that it can be found.
    #[serde(default)]
    pub note: String,
}

/// A line on the plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// Its name.
    pub id: String,
    /// What kind of line it is.
    pub kind: LineKind,
    /// Its corners, in order.
    pub points: Vec<Point>,
    /// The side on which the work stays, looking along the line.
    pub keep: Side,
    /// True when nobody may dig beyond it.
    pub no_cross: bool,
    /// One standard deviation of its place on the ground.
    pub doubt: Length,
    /// A word about it.
    #[serde(default)]
    pub note: String,
}

/// What a line stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum LineKind {
    /// The property line.
    Property,
    /// An easement or buffer.
    Easement,
    /// A setback from another line.
    Setback,
    /// The limit of work.
    LimitOfWork,
}

/// A side, looking along the line from its first point.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// To the left.
    Left,
    /// To the right.
    Right,
}

/// A grade to reach, with its allowed high and low.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
#[schema(as = SiteTarget)]
pub struct Target {
    /// Short name, such as `EAST`.
    pub id: String,
    /// The name that the operator reads in the top line.
    pub name: String,
    /// Shape, stack and boundary.
    pub grade: target::Target,
    /// Allowed high and allowed low.
    pub tolerance: Tolerance,
    /// Coverage factor of the guard band; 1 unless the drawing asks for proof.
    pub guard_factor: f64,
    /// Counts up with each revision; the first is 1.
    pub revision: u32,
    /// Who typed its elevations, when that is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub typed_by: Option<String>,
    /// Who typed the same elevations a second time without seeing the first; without it the target is not proved.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub proved_by: Option<String>,
}

/// A layout mark: a named point on the ground.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Mark {
    /// Its name as painted.
    pub id: String,
    /// Where it is.
    pub place: Point,
    /// The target that it belongs to; a mark without one takes spot elevations alone.
    #[serde(default)]
    pub target: Option<String>,
    /// Station along the target's run, when it was given so.
    #[serde(default)]
    pub station: Option<Length>,
    /// Offset, positive to the right looking up-station.
    #[serde(default)]
    pub offset: Option<Length>,
    /// The ground under the rod.
    pub surface: Surface,
    /// A word about it.
    #[serde(default)]
    pub note: String,
}

/// A machine and what it works on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Machine {
    /// Its name, such as `EX-1`.
    pub id: String,
    /// The shape that stands for it on every screen.
    pub shape: MachineShape,
    /// Reach, tail, width.
    pub reach: Reach,
    /// What else it can do, as far as somebody has said it.
    #[serde(default, skip_serializing_if = "Geometry::is_empty")]
    pub geometry: Geometry,
    /// The targets assigned to it.
    pub works_on: Vec<String>,
    /// The direction of work, as the crew says it.
    #[serde(default)]
    pub direction: String,
}

/// The large shape that tells machines apart without a hue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum MachineShape {
    /// A square.
    Square,
    /// A triangle.
    Triangle,
    /// A ring.
    #[serde(alias = "circle")]
    Ring,
    /// Two bars.
    #[serde(alias = "diamond")]
    Bars,
}

/// A rotating laser.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Laser {
    /// Its name.
    pub id: String,
    /// One standard deviation of its plane over 100 ft.
    pub doubt_per_100_ft: Length,
}

/// What this site has settled on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Rules {
    /// When a check shot is good, and when it fails.
    pub checks: CheckLimits,
    /// What happens when two shots leave the high side unsettled.
    #[serde(default)]
    pub unsettled_high: UnsettledHigh,
    /// The forms that the form crew has, for steps; none when nobody has said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub forms: Option<FormsAtHand>,
    /// What a check costs and saves: how often one is due.
    #[serde(default)]
    pub check_costs: CheckCosts,
    /// A line of levels may miss by this times the root of its set-ups.
    #[serde(default = "usual_closure")]
    pub closure: Length,
    /// How high a truck's side is; nothing when nobody has said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub truck_side: Option<Length>,
}

/// 0.02 ft (common practice on small sites).
fn usual_closure() -> Length {
    Length::from_hundredths_of_a_foot(2)
}

impl Default for Rules {
    fn default() -> Self {
        Self {
            checks: CheckLimits::default(),
            unsettled_high: UnsettledHigh::default(),
            forms: None,
            check_costs: CheckCosts::default(),
            closure: usual_closure(),
            truck_side: None,
        }
    }
}

/// What a check of the laser costs and saves: the interval between checks follows from it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckCosts {
    /// One check, in money.
    pub check: f64,
    /// An hour of work with a disturbed laser, in the same money.
    pub undetected_hour: f64,
    /// A laser is disturbed about once in so many working hours.
    pub hours_between_bumps: f64,
}

/// $4, $250 and once in 24 working hours (invented figures; a site puts in its own).
impl Default for CheckCosts {
    fn default() -> Self {
        Self {
            check: 4.0,
            undetected_hour: 250.0,
            hours_between_bumps: 24.0,
        }
    }
}

/// The forms that the form crew has.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FormsAtHand {
    /// How high one form is: a step is so many of them.
    pub height: Length,
    /// Their widths; empty when nobody has said.
    #[serde(default)]
    pub widths: Vec<Length>,
    /// What a filler makes up, either way.
    #[serde(default)]
    pub filler: Length,
}

/// What happens when two shots leave the high side unsettled.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum UnsettledHigh {
    /// It counts as high and is trimmed: a deep spot is cheaper than a shallow one.
    #[default]
    Trim,
    /// The supervisor rules on it, as on the low side.
    AskSupervisor,
}

impl Target {
    /// Whether its elevations were typed twice, by two people, or came from a file.
    pub fn proved(&self) -> bool {
        self.proved_by.is_some() || self.grade.imported()
    }
}

impl Site {
    /// The mark of that name.
    pub fn mark(&self, id: &str) -> Option<&Mark> {
        self.marks.iter().find(|mark| mark.id == id)
    }
    /// The target of that name.
    pub fn target(&self, id: &str) -> Option<&Target> {
        self.targets.iter().find(|target| target.id == id)
    }
    /// The target that a mark belongs to.
    pub fn target_of(&self, mark: &Mark) -> Option<&Target> {
        mark.target.as_deref().and_then(|id| self.target(id))
    }
    /// The machine of that name.
    pub fn machine(&self, id: &str) -> Option<&Machine> {
        self.machines.iter().find(|machine| machine.id == id)
    }
    /// The benchmark of that name.
    pub fn benchmark(&self, id: &str) -> Option<&Benchmark> {
        self.benchmarks.iter().find(|benchmark| benchmark.id == id)
    }
    /// The rod of that name.
    pub fn rod(&self, id: &str) -> Option<&Rod> {
        self.rods.iter().find(|rod| rod.id == id)
    }
    /// The laser of that name.
    pub fn laser(&self, id: &str) -> Option<&Laser> {
        self.lasers.iter().find(|laser| laser.id == id)
    }
    /// The machine that a target is assigned to.
    pub fn machine_for(&self, target: &str) -> Option<&Machine> {
        self.machines
            .iter()
            .find(|machine| machine.works_on.iter().any(|id| id == target))
    }
}

//! Faces, footings behind them, buried lines and locate tickets, as the site file gives them.

use contract::ToSchema;
use earthwork::buried::Marked;
use earthwork::face::{ExcavationRules, SoilClass};
use earthwork::layout::tie::Side;
use earthwork::length::Length;
use earthwork::overhead;
use earthwork::point::Point;
use earthwork::target::Target;
use serde::{Deserialize, Serialize};

/// Cuts and what is buried on this site.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
#[schema(as = SiteCuts)]
pub struct Cuts {
    /// The rules; the US federal ones when none.
    pub rules: Option<Box<ExcavationRules>>,
    /// The competent persons, as they join: who pick classes and sign inspections.
    pub competent: Vec<String>,
    /// Faces and trenches that are watched.
    pub faces: Vec<FaceZone>,
    /// Footings and walls behind the cuts.
    pub structures: Vec<Structure>,
    /// Buried lines.
    pub utilities: Vec<Utility>,
    /// Locate tickets.
    pub tickets: Vec<Ticket>,
    /// Lines overhead.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub overheads: Vec<OverheadLine>,
    /// Piles of spoil and material.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub piles: Vec<Pile>,
    /// How clear a pipe or dig crosses a buried line.
    pub clearance: Length,
}

impl Default for Cuts {
    fn default() -> Self {
        Self {
            rules: None,
            competent: vec![],
            faces: vec![],
            structures: vec![],
            utilities: vec![],
            tickets: vec![],
            overheads: vec![],
            piles: vec![],
            clearance: Length::from_hundredths_of_a_foot(100),
        }
    }
}

impl Cuts {
    /// Whether the site file says nothing of cuts.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// The rules in force.
    pub fn rules(&self) -> &ExcavationRules {
        self.rules
            .as_deref()
            .unwrap_or_else(|| ExcavationRules::us_federal())
    }

    /// The face of that name.
    pub fn face(&self, id: &str) -> Option<&FaceZone> {
        self.faces.iter().find(|face| face.id == id)
    }

    /// The buried line of that name.
    pub fn utility(&self, id: &str) -> Option<&Utility> {
        self.utilities.iter().find(|one| one.id == id)
    }
}

/// A pile of spoil or material, where somebody has drawn it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
#[schema(as = SitePile)]
pub struct Pile {
    /// Its name.
    pub id: String,
    /// Its middle.
    pub at: Point,
    /// Over its foot, from side to side.
    pub across: Length,
    /// A note.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl Pile {
    /// From a place to its foot; below zero within it.
    pub fn away(&self, place: Point) -> Length {
        let half = Length::from_tenth_micrometres(self.across.tenth_micrometres() / 2);
        self.at.distance(place) - half
    }
}

/// A line overhead.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OverheadLine {
    /// Its name.
    pub id: String,
    /// What it hangs over, corner by corner.
    pub points: Vec<Point>,
    /// Its lowest over the ground.
    pub height: Length,
    /// Its voltage in kilovolts, when its owner has said it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kilovolts: Option<f64>,
    /// No more than so many kilovolts, when its owner has said only that.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kilovolts_at_most: Option<f64>,
    /// How far every part of a machine stays from it, when somebody has said more than the table.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clearance: Option<Length>,
    /// Whom to call.
    #[serde(default)]
    pub call: String,
}

impl OverheadLine {
    /// How far every part of a machine stays from it: the laws', or what its owner said when that is more. Where the laws
    /// have no figure for its voltage, never less than where nobody knows it.
    pub fn clearance(&self) -> Length {
        let law = self.kilovolts.map_or_else(
            || overhead::clearance_unknown(self.kilovolts_at_most),
            |kilovolts| {
                overhead::clearance(kilovolts).unwrap_or_else(|| overhead::clearance_unknown(None))
            },
        );
        law.max(self.clearance.unwrap_or(Length::ZERO))
    }
}

/// What kind of cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum CutKind {
    /// An open face.
    Face,
    /// A trench: a way out is owed at its depth.
    Trench,
}

/// A corner of a toe; two at one place with two elevations are a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ToeCorner {
    /// Where.
    pub at: Point,
    /// The bottom, as planned.
    pub elevation: Length,
}

/// A layer of soil, from the bottom up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SoilLayer {
    /// Its top; the uppermost goes on to the ground.
    #[serde(default)]
    pub top: Option<Length>,
    /// Its class, as borings or a competent person gave it.
    pub class: SoilClass,
}

/// A face or a trench that is watched.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FaceZone {
    /// Its name.
    pub id: String,
    /// The name that people read.
    pub name: String,
    /// Face or trench.
    pub kind: CutKind,
    /// Its toe, corner by corner.
    pub toe: Vec<ToeCorner>,
    /// The hand on which the bank stands, going along the toe.
    pub bank: Side,
    /// The ground before the cut, as a target without layers.
    pub ground: Target,
    /// Layers from the bottom up; none when it is one soil.
    #[serde(default)]
    pub layers: Vec<SoilLayer>,
    /// Marks at its toe, whose readings say how deep it is.
    #[serde(default)]
    pub toe_marks: Vec<String>,
    /// Marks at its crest, whose readings say how it stands.
    #[serde(default)]
    pub crest_marks: Vec<String>,
    /// Pairs of pins across cracks.
    #[serde(default)]
    pub pins: Vec<String>,
    /// The target that is dug along it.
    #[serde(default)]
    pub target: Option<String>,
    /// From the target's surface, the invert, to the pipe's crown.
    #[serde(default)]
    pub pipe_crown: Option<Length>,
}

/// A footing or wall that stands behind a cut.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Structure {
    /// Its name.
    pub id: String,
    /// Its near edge.
    pub points: Vec<Point>,
    /// Its lower edge.
    pub bottom: Length,
}

/// What runs in a buried line. The paint's hues are not used: a word says it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum UtilityKind {
    /// Gas, oil, steam.
    Gas,
    /// Electric power.
    Electric,
    /// Telephone, cable, alarm, signal.
    Communication,
    /// Drinking water.
    Water,
    /// Reclaimed water, irrigation, slurry.
    Reclaimed,
    /// Sewer and drain.
    Sewer,
    /// Nobody knows.
    Unknown,
}

/// A buried line as it was marked.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Utility {
    /// Its name.
    pub id: String,
    /// What runs in it.
    pub kind: UtilityKind,
    /// Its places, as marked.
    pub points: Vec<Point>,
    /// Its outside diameter; nothing when nobody knows.
    #[serde(default)]
    pub outside: Length,
    /// To each side of it the machine gives way to the shovel.
    pub zone: Length,
    /// How it was marked.
    #[serde(default)]
    pub marked: Marked,
    /// Whom to call.
    #[serde(default)]
    pub call: String,
}

/// A locate ticket.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Ticket {
    /// Its number.
    pub id: String,
    /// The first day that it holds for, such as `2030-05-01`.
    pub from: String,
    /// The last day that it holds for.
    pub to: String,
    /// The ground that was asked for, corner by corner.
    pub area: Vec<Point>,
    /// Who has to answer.
    #[serde(default)]
    pub asks: Vec<UtilityKind>,
}

/// The day that a date is, counted from 1970-01-01; none when it is no date.
pub fn day_number(date: &str) -> Option<i64> {
    let mut parts = date.split('-');
    let mut next = |digits: usize| {
        let part = parts.next()?;
        let plain = part.len() == digits && part.bytes().all(|byte| byte.is_ascii_digit());
        plain.then(|| part.parse::<i64>().ok()).flatten()
    };
    let (year, month, day) = (next(4)?, next(2)?, next(2)?);
    if parts.next().is_some() || !(1..=12).contains(&month) {
        return None;
    }
    let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    let longest = match month {
        2 if leap => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    };
    if !(1..=longest).contains(&day) {
        return None;
    }
    // Years from March on, so that the odd day comes last (a public formula of calendars).
    let (y, m) = if month > 2 {
        (year, month - 3)
    } else {
        (year - 1, month + 9)
    };
    let era = y.div_euclid(400);
    let of_era = y.rem_euclid(400);
    let of_year = (153 * m + 2) / 5 + day - 1;
    Some(era * 146_097 + of_era * 365 + of_era / 4 - of_era / 100 + of_year - 719_468)
}

impl Ticket {
    /// Days that are left after this one; below zero it has lapsed, none when it does not hold yet or a date is none.
    pub fn days_left(&self, day: &str) -> Option<i64> {
        let today = day_number(day)?;
        if day_number(&self.from)? > today {
            return None;
        }
        Some(day_number(&self.to)? - today)
    }

    /// Whether it holds on a day.
    pub fn holds(&self, day: &str) -> bool {
        self.days_left(day).is_some_and(|days| days >= 0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_are_counted_over_months_and_leap_years() {
        assert_eq!(day_number("1970-01-01"), Some(0));
        assert_eq!(day_number("2000-03-01"), Some(11_017));
        let apart = |one, other| day_number(other).unwrap() - day_number(one).unwrap();
        assert_eq!(apart("2028-02-28", "2028-03-01"), 2);
        assert_eq!(apart("2030-05-14", "2030-05-28"), 14);
        for bad in [
            "",
            "2030-5-14",
            "2030-02-29",
            "2030-13-01",
            "2030-05-14-1",
            "x",
        ] {
            assert_eq!(day_number(bad), None, "{bad}");
        }
    }

    /// Derived from a state's rule: marks of 1 June hold 30 days, the marking day being day 0: 1 July is the last.
    #[test]
    fn a_ticket_holds_through_its_last_day() {
        let ticket = Ticket {
            id: "T".into(),
            from: "2030-06-01".into(),
            to: "2030-07-01".into(),
            area: vec![],
            asks: vec![],
        };
        assert_eq!(ticket.days_left("2030-06-01"), Some(30));
        assert!(ticket.holds("2030-07-01"));
        assert!(!ticket.holds("2030-07-02"));
        assert!(!ticket.holds("2030-05-31"));
    }
}

//! May a mark be laid from this one, and how sure is it: parents, generations and the doubt they carry.
//!
//! A mark is laid from control, a hub, a string or another mark, at most two marks deep, and never from old
//! paint (common practice). Its doubt is the root of the parent's and the measure's squares, as
//! independent parts add.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{Form, Length};

/// No mark is laid more than so many marks away from control, a hub or a string.
pub const DEEPEST: u8 = 2;
/// A second measure may differ from the first by this much.
pub const CHECKED_WITHIN: Length = Length::from_hundredths_of_a_foot(5);
/// The same near a line that must not be crossed.
pub const CHECKED_NEAR_A_LINE: Length = Length::from_hundredths_of_a_foot(2);

/// What a mark is laid from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Parent {
    /// A control point.
    Control,
    /// A hub outside the dig.
    Hub,
    /// A string between batter boards.
    String,
    /// Another mark.
    Mark {
        /// How many marks it is itself away from control, hub or string, with itself: 1 for the first.
        depth: u8,
        /// It was laid anew since the machine went over it, or was never gone over.
        stands: bool,
    },
    /// What is left of the mark's own paint.
    OldPaint,
}

/// Why a mark is not laid.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MarkError {
    /// From what is left of the paint.
    OldPaint,
    /// From a mark that was scraped.
    Scraped,
    /// Too many marks from control.
    TooDeep {
        /// How many.
        depth: u8,
    },
    /// The second measure differs.
    Differs {
        /// By how much.
        by: Length,
        /// How much would do.
        allowed: Length,
    },
    /// A doubt that is no doubt.
    Doubt,
}

const HUNDREDTHS: Form = Form::DecimalFeet { places: 2 };

impl MarkError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::OldPaint => words::layout::marks::old_paint().into(),
            Self::Scraped => words::layout::marks::scraped().into(),
            Self::TooDeep { depth } => words::layout::marks::too_deep(depth, &DEEPEST),
            Self::Differs { by, allowed } => {
                words::layout::marks::differs(&by.show(HUNDREDTHS), &allowed.show(HUNDREDTHS))
            }
            Self::Doubt => words::layout::marks::doubt().into(),
        }
    }
}

words::error!(MarkError);

/// How deep a mark laid from this parent is: 1 from control, hub or string.
///
/// # Errors
/// When the parent is old paint, a scraped mark, or too many marks deep.
pub fn depth_from(parent: Parent) -> Result<u8, MarkError> {
    match parent {
        Parent::Control | Parent::Hub | Parent::String => Ok(1),
        Parent::OldPaint => Err(MarkError::OldPaint),
        Parent::Mark { stands: false, .. } => Err(MarkError::Scraped),
        Parent::Mark { depth, .. } if depth >= DEEPEST => Err(MarkError::TooDeep { depth }),
        Parent::Mark { depth, .. } => Ok(depth.saturating_add(1)),
    }
}

/// The doubt of a mark from its parent's and that of the measure; all one standard deviation, in feet.
///
/// # Errors
/// When a doubt is not a number at or above zero.
pub fn doubt_from(parent_ft: f64, measure_ft: f64) -> Result<f64, MarkError> {
    for doubt in [parent_ft, measure_ft] {
        if !(doubt.is_finite() && doubt >= 0.0) {
            return Err(MarkError::Doubt);
        }
    }
    Ok(parent_ft.hypot(measure_ft))
}

/// The doubt of what a mark is laid from, and of the tape that lays it: one standard deviation, in feet (common practice).
pub const CONTROL_DOUBT_FT: f64 = 0.01;
/// A hub's or a string's, themselves laid from control.
pub const HUB_DOUBT_FT: f64 = 0.02;
/// A tape's on a dig.
pub const TAPE_DOUBT_FT: f64 = 0.02;

/// Whether a second, independent measure makes a laid mark a checked one; returns the difference.
///
/// # Errors
/// When they differ by more than 0.05 ft, or 0.02 ft near a no-cross line (common practice).
pub fn second_measure(apart: Length, near_a_line: bool) -> Result<Length, MarkError> {
    let allowed = if near_a_line {
        CHECKED_NEAR_A_LINE
    } else {
        CHECKED_WITHIN
    };
    let by = apart.abs();
    if by > allowed {
        return Err(MarkError::Differs { by, allowed });
    }
    Ok(by)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn old_paint_is_never_a_parent() {
        assert_eq!(depth_from(Parent::OldPaint), Err(MarkError::OldPaint));
        let scraped = Parent::Mark {
            depth: 1,
            stands: false,
        };
        assert_eq!(depth_from(scraped), Err(MarkError::Scraped));
        for parent in [Parent::Control, Parent::Hub, Parent::String] {
            assert_eq!(depth_from(parent), Ok(1));
        }
    }

    /// Common practice: a mark from a mark from a hub, and no further.
    #[test]
    fn two_marks_deep_is_the_most() {
        let mark = |depth| Parent::Mark {
            depth,
            stands: true,
        };
        assert_eq!(depth_from(mark(1)), Ok(2));
        for depth in [2, 3, u8::MAX] {
            let error = depth_from(mark(depth)).unwrap_err();
            assert!(error.to_string().contains("2 is the most"), "{error}");
            assert!(error.text().spanish.contains("2 es lo más"), "{error:?}");
        }
    }

    #[test]
    fn near_a_line_the_second_measure_is_judged_harder() {
        let th = Length::from_thousandths_of_a_foot;
        assert_eq!(second_measure(th(-50), false), Ok(th(50)));
        assert_eq!(second_measure(th(20), true), Ok(th(20)));
        let error = second_measure(th(30), true).unwrap_err();
        assert!(
            error.to_string().contains("differs by 0.03 ft; 0.02 ft"),
            "{error}"
        );
        assert!(second_measure(th(51), false).is_err());
    }

    proptest! {
        /// Derived from the sum of squares: never surer than the parent, never doubtful beyond the plain sum.
        #[test]
        fn no_mark_is_surer_than_its_parent(parent in 0.0..1.0, measure in 0.0..1.0) {
            let doubt = doubt_from(parent, measure).unwrap();
            prop_assert!(doubt >= parent.max(measure) && doubt <= parent + measure + 1e-12);
            prop_assert!(doubt_from(parent, -1.0).is_err() && doubt_from(f64::NAN, measure).is_err());
        }
    }

    /// Mathematics: 3-4-5.
    #[test]
    fn doubts_add_in_squares() {
        assert!((doubt_from(0.03, 0.04).unwrap() - 0.05).abs() < 1e-12);
    }
}

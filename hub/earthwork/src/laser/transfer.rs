//! Do two set-ups agree: one turning point shot from both, and planes that can't be mistaken for each other.

use words::Text;

use crate::length::{Form, Length};
use crate::level::elevation;

/// How far a turning point may come out from two set-ups (common practice).
pub const AGREE_WITHIN: Length = Length::from_hundredths_of_a_foot(2);
/// Two planes nearer than this can be mistaken for each other (common practice).
pub const PLANES_APART: Length = Length::from_hundredths_of_a_foot(50);

/// Why two set-ups do not go together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TransferError {
    /// The turning point came out in two heights.
    Disagree {
        /// By how much.
        apart: Length,
    },
    /// Two lasers at nearly one height.
    PlanesTooNear {
        /// By how much.
        apart: Length,
    },
}

const HUNDREDTHS: Form = Form::DecimalFeet { places: 2 };

impl TransferError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Disagree { apart } => words::laser::transfer::disagree(
                &apart.show(HUNDREDTHS),
                &AGREE_WITHIN.show(HUNDREDTHS),
            ),
            Self::PlanesTooNear { apart } => words::laser::transfer::planes_too_near(
                &apart.show(HUNDREDTHS),
                &PLANES_APART.show(HUNDREDTHS),
            ),
        }
    }
}

words::error!(TransferError);

/// The turning point's elevation from the second set-up less that from the first, when they agree.
///
/// # Errors
/// When they differ by more than 0.02 ft.
pub fn transfer(
    first: (Length, Length),
    second: (Length, Length),
) -> Result<Length, TransferError> {
    let difference = elevation(second.0, second.1) - elevation(first.0, first.1);
    if difference.abs() > AGREE_WITHIN {
        return Err(TransferError::Disagree {
            apart: difference.abs(),
        });
    }
    Ok(difference)
}

/// Whether two lasers may both be on.
///
/// # Errors
/// When their planes are less than 0.50 ft apart.
pub fn planes_apart(first_hi: Length, second_hi: Length) -> Result<(), TransferError> {
    let apart = (first_hi - second_hi).abs();
    if apart < PLANES_APART {
        return Err(TransferError::PlanesTooNear { apart });
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// Derived from HI − rod, with invented demo heights.
    #[test]
    fn a_turning_point_ties_two_set_ups() {
        let first = (ft(30_819), ft(500));
        assert_eq!(transfer(first, (ft(31_760), ft(1443))), Ok(ft(-2)));
        let error = transfer(first, (ft(31_760), ft(1444))).unwrap_err();
        assert!(error.to_string().contains("0.03 ft apart"), "{error}");
        assert!(
            error.text().spanish.contains("0.03 ft de diferencia"),
            "{error:?}"
        );
    }

    #[test]
    fn planes_that_can_be_mistaken_are_refused() {
        assert_eq!(planes_apart(ft(30_819), ft(30_869)), Ok(()));
        let error = planes_apart(ft(30_868), ft(30_819)).unwrap_err();
        assert!(error.to_string().contains("stand 0.49 ft apart"), "{error}");
    }
}

//! What must the rod read at every mark: the sheet for the pocket, for when everything electric dies.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::length::Length;
use crate::level::grade_rod;

/// A row of the sheet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SheetRow {
    /// The mark.
    pub mark: String,
    /// What to dig to.
    pub dig_to: Length,
    /// What the rod reads when the ground is there; on the rod or not, as `shot` says.
    pub grade_rod: Length,
    /// Whether this laser can shoot it.
    pub shot: Shot,
}

/// Whether a mark can be shot from a set-up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
#[schema(as = PocketShot)]
pub enum Shot {
    /// The grade rod is on the rod.
    OnTheRod,
    /// The dig lies above the laser: set the laser up higher.
    AboveLaser,
    /// The rod is too short: set the laser up lower, or take a longer rod.
    RodTooShort,
}

/// The rows of a sheet for a height of instrument and a rod of this length, in the order of the marks given. A
/// sheet is void when its set-up closes or a target changes.
pub fn rows<'a>(
    hi: Length,
    rod: Length,
    marks: impl IntoIterator<Item = (&'a str, Length)>,
) -> Vec<SheetRow> {
    marks
        .into_iter()
        .map(|(mark, dig_to)| {
            let grade_rod = grade_rod(hi, dig_to);
            let shot = if grade_rod < Length::ZERO {
                Shot::AboveLaser
            } else if grade_rod > rod {
                Shot::RodTooShort
            } else {
                Shot::OnTheRod
            };
            SheetRow {
                mark: mark.to_owned(),
                dig_to,
                grade_rod,
                shot,
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::level::elevation;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    /// Invented, demo: HI 308.45 over N-01 at 302.00 reads 6.45; the rod is 13 ft long. The other two are derived.
    #[test]
    fn every_mark_has_its_grade_rod() {
        let rows = rows(
            ft(30_845),
            ft(1300),
            [
                ("N-01", ft(30_200)),
                ("HIGH", ft(30_846)),
                ("DEEP", ft(29_544)),
            ],
        );
        let got: Vec<_> = rows.iter().map(|row| (row.grade_rod, row.shot)).collect();
        assert_eq!(
            got,
            [
                (ft(645), Shot::OnTheRod),
                (ft(-1), Shot::AboveLaser),
                (ft(1301), Shot::RodTooShort)
            ]
        );
    }

    proptest! {
        /// A rod that reads as the sheet says stands at the dig.
        #[test]
        fn the_sheet_leads_to_the_dig(hi in 30_000_i64..32_000, dig_to in 29_000_i64..32_000) {
            let rows = rows(ft(hi), ft(1300), [("A", ft(dig_to))]);
            prop_assert_eq!(elevation(ft(hi), rows[0].grade_rod), ft(dig_to));
        }
    }
}

//! A zone that is dug deeper than the drawing and filled again, such as soft ground that the engineer has had taken out.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::{TargetError, boundary};
use crate::length::Length;
use crate::point::Point;

/// Deeper is a slip of the unit or the point (common practice).
const DEEPEST: Length = Length::from_hundredths_of_a_foot(1_000);

/// A zone dug deeper: after the fill the target stands again.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Undercut {
    /// What the crew calls it.
    pub name: String,
    /// Its corners, in order.
    pub within: Vec<Point>,
    /// Below the dig-to of the drawing.
    pub depth: Length,
    /// What fills it again; a reading can be judged against its top by this name.
    pub material: String,
    /// In how many lifts; 0 when nobody has said.
    #[serde(default)]
    pub lifts: u32,
}

impl Undercut {
    /// Whether somebody means the top of its fill.
    pub(super) fn is_named(&self, surface: &str) -> bool {
        let surface = surface.trim().to_lowercase();
        let plain = surface.strip_prefix("top of ").unwrap_or(&surface);
        plain == self.material.trim().to_lowercase()
    }

    /// What is wrong with it.
    pub(super) fn check(&self) -> Option<TargetError> {
        let wrong = |wrong| Some(TargetError::Undercut(wrong));
        if self.name.trim().is_empty() {
            return wrong(words::target::undercut::no_name(&self.name));
        }
        if self.material.trim().is_empty() {
            return wrong(words::target::undercut::no_material(&self.name));
        }
        if self.depth <= Length::ZERO || self.depth > DEEPEST {
            return wrong(words::target::undercut::depth(&self.name));
        }
        boundary::check(&self.within)
    }
}

/// The deepest undercut at a place.
pub(super) fn deepest(undercuts: &[Undercut], at: Point) -> Option<&Undercut> {
    undercuts
        .iter()
        .filter(|one| boundary::outside_by(&one.within, at).is_none())
        .max_by_key(|one| one.depth)
}

#[cfg(test)]
mod tests {
    use super::super::tests::{at, ft, stack};
    use super::super::{DigTo, Shape, Target};
    use super::*;

    /// Invented, demo: soft ground under a corner of the pad.
    #[test]
    fn an_undercut_lowers_the_dig_and_its_fill_restores_it() {
        let mut pad = Target::new(
            Shape::Flat {
                elevation: ft(10_050),
            },
            stack(50),
        );
        pad.undercuts = vec![Undercut {
            name: "SOFT-1".into(),
            within: vec![at(0, 0), at(1000, 0), at(1000, 1000), at(0, 1000)],
            depth: ft(150),
            material: "crushed rock".into(),
            lifts: 3,
        }];
        assert_eq!(pad.check(), []);
        assert_eq!(pad.dig_to(at(500, 500)), Ok(DigTo::At(ft(9850))));
        assert_eq!(pad.dig_to(at(1500, 500)), Ok(DigTo::At(ft(10_000))));
        for surface in ["crushed rock", "Top of crushed rock", "subgrade"] {
            let top = pad.named(surface, at(500, 500));
            assert_eq!(top, Ok(DigTo::At(ft(10_000))), "{surface}");
        }
        assert_eq!(pad.named("gravel", at(500, 500)), Ok(DigTo::At(ft(10_050))));
        assert!(pad.named("crushed rock", at(1500, 500)).is_err());
        pad.undercuts[0].depth = ft(0);
        assert!(pad.check()[0].to_string().contains("SOFT-1"));
    }
}

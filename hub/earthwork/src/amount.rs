//! How much: areas, volumes, weights, densities and pressures, each with its unit in its type.
//!
//! They are `f64`, for they come from products of lengths and are never at the edge of a verdict. A cubic yard is
//! 27 cubic feet, a ton is the short ton of 2,000 lb (NIST Handbook 44, appendix C).

use std::iter::Sum;
use std::ops::{Add, AddAssign, Mul, Sub};

use contract::ToSchema;
use serde::{Deserialize, Serialize};

/// An amount in one unit, with sums and multiples.
macro_rules! amount {
    ($(#[$what:meta])* $name:ident) => {
        $(#[$what])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd, Serialize, Deserialize, ToSchema)]
        #[serde(transparent)]
        pub struct $name(pub f64);

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }

        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl Sum for $name {
            fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
                all.fold(Self(0.0), Add::add)
            }
        }
    };
}

amount! {
    /// Square feet.
    SquareFeet
}
amount! {
    /// Cubic feet.
    CubicFeet
}
amount! {
    /// Short tons of 2,000 lb.
    Tons
}
amount! {
    /// Pounds per cubic foot.
    PoundsPerCubicFoot
}
amount! {
    /// Pounds per square foot.
    PoundsPerSquareFoot
}

impl CubicFeet {
    /// From cubic yards.
    pub fn from_cubic_yards(yards: f64) -> CubicFeet {
        CubicFeet(yards * 27.0)
    }

    /// In cubic yards.
    pub fn cubic_yards(self) -> f64 {
        self.0 / 27.0
    }

    /// What it weighs at this density.
    pub fn weight(self, density: PoundsPerCubicFoot) -> Tons {
        Tons(self.0 * density.0 / 2000.0)
    }
}

impl PoundsPerSquareFoot {
    /// In kilopascals: 1 lbf/ft² is 0.04788026 kPa (NIST Special Publication 811, appendix B).
    pub fn kilopascals(self) -> f64 {
        self.0 * 0.047_880_26
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Derived: 27 ft³ of gravel at 138 lb/ft³ are 1.863 t.
    #[test]
    fn a_yard_of_rammed_gravel_weighs_under_two_tons() {
        let yard = CubicFeet::from_cubic_yards(1.0);
        assert!((yard.weight(PoundsPerCubicFoot(138.0)).0 - 1.863).abs() < 1e-12);
        let sum: CubicFeet = [yard, yard * 2.0].into_iter().sum();
        assert!((sum.cubic_yards() - 3.0).abs() < 1e-12);
    }
}

//! How well does this crew read: pairs of blind shots, the second made without seeing the first.
//!
//! s = √(Σd² / 2m) over m pairs, the standard deviation of one shot (statistics textbooks, duplicate measurements).

use crate::length::Length;

/// With fewer pairs the usual figure stays.
pub const FEWEST_PAIRS: usize = 6;

/// The standard deviation of one shot in feet, from the differences of pairs; `None` below six pairs, where the
/// usual figure stays.
pub fn reading_doubt_ft(differences: &[Length]) -> Option<f64> {
    if differences.len() < FEWEST_PAIRS {
        return None;
    }
    let squares: f64 = differences.iter().map(|pair| pair.feet().powi(2)).sum();
    Some((squares / (2.0 * differences.len() as f64)).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Derived: six pairs that differ by 0.02 ft are 0.02/√2 each.
    #[test]
    fn six_pairs_tell_the_crews_own_doubt() {
        let pair = Length::from_hundredths_of_a_foot(2);
        let doubt = reading_doubt_ft(&[pair, -pair, pair, -pair, pair, -pair]).unwrap();
        assert!((doubt - 0.014_142).abs() < 1e-6, "{doubt}");
        assert_eq!(reading_doubt_ft(&[pair; 5]), None);
    }

    proptest! {
        /// Which of a pair came first does not matter, and twice the differences are twice the doubt.
        #[test]
        fn order_does_not_matter(pairs in prop::collection::vec(-90_000_i64..90_000, 6..20)) {
            let doubt = |factor: i64| {
                let lengths: Vec<Length> = pairs
                    .iter()
                    .map(|pair| Length::from_tenth_micrometres(pair * factor))
                    .collect();
                reading_doubt_ft(&lengths).unwrap()
            };
            prop_assert!((doubt(1) - doubt(-1)).abs() < 1e-15);
            prop_assert!((doubt(2) - 2.0 * doubt(1)).abs() < 1e-12);
        }
    }
}

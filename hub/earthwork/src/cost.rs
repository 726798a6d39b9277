//! What does it cost: time by the hour, amounts by the piece.
//!
//! Rates are the user's own; nothing here has a price of its own.

use crate::figure::{Figure, FigureError, can_be};

/// What so many milliseconds cost at a rate an hour.
///
/// # Errors
/// When the time or the rate is negative or none.
pub fn of_time(ms: i64, per_hour: f64) -> Result<f64, FigureError> {
    let hours = can_be(Figure::Hours, ms as f64 / 3_600_000.0)?;
    Ok(hours * can_be(Figure::Money, per_hour)?)
}

/// What so much costs at a price for each.
///
/// # Errors
/// When a figure is one that no site has.
pub fn of_amount(amount: f64, price: f64) -> Result<f64, FigureError> {
    Ok(can_be(Figure::Yards, amount)? * can_be(Figure::Money, price)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Derived: 18 minutes of a machine at $195 and one at $145.
    #[test]
    fn time_is_charged_by_the_hour() {
        let both = of_time(18 * 60_000, 195.0).unwrap() + of_time(18 * 60_000, 145.0).unwrap();
        assert!((both - 102.0).abs() < 1e-9, "{both}");
        assert!(of_time(-1, 195.0).is_err());
        assert!(of_time(1, -195.0).is_err());
        assert!(of_amount(2.0, f64::NAN).is_err());
    }
}

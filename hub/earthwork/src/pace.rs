//! How long does a call last: a call is stale when the machine has had time to dig it one and a half times.

use crate::length::Length;

/// No call goes stale sooner, in minutes: a machine may be waiting for a truck.
const SHORTEST: f64 = 8.0;
/// No call lasts longer, in minutes: the ground and the laser move.
const LONGEST: f64 = 25.0;
/// Feet a minute, taken when no rate is known (common practice).
const USUAL_RATE: f64 = 0.05;

/// Milliseconds until a call of this amount is stale: 1.5·|amount| ÷ rate, between 8 and 25 minutes.
/// A rate that is not above zero is taken for the usual 0.05 ft/min.
pub fn stale_after_ms(amount: Length, dig_rate_ft_per_min: f64) -> i64 {
    let rate = if dig_rate_ft_per_min > 0.0 && dig_rate_ft_per_min.is_finite() {
        dig_rate_ft_per_min
    } else {
        USUAL_RATE
    };
    let minutes = (1.5 * amount.abs().feet() / rate).clamp(SHORTEST, LONGEST);
    crate::length::whole((minutes * 60_000.0).round())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Derived from the rule: 1.5·|a|/b, clamped to 8 and 25 minutes.
    #[test]
    fn a_deeper_call_lasts_longer_within_its_bounds() {
        let ft = Length::from_hundredths_of_a_foot;
        for (amount, rate, minutes) in [
            (0, 0.05, 8.0),
            (20, 0.05, 8.0),
            (30, 0.05, 9.0),
            (-30, 0.05, 9.0),
            (50, 0.05, 15.0),
            (120, 0.05, 25.0),
            (30, 0.0, 9.0),
            (30, f64::NAN, 9.0),
            (30, -1.0, 9.0),
        ] {
            let expected: f64 = minutes * 60_000.0;
            assert_eq!(
                stale_after_ms(ft(amount), rate),
                crate::length::whole(expected),
                "{amount} {rate}"
            );
        }
    }
}

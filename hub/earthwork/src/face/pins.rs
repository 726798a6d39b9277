//! Does a crack open, and faster? Two pins across it, taped again and again.
//!
//! Rules of the trade (common practice): it is watched once it has opened by more than the tape can err, and people leave
//! the face when it opens faster than 0.05 ft an hour, or twice running faster than before beyond the tape's doubt.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use super::FaceError;
use crate::length::Length;

/// One standard deviation of a tape between pins, in feet.
pub const TAPE_DOUBT_FT: f64 = 0.01;
/// Faster than this people leave, in feet an hour.
const LEAVE_FT_PER_HOUR: f64 = 0.05;
const MS_IN_AN_HOUR: f64 = 3_600_000.0;

/// One tape between the pins.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Taped {
    /// When, in milliseconds.
    pub at_ms: i64,
    /// How far apart.
    pub apart: Length,
}

/// What the tapes say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum PinState {
    /// Within what the tape can err.
    Still,
    /// It opens.
    Watch,
    /// Leave the face.
    Leave,
}

/// Pins judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pins {
    /// What to do.
    pub state: PinState,
    /// Opened since the tape before; negative closed.
    pub opened: Length,
    /// Opened since the first tape.
    pub in_all: Length,
    /// Feet an hour since the last tape that differs by more than the tape can err, or since the one before.
    pub rate_ft_per_hour: f64,
    /// The rate grew beyond doubt at each of the last two tapes.
    pub speeding_up: bool,
}

fn hours(from: Taped, to: Taped) -> f64 {
    (to.at_ms - from.at_ms) as f64 / MS_IN_AN_HOUR
}

fn rate(from: Taped, to: Taped) -> f64 {
    (to.apart - from.apart).feet() / hours(from, to)
}

/// Judges tapes in the order in which they were made.
///
/// # Errors
/// With fewer than two tapes, two at one moment, or a tape below zero.
pub fn judge_pins(tapes: &[Taped]) -> Result<Pins, FaceError> {
    let few = || FaceError::NotANumber {
        what: words::face::what::number_of_tapes(),
        value: tapes.len().to_string(),
    };
    let [before @ .., last] = tapes else {
        return Err(few());
    };
    let (first, newest) = (
        before.first().ok_or_else(few)?,
        before.last().ok_or_else(few)?,
    );
    for pair in tapes.windows(2) {
        if pair[1].at_ms <= pair[0].at_ms {
            return Err(FaceError::NotANumber {
                what: words::face::what::time_between_tapes(),
                value: format!("{} ms", pair[1].at_ms - pair[0].at_ms),
            });
        }
    }
    if let Some(bad) = tapes.iter().find(|tape| tape.apart < Length::ZERO) {
        return Err(FaceError::Negative {
            what: words::face::what::tape_between_pins(),
            value: bad.apart,
        });
    }
    let sure = |from: &Taped| (last.apart - from.apart).feet() >= 2.0 * TAPE_DOUBT_FT - 1e-9;
    let from = before
        .iter()
        .rev()
        .find(|tape| sure(tape))
        .unwrap_or(newest);
    let rate_ft_per_hour = rate(*from, *last);
    let speeding_up = quickened(tapes, 0) && quickened(tapes, 1);
    let fast = sure(from) && rate_ft_per_hour > LEAVE_FT_PER_HOUR;
    let state = if fast || speeding_up {
        PinState::Leave
    } else if sure(first) || sure(newest) || quickened(tapes, 0) {
        PinState::Watch
    } else {
        PinState::Still
    };
    Ok(Pins {
        state,
        opened: last.apart - newest.apart,
        in_all: last.apart - first.apart,
        rate_ft_per_hour,
        speeding_up,
    })
}

/// Whether the rate grew beyond the tape's doubt at the tape so many before the last.
fn quickened(tapes: &[Taped], back: usize) -> bool {
    let Some(end) = tapes.len().checked_sub(back).filter(|end| *end >= 3) else {
        return false;
    };
    let [one, two, three] = [tapes[end - 3], tapes[end - 2], tapes[end - 1]];
    let (earlier, later) = (hours(one, two), hours(two, three));
    let doubt = 2.0 * TAPE_DOUBT_FT * (later.powi(-2) + earlier.powi(-2)).sqrt();
    rate(two, three) - rate(one, two) > doubt
}

/// When one over the rate would reach zero, by a straight line through the last two rates that grew: for the
/// engineer alone, never a promise. In milliseconds, like the tapes; none while the rate does not grow.
pub fn forecast(tapes: &[Taped]) -> Option<i64> {
    let [.., one, two, three] = tapes else {
        return None;
    };
    let (slow, fast) = (rate(*one, *two), rate(*two, *three));
    if !(slow > 0.0 && fast > slow) {
        return None;
    }
    let middle = |from: &Taped, to: &Taped| (from.at_ms + to.at_ms) as f64 / 2.0;
    let (at_slow, at_fast) = (middle(one, two), middle(two, three));
    let falls = (1.0 / slow - 1.0 / fast) / (at_fast - at_slow);
    let at = at_fast + 1.0 / fast / falls;
    at.is_finite().then(|| crate::length::whole(at.round()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tape(minutes: i64, hundredths: i64) -> Taped {
        Taped {
            at_ms: minutes * 60_000,
            apart: Length::from_hundredths_of_a_foot(hundredths),
        }
    }

    /// Invented, demo: 06:48 12.10, 13:00 12.11, 13:40 12.13, 14:00 12.16.
    #[test]
    fn a_crack_that_opens_faster_is_watched_then_left() {
        let tapes = [
            tape(408, 1210),
            tape(780, 1211),
            tape(820, 1213),
            tape(840, 1216),
        ];
        let state = |many: usize| judge_pins(&tapes[..many]).unwrap().state;
        assert_eq!(state(2), PinState::Still);
        assert_eq!(state(3), PinState::Watch);
        assert_eq!(state(4), PinState::Leave);
        // Rates of 0.03 and 0.09 ft/h at 13:20 and 13:50: one over the rate is nothing at 14:05.
        assert_eq!(forecast(&tapes), Some(845 * 60_000));
        assert_eq!(forecast(&tapes[..2]), None);
    }

    #[test]
    fn creeping_under_the_tapes_doubt_is_still_seen() {
        // A hundredth every five minutes: no single tape is beyond doubt, 0.12 ft an hour is.
        let tapes: Vec<Taped> = (0..4).map(|n| tape(n * 5, 1210 + n)).collect();
        assert_eq!(judge_pins(&tapes[..2]).unwrap().state, PinState::Still);
        assert_eq!(judge_pins(&tapes[..3]).unwrap().state, PinState::Leave);
    }

    #[test]
    fn one_hundredth_a_minute_later_alarms_nobody_and_bad_tapes_are_refused() {
        let jitter = [tape(0, 1210), tape(1, 1211)];
        assert_eq!(judge_pins(&jitter).unwrap().state, PinState::Still);
        assert!(judge_pins(&jitter[..1]).is_err());
        assert!(judge_pins(&[tape(1, 1210), tape(1, 1211)]).is_err());
        assert!(judge_pins(&[tape(0, 1210), tape(1, -1)]).is_err());
    }
}

//! What is lettered on the offset hub: how far off it stands, and the cut or fill from its top to the dig.
//!
//! C and F with the amount, OF with the distance, GRADE when there is neither, stations as 1+20.00: as the US
//! Navy Engineering Aid training text has them under "Setting Grade Stakes" and "Offset Stakes".

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::{FOOT, Length, nearest};

/// A hub that stands off its mark, out of the machine's way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct OffsetHub {
    /// The elevation of its top.
    pub top: Length,
    /// What to dig to at the mark.
    pub dig_to: Length,
    /// From the mark to the hub; positive to the right looking up-station.
    pub offset: Length,
    /// The mark's station, when it lies on a run.
    pub station: Option<Length>,
}

/// What is lettered, line by line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Lettering {
    /// `OF 5.00 RT`: the hub stands 5 ft to the right of its mark.
    pub offset: String,
    /// `C 2.58`, `F 0.40` or `GRADE`: from the hub's top.
    pub cut_or_fill: String,
    /// `STA 1+20.00`, when there is one.
    pub station: Option<String>,
    /// Top less dig-to, exact. Positive is cut.
    pub cut: Length,
}

/// Why a hub is no offset hub.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StakeError {
    /// It stands on its mark.
    OnTheMark,
    /// A station before the start of its line.
    BeforeStart {
        /// As given.
        station: Length,
    },
}

impl StakeError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::OnTheMark => words::layout::stake::on_the_mark().into(),
            Self::BeforeStart { station } => words::layout::stake::before_start(station),
        }
    }
}

words::error!(StakeError);

/// What to letter on an offset hub; amounts to the hundredth of a foot, half away from zero.
///
/// # Errors
/// When it stands on its mark, or the station is below zero.
pub fn letter(hub: &OffsetHub) -> Result<Lettering, StakeError> {
    if hundredths(hub.offset) == 0 {
        return Err(StakeError::OnTheMark);
    }
    let side = if hub.offset > Length::ZERO {
        "RT"
    } else {
        "LT"
    };
    let station = match hub.station {
        Some(station) if station < Length::ZERO => return Err(StakeError::BeforeStart { station }),
        Some(station) => Some(format!("STA {}", station_text(station))),
        None => None,
    };
    let cut = hub.top - hub.dig_to;
    Ok(Lettering {
        offset: format!("OF {} {side}", amount(hub.offset)),
        cut_or_fill: cut_or_fill(cut),
        station,
        cut,
    })
}

/// `C 2.58` for a cut, `F 0.40` for a fill, `GRADE` for less than half a hundredth of a foot; the difference is
/// measured − target, so that a cut is positive.
pub fn cut_or_fill(difference: Length) -> String {
    match hundredths(difference) {
        0 => "GRADE".to_owned(),
        above if above > 0 => format!("C {}", amount(difference)),
        _ => format!("F {}", amount(difference)),
    }
}

/// A station from 0 up as it is lettered: full hundreds of feet, then the rest, `12+34.56`.
fn station_text(station: Length) -> String {
    let all = hundredths(station);
    format!("{}+{:02}.{:02}", all / 10_000, all / 100 % 100, all % 100)
}

fn amount(length: Length) -> String {
    let all = hundredths(length).unsigned_abs();
    format!("{}.{:02}", all / 100, all % 100)
}

/// The nearest whole number of hundredths of a foot.
fn hundredths(length: Length) -> i128 {
    nearest(
        i128::from(length.tenth_micrometres()) * 100,
        i128::from(FOOT),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn hub(top: i64, dig_to: i64, offset: i64, station: Option<i64>) -> OffsetHub {
        OffsetHub {
            top: ft(top),
            dig_to: ft(dig_to),
            offset: ft(offset),
            station: station.map(ft),
        }
    }

    /// US Navy Engineering Aid, "Setting Grade Stakes": a cut of 2.58 ft is lettered C, a fill of as much F.
    /// Stations: mathematics, 1234.56 ft is 12+34.56.
    #[test]
    fn a_hub_is_lettered_as_the_trade_does() {
        let right = letter(&hub(30_458, 30_200, 500, Some(123_456))).unwrap();
        assert_eq!(right.offset, "OF 5.00 RT");
        assert_eq!(right.cut_or_fill, "C 2.58");
        assert_eq!(right.station.as_deref(), Some("STA 12+34.56"));
        let left = letter(&hub(29_942, 30_200, -350, None)).unwrap();
        assert_eq!(
            (left.offset.as_str(), left.cut_or_fill.as_str()),
            ("OF 3.50 LT", "F 2.58")
        );
        assert_eq!(left.station, None);
        assert_eq!(
            letter(&hub(30_200, 30_200, 500, Some(800))).unwrap(),
            Lettering {
                offset: "OF 5.00 RT".into(),
                cut_or_fill: "GRADE".into(),
                station: Some("STA 0+08.00".into()),
                cut: Length::ZERO,
            }
        );
    }

    #[test]
    fn a_hub_on_its_mark_is_refused() {
        let error = letter(&hub(1, 0, 0, None)).unwrap_err();
        assert!(error.to_string().contains("Set it off"), "{error}");
        assert!(error.text().spanish.contains("a un lado"), "{error:?}");
        let before = letter(&hub(1, 0, 500, Some(-1))).unwrap_err();
        assert!(before.to_string().contains("−0.01 ft"), "{before}");
    }

    proptest! {
        /// Turning a difference over turns C into F and keeps the amount.
        #[test]
        fn cut_and_fill_mirror_each_other(counts in -100_000_000_i64..100_000_000) {
            let length = Length::from_tenth_micrometres(counts);
            let swapped: String = cut_or_fill(length)
                .chars()
                .map(|letter| match letter { 'C' => 'F', 'F' => 'C', other => other })
                .collect();
            prop_assert_eq!(swapped, cut_or_fill(-length));
        }
    }
}

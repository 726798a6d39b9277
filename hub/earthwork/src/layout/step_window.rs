//! Where can a step fall: the lengths that the forms at hand make, nearest to the drawing.
//!
//! Forms come in widths, perhaps so many of each, and a filler closes up to its own width. Reachable lengths
//! are found by counting up in steps of the finest common part of the widths (dynamic programming, fewest forms).

use std::collections::BTreeMap;

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::Length;

/// A step is never farther than this from the reference corner: 1,000 ft.
const FARTHEST: Length = Length::from_hundredths_of_a_foot(100_000);
/// So many combinations are looked at, at most; it takes well under a second.
const MOST_TRIES: u32 = 500_000;

/// Forms of one width.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Forms {
    /// How wide one is.
    pub width: Length,
    /// How many there are; as many as it takes when none.
    pub at_hand: Option<u32>,
}

/// A length that the forms make.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Reachable {
    /// From the corner where the forms start.
    pub length: Length,
    /// How many of each width, the widest first; widths that are not used are left out.
    pub forms: Vec<(Length, u32)>,
}

/// Where a step may fall.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct StepWindow {
    /// What the forms make, nearest to the drawing.
    pub nearest: Reachable,
    /// By how much that misses the drawing: reachable less drawn.
    pub off: Length,
    /// The face may fall from here …
    pub from: Length,
    /// … to here: the filler either way.
    pub to: Length,
}

/// Why there is no window.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StepWindowError {
    /// No forms.
    NoForms,
    /// A width that is none.
    Width {
        /// As given.
        width: Length,
    },
    /// A place before the corner or too far from it.
    Drawn {
        /// As given.
        drawn: Length,
    },
    /// Too many lengths to look through.
    TooMany,
    /// Nothing that the forms make lies near enough.
    NoneNear {
        /// As drawn.
        drawn: Length,
        /// How far it may fall.
        allowed: Length,
        /// What the forms make.
        nearest: Length,
    },
}

impl StepWindowError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::NoForms => words::layout::step_window::no_forms().into(),
            Self::Width { width } => words::layout::step_window::width(width),
            Self::Drawn { drawn } => words::layout::step_window::drawn(drawn),
            Self::TooMany => words::layout::step_window::too_many().into(),
            Self::NoneNear {
                drawn,
                allowed,
                nearest,
            } => words::layout::step_window::none_near(allowed, drawn, nearest),
        }
    }
}

words::error!(StepWindowError);

/// The window for a step that is drawn so far from the corner where the forms start, and may fall `allowed` from
/// there. At equal distance the shorter length is taken, and for one length the fewest forms.
///
/// # Errors
/// When there are no forms, a figure is none, or nothing that they make lies within what is allowed.
pub fn step_window(
    forms: &[Forms],
    filler: Length,
    drawn: Length,
    allowed: Length,
) -> Result<StepWindow, StepWindowError> {
    if forms.is_empty() {
        return Err(StepWindowError::NoForms);
    }
    if drawn <= Length::ZERO || drawn > FARTHEST {
        return Err(StepWindowError::Drawn { drawn });
    }
    if filler < Length::ZERO {
        return Err(StepWindowError::Width { width: filler });
    }
    let mut forms = forms.to_vec();
    forms.sort_by_key(|form| std::cmp::Reverse(form.width));
    let widest = forms[0].width;
    let reachable = reachable(&forms, drawn + widest)?;
    let (length, counts) = reachable
        .into_iter()
        .min_by_key(|(length, _)| ((*length - drawn).abs(), *length))
        .ok_or(StepWindowError::NoForms)?;
    let off = length - drawn;
    if off.abs() > allowed.max(Length::ZERO) {
        return Err(StepWindowError::NoneNear {
            drawn,
            allowed: allowed.max(Length::ZERO),
            nearest: length,
        });
    }
    Ok(StepWindow {
        nearest: Reachable {
            length,
            forms: forms
                .iter()
                .map(|form| form.width)
                .zip(counts)
                .filter(|(_, count)| *count > 0)
                .collect(),
        },
        off,
        from: length - filler,
        to: length + filler,
    })
}

/// Every length above zero that the forms make, up to the farthest, with how many of each width; width by width,
/// so that no more of a width is used than is at hand.
fn reachable(
    forms: &[Forms],
    farthest: Length,
) -> Result<BTreeMap<Length, Vec<u32>>, StepWindowError> {
    let pieces = |counts: &[u32]| counts.iter().map(|count| u64::from(*count)).sum::<u64>();
    let mut reached = BTreeMap::from([(Length::ZERO, vec![])]);
    let mut tries = 0;
    for form in forms {
        if form.width <= Length::ZERO {
            return Err(StepWindowError::Width { width: form.width });
        }
        let mut next: BTreeMap<Length, Vec<u32>> = BTreeMap::new();
        for (length, counts) in &reached {
            let most = form.at_hand.unwrap_or(u32::MAX);
            for count in 0..=most {
                let longer = *length + form.width * i64::from(count);
                if longer > farthest {
                    break;
                }
                tries += 1;
                if tries > MOST_TRIES {
                    return Err(StepWindowError::TooMany);
                }
                let mut all = counts.clone();
                all.push(count);
                match next.get(&longer) {
                    Some(known) if pieces(known) <= pieces(&all) => {}
                    _ => {
                        next.insert(longer, all);
                    }
                }
            }
        }
        reached = next;
    }
    reached.remove(&Length::ZERO);
    Ok(reached)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn forms(widths: &[(i64, Option<u32>)]) -> Vec<Forms> {
        widths
            .iter()
            .map(|(width, at_hand)| Forms {
                width: ft(*width),
                at_hand: *at_hand,
            })
            .collect()
    }

    /// Invented, demo: 18.00 ft is six panels of 3 ft. The others are derived by hand.
    #[test]
    fn a_step_falls_where_the_forms_end() {
        let window = step_window(&forms(&[(300, None)]), ft(25), ft(1800), ft(50)).unwrap();
        assert_eq!(window.nearest.forms, [(ft(300), 6)]);
        assert_eq!(
            (window.off, window.from, window.to),
            (ft(0), ft(1775), ft(1825))
        );
        let mixed = forms(&[(200, None), (300, None), (50, Some(1))]);
        let window = step_window(&mixed, ft(0), ft(1140), ft(50)).unwrap();
        assert_eq!(window.nearest.length, ft(1150));
        assert_eq!(
            window.nearest.forms,
            [(ft(300), 3), (ft(200), 1), (ft(50), 1)]
        );
        assert_eq!(window.off, ft(10));
    }

    #[test]
    fn what_is_at_hand_is_not_exceeded() {
        let few = forms(&[(300, Some(4))]);
        let error = step_window(&few, ft(25), ft(1800), ft(50)).unwrap_err();
        assert!(
            error
                .to_string()
                .contains("the nearest is 12 ft. Ask the form crew"),
            "{error}"
        );
        assert!(
            error.text().spanish.contains("lo más cerca es 12 ft"),
            "{error:?}"
        );
        let none = step_window(&[], ft(0), ft(1800), ft(50));
        assert_eq!(none, Err(StepWindowError::NoForms));
        for (width, filler, drawn) in [(0, 0, 10), (300, -1, 10), (300, 0, 0), (300, 0, 100_001)] {
            let refused = step_window(&forms(&[(width, None)]), ft(filler), ft(drawn), ft(5));
            assert!(refused.is_err(), "{width} {filler} {drawn}");
        }
        let fine = forms(&[(1, None), (2, None)]);
        let error = step_window(&fine, ft(0), ft(100_000), ft(0)).unwrap_err();
        assert_eq!(error, StepWindowError::TooMany);
    }

    proptest! {
        /// The forms add up to the length, none beyond what is at hand, and no combination comes nearer.
        #[test]
        fn nothing_comes_nearer(
            one in 50_i64..400, other in 50_i64..400, at_hand in 0_u32..6, drawn in 100_i64..2000
        ) {
            prop_assume!(one != other);
            let given = forms(&[(one, None), (other, Some(at_hand))]);
            let window = step_window(&given, ft(0), ft(drawn), ft(9999)).unwrap();
            let sum: Length = window.nearest.forms.iter().map(|(width, count)| *width * i64::from(*count)).sum();
            prop_assert_eq!(sum, window.nearest.length);
            for i in 0..60 {
                for j in 0..=i64::from(at_hand) {
                    let length = ft(one * i + other * j);
                    prop_assert!(length == Length::ZERO || (length - ft(drawn)).abs() >= window.off.abs());
                }
            }
        }
    }
}

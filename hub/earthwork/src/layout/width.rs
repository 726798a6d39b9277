//! Is it wide enough, and not too far out: widths from two edges, one of which may lie along a no-cross line.

use contract::ToSchema;
use serde::{Deserialize, Serialize};
use words::Text;

use crate::length::Length;

/// The free edge may lie this far beyond the width that is wanted (common practice).
pub const FREE_EDGE_BEYOND: Length = Length::from_hundredths_of_a_foot(100);

/// What a footing's width must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct WidthRule {
    /// The least width.
    pub least: Length,
    /// How far the strict edge may lie from the line, as drawn: nothing beyond it is allowed.
    pub strict: Length,
}

/// What a width says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum WidthVerdict {
    /// Wide enough, with both edges where they may be.
    Enough {
        /// Beyond the least.
        spare: Length,
    },
    /// Dig the free edge wider.
    TooNarrow {
        /// By this much.
        by: Length,
    },
    /// The strict edge is beyond where it may be.
    StrictEdgeOut {
        /// By this much.
        by: Length,
    },
    /// The free edge is more than a foot beyond what is wanted.
    TooWide {
        /// By this much beyond that foot.
        by: Length,
    },
}

/// Why there is no verdict.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WidthError {
    /// A rule that is none.
    Rule {
        /// The least width.
        least: Length,
        /// The strict edge.
        strict: Length,
    },
}

impl WidthError {
    /// What is wrong and what to do.
    pub fn text(&self) -> Text {
        match self {
            Self::Rule { least, strict } => words::layout::width::rule(least, strict),
        }
    }
}

words::error!(WidthError);

/// Judges a width from the distances of both edges from the line of the run, each positive on its own side. The
/// strict edge comes first, since digging cannot put it right; a width on the limit is enough.
///
/// # Errors
/// When the rule is none.
pub fn judge_width(
    strict_edge: Length,
    free_edge: Length,
    rule: &WidthRule,
) -> Result<WidthVerdict, WidthError> {
    let WidthRule { least, strict } = *rule;
    if least <= Length::ZERO || strict < Length::ZERO {
        return Err(WidthError::Rule { least, strict });
    }
    let spare = strict_edge + free_edge - least;
    Ok(if strict_edge > strict {
        WidthVerdict::StrictEdgeOut {
            by: strict_edge - strict,
        }
    } else if spare < Length::ZERO {
        WidthVerdict::TooNarrow { by: -spare }
    } else if free_edge - (least - strict) > FREE_EDGE_BEYOND {
        WidthVerdict::TooWide {
            by: free_edge - (least - strict) - FREE_EDGE_BEYOND,
        }
    } else {
        WidthVerdict::Enough { spare }
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ft(hundredths: i64) -> Length {
        Length::from_hundredths_of_a_foot(hundredths)
    }

    fn judge(strict: i64, free: i64) -> WidthVerdict {
        let rule = WidthRule {
            least: ft(400),
            strict: ft(200),
        };
        judge_width(ft(strict), ft(free), &rule).unwrap()
    }

    /// Derived from the rule: least 4 ft, the strict edge 2 ft out at most, the free one up to 3 ft.
    #[test]
    fn the_free_edge_makes_the_width() {
        assert_eq!(judge(200, 200), WidthVerdict::Enough { spare: ft(0) });
        assert_eq!(judge(190, 210), WidthVerdict::Enough { spare: ft(0) });
        assert_eq!(judge(190, 205), WidthVerdict::TooNarrow { by: ft(5) });
        assert_eq!(judge(201, 100), WidthVerdict::StrictEdgeOut { by: ft(1) });
        assert_eq!(judge(200, 300), WidthVerdict::Enough { spare: ft(100) });
        assert_eq!(judge(200, 301), WidthVerdict::TooWide { by: ft(1) });
        let none = WidthRule {
            least: ft(0),
            strict: ft(200),
        };
        let error = judge_width(ft(1), ft(1), &none).unwrap_err();
        assert!(error.to_string().contains("least width is 0 ft"), "{error}");
        assert!(error.text().spanish.contains("mínimo es 0 ft"), "{error:?}");
    }

    proptest! {
        /// Digging the free edge as told makes the width exactly enough.
        #[test]
        fn digging_as_told_is_enough(strict in 100_i64..=200, free in 0_i64..300) {
            if let WidthVerdict::TooNarrow { by } = judge(strict, free) {
                let rule = WidthRule { least: ft(400), strict: ft(200) };
                let after = judge_width(ft(strict), ft(free) + by, &rule).unwrap();
                prop_assert_eq!(after, WidthVerdict::Enough { spare: Length::ZERO });
            }
        }
    }
}

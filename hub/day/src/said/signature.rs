//! A drawn signature: a name and the strokes of a finger, small enough for the log.

use contract::ToSchema;
use serde::{Deserialize, Serialize};

use crate::refusal::Refusal;

/// A signature.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Signature {
    /// Who signs, in letters.
    pub name: String,
    /// The strokes as the path of an SVG of 300 × 100: `M10 20L11 22…`, at most 4000 characters.
    #[schema(max_length = 4000)]
    pub strokes: String,
}

/// The longest name.
const LONGEST_NAME: usize = 60;
/// The longest path: a quick signature has a few hundred points.
const LONGEST_PATH: usize = 4_000;

impl Signature {
    /// The signature without blanks around its name.
    ///
    /// # Errors
    /// When the name is missing or nothing was drawn, and when it is no path of straight strokes.
    pub(crate) fn checked(&self) -> Result<Self, Refusal> {
        let name = self.name.trim();
        let fits = name.chars().count() <= LONGEST_NAME && !name.chars().any(char::is_control);
        if name.is_empty() || !fits {
            return Err(Refusal::of_the_record(
                words::signature::type_name_whoever_signs_up(),
            ));
        }
        let path = self.strokes.trim();
        if path.len() > LONGEST_PATH {
            return Err(Refusal::of_the_record(
                words::signature::that_drawing_is_too_long(),
            ));
        }
        let plain = |c: char| c.is_ascii_digit() || matches!(c, 'M' | 'L' | ' ' | '.');
        if !path.starts_with('M') || !path.contains('L') || !path.chars().all(plain) {
            return Err(Refusal::of_the_record(words::signature::nothing_was_drawn()));
        }
        Ok(Self {
            name: name.to_owned(),
            strokes: path.to_owned(),
        })
    }
}

/// The end of the chain as it stood: what is signed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ChainHead {
    /// The last entry before the signature.
    pub seq: u64,
    /// Its hash, in hex.
    pub hash: String,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_signature_is_a_name_and_strokes_and_nothing_else() {
        let of = |name: &str, strokes: &str| Signature {
            name: name.into(),
            strokes: strokes.into(),
        };
        let fine = of(" P. N. ", "M10 20L11.5 22L30 8M5 5L6 6");
        assert_eq!(fine.checked().unwrap().name, "P. N.");
        let long = format!("M1 1{}", "L10 10".repeat(700));
        for bad in [
            of("", "M1 1L2 2"),
            of("PN", ""),
            of("PN", "M1 1"),
            of("PN", "L1 1"),
            of("PN", "M1 1L2 2\"/><script>"),
            of("PN", &long),
            of(&"x".repeat(61), "M1 1L2 2"),
        ] {
            assert!(bad.checked().is_err(), "{bad:?}");
        }
    }
}

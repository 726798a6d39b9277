//! Whole numbers, and whether a language says one or several of them.

use crate::{Language, Said};

/// A whole number that words may depend on.
pub trait Number: Said {
    /// How many.
    fn count(&self) -> i128;
}

macro_rules! whole {
    ($($of:ty),*) => {
        $(impl Number for $of {
            fn count(&self) -> i128 {
                i128::try_from(*self).unwrap_or(i128::MAX)
            }
        })*
    };
}

whole!(u8, u16, u32, u64, usize, i16, i32, i64);

/// The branch that holds for a number: the number itself where a language has a branch for it, else its plural.
pub(crate) fn branch(
    of: &dyn Number,
    language: Language,
    branches: &[&'static str],
) -> &'static str {
    let count = of.count();
    let own = branches.iter().find(|key| key.parse() == Ok(count));
    // Of the Unicode CLDR, for whole numbers; `build/source.rs` says which plurals a language has.
    let one = match language.code() {
        "en" | "es" => count == 1,
        // Portuguese counts none as one: 0 marca, 1 marca, 2 marcas.
        "pt" => count == 0 || count == 1,
        _ => false,
    };
    own.copied().unwrap_or(if one { "one" } else { "other" })
}

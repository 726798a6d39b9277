//! What a shape works out once from what was drawn, and keeps: it is never compared, written or sent.

use std::fmt;
use std::sync::{Arc, OnceLock};

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::TargetError;

/// What is drawn, and what is worked out from it.
pub trait Drawing {
    /// What places are asked of.
    type Made;

    /// Works it out, and says what is wrong with the drawing.
    ///
    /// # Errors
    /// When the drawing can't be worked to.
    fn make(&self) -> Result<Self::Made, TargetError>;
}

/// A drawing, worked out at the first question and kept from then on.
pub struct Kept<D: Drawing> {
    drawn: D,
    made: OnceLock<Result<Arc<D::Made>, TargetError>>,
}

impl<D: Drawing> Kept<D> {
    /// A drawing that nothing has been asked of yet.
    pub fn new(drawn: D) -> Kept<D> {
        Kept {
            drawn,
            made: OnceLock::new(),
        }
    }

    /// A drawing with what has been worked out from it before.
    pub fn made_already(drawn: D, made: D::Made) -> Kept<D> {
        Kept {
            drawn,
            made: OnceLock::from(Ok(Arc::new(made))),
        }
    }

    /// What was drawn.
    pub fn drawn(&self) -> &D {
        &self.drawn
    }

    /// What was worked out from it.
    ///
    /// # Errors
    /// When the drawing can't be worked to; the same each time.
    pub fn made(&self) -> Result<&D::Made, TargetError> {
        self.made
            .get_or_init(|| self.drawn.make().map(Arc::new))
            .as_deref()
            .map_err(Clone::clone)
    }
}

impl<D: Drawing> From<D> for Kept<D> {
    fn from(drawn: D) -> Self {
        Kept::new(drawn)
    }
}

impl<D: Drawing + Clone> Clone for Kept<D> {
    fn clone(&self) -> Self {
        Kept {
            drawn: self.drawn.clone(),
            made: self.made.clone(),
        }
    }
}

impl<D: Drawing + fmt::Debug> fmt::Debug for Kept<D> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.drawn.fmt(f)
    }
}

impl<D: Drawing + PartialEq> PartialEq for Kept<D> {
    fn eq(&self, other: &Self) -> bool {
        self.drawn == other.drawn
    }
}

impl<D: Drawing + Serialize> Serialize for Kept<D> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.drawn.serialize(serializer)
    }
}

impl<'de, D: Drawing + Deserialize<'de>> Deserialize<'de> for Kept<D> {
    fn deserialize<R: Deserializer<'de>>(deserializer: R) -> Result<Self, R::Error> {
        D::deserialize(deserializer).map(Kept::new)
    }
}

/// In the contract it is what was drawn.
#[cfg(feature = "contract")]
mod described {
    use std::borrow::Cow;

    use utoipa::openapi::{RefOr, Schema};
    use utoipa::{PartialSchema, ToSchema};

    use super::{Drawing, Kept};

    impl<D: Drawing + PartialSchema> PartialSchema for Kept<D> {
        fn schema() -> RefOr<Schema> {
            D::schema()
        }
    }

    impl<D: Drawing + ToSchema> ToSchema for Kept<D> {
        fn name() -> Cow<'static, str> {
            D::name()
        }

        fn schemas(schemas: &mut Vec<(String, RefOr<Schema>)>) {
            D::schemas(schemas);
        }
    }
}

//! How a type and a handler are described in the `OpenAPI` document, `hub/server/openapi.json`.
//!
//! With the feature `described` these are `utoipa`'s own, and the document is made from them; without it they say nothing, and
//! the hub serves the committed document. A test that is built with it holds the two together.

#[cfg(not(feature = "described"))]
pub use nothing::{IntoParams, ToSchema, path};
#[cfg(feature = "described")]
pub use utoipa::{IntoParams, ToSchema, path};

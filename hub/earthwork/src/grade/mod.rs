//! What should a profile, a trench, a cut face or a fold of planes be here: pure shapes, each by its own measure.
//!
//! Grades are in feet per foot, positive rising up-station. Nothing is extended past its ends.

mod daylight;
mod error;
mod fold;
mod layback;
mod profile;
mod trench;

pub use daylight::{Daylight, daylight};
pub use error::GradeError;
pub use fold::{Fold, Plane, folded};
pub use layback::{Face, Layback};
pub use profile::{Corner, Extreme, Profile, Rise, Turning};
pub use trench::{Flat, Flow, Invert, Trench, TrenchSizes};

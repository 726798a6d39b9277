//! How steep may a cut stand, what is owed at its depth, where does it come to daylight, and what hangs over.
//!
//! | the question | the file |
//! |---|---|
//! | Which class of soil, and what lowers it? | `soil` |
//! | Which rules, from where? | `rules`, as data in `us_federal.toml` |
//! | How steep is it, how steep may it be? | `slope` |
//! | Benches, verticals at the bottom, ladders | `shape` |
//! | Where does the face come out? | `outcrop` |
//! | What hangs over, what came down, what stands behind? | `behind` |
//! | Does a crack open faster? | `pins` |
//!
//! It is arithmetic on what people measured and picked. Nothing here says that a face stands: it says which rule is not met.

mod behind;
mod error;
mod outcrop;
mod pins;
mod rules;
mod shape;
mod slope;
mod soil;

pub use behind::{
    CriticalHeight, critical_height, hanging_volume, slough_volume, under_influence, wedge_area,
};
pub use error::FaceError;
pub use outcrop::{Outcrop, Piece, Toe, Way, daylight_line, outcrop, ways};
pub use pins::{PinState, Pins, TAPE_DOUBT_FT, Taped, forecast, judge_pins};
pub use rules::{
    Asks, BenchRule, Benches, Binds, Distress, Egress, ExcavationRules, Limit, LowerPart,
    RuleReminder, Section, SetBack, Shield, ShortTerm, Slopes, StrengthLimits,
};
pub use shape::{Bench, benches, check_benches, ladders, lower_part, shield_top};
pub use slope::{PresentSlope, crest_back, degrees, layered, owed_slope, present_slope};
pub use soil::{Bounds, Counted, Evidence, Lowered, Material, SoilClass, Strength, Thumb};

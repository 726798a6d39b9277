//! Does the soil carry: compaction by density, bearing as the tester states it.

pub mod bearing;
pub mod density;

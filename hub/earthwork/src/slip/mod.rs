//! Which slip would explain it: questions to ask about a misclosure or a reading that does not fit.
//!
//! Everything here is asked, never applied: a wrong guess that is applied silently is worse than the slip.

mod candidate;
mod learned;
mod misclosure;
mod perhaps;
mod reading;
mod typed;

pub use candidate::{Candidate, Earlier, Mode, Neighbour};
pub use learned::{HALVES_AFTER, Hypothesis, Learned};
pub use misclosure::{Misclosure, Slip, explain_misclosure};
pub use perhaps::Perhaps;
pub use reading::{Doubt, doubt};

/// No more are asked about at once: a third suggestion is a guess, and takes longer to read than to shoot again.
const ASKED: usize = 2;

/// The likeliest few of weighed suggestions, likeliest first; equals keep the order they were thought of in.
fn likeliest<T>(mut weighed: Vec<(f64, T)>) -> Vec<T> {
    weighed.sort_by(|(a, _), (b, _)| b.total_cmp(a));
    weighed
        .into_iter()
        .take(ASKED)
        .map(|(_, what)| what)
        .collect()
}

/// How well a miss fits one standard deviation: 1 at none, falling as the bell curve does.
fn fit(miss: f64, deviation: f64) -> f64 {
    (-0.5 * (miss / deviation).powi(2)).exp()
}

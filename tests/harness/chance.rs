//! Numbers by chance, the same for the same seed; the seed is printed and can be given again.

use super::phone::now_ms;

/// The environment variable that gives a seed.
const SEED: &str = "RODCALL_SEED";

/// A source of chance (the splitmix64 generator).
pub(crate) struct Chance(u64);

impl Chance {
    /// A seed from the environment, or from the clock; printed, so that a failure can be tried again.
    pub(crate) fn new() -> Self {
        let seed = match std::env::var(SEED) {
            Ok(text) => text.parse().expect("a whole number as seed"),
            Err(_) => now_ms().unsigned_abs(),
        };
        println!("{SEED}={seed} tries the same again");
        Self(seed)
    }

    /// A whole number below `end`.
    pub(crate) fn below(&mut self, end: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        (z ^ (z >> 31)) % end
    }
}

//! Chance for simulations, from a seed.

use crate::numeric::normal;
use clinic::case::Seed;

/// Draws from a seed.
#[derive(Clone, Debug)]
pub struct Chance(Seed);

impl Chance {
    /// Draws that start from `seed`.
    pub fn new(seed: u64) -> Self {
        Self(Seed::new(seed))
    }

    /// Evenly between 0 and 1, neither reached.
    pub fn part(&mut self) -> f64 {
        let high = u32::try_from(self.0.bits() >> 32).unwrap_or(0);
        (f64::from(high) + 0.5) / 4_294_967_296.0
    }

    /// Whether something of this chance happens.
    pub fn happens(&mut self, chance: f64) -> bool {
        self.part() < chance
    }

    /// From a normal distribution.
    pub fn normal(&mut self, mean: f64, sd: f64) -> f64 {
        mean + sd * normal::quantile(self.part())
    }

    /// A whole number below `count`; 0 where there is none.
    pub fn below(&mut self, count: usize) -> usize {
        self.0.below(count)
    }
}

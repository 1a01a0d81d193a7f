//! The scores of a class: how many of the common items each seat had right.

use super::told::{Missing, Told};

/// Scores and their moments.
#[derive(Clone, Debug, PartialEq)]
pub struct Scores {
    /// How many items there are.
    pub items: usize,
    /// How many each seat had right.
    pub totals: Vec<u32>,
    /// Their mean.
    pub mean: f64,
    /// Their variance with the divisor n.
    pub population: f64,
    /// Their variance with the divisor n - 1; 0 for fewer than two seats.
    pub variance: f64,
}

impl Scores {
    /// The scores of totals.
    pub fn of(items: usize, totals: Vec<u32>) -> Self {
        let n = real(totals.len());
        let sum: u64 = totals.iter().map(|&t| u64::from(t)).sum();
        let mean = if totals.is_empty() {
            0.0
        } else {
            real(sum) / n
        };
        let squares: f64 = totals.iter().map(|&t| (f64::from(t) - mean).powi(2)).sum();
        Self {
            items,
            population: if totals.is_empty() { 0.0 } else { squares / n },
            variance: if totals.len() < 2 {
                0.0
            } else {
                squares / (n - 1.0)
            },
            totals,
            mean,
        }
    }

    /// The standard deviation with the divisor n - 1.
    pub fn sd(&self) -> f64 {
        self.variance.sqrt()
    }

    /// Says whether anything can be estimated from them.
    ///
    /// # Errors
    /// Why not.
    pub fn enough(&self) -> Told<()> {
        let items = u32::try_from(self.items).unwrap_or(u32::MAX);
        match self.totals.len() {
            0 => Err(Missing::NoSeats),
            few @ (1 | 2) => Err(Missing::TooFewSeats(few)),
            _ if self.items < 2 => Err(Missing::TooFewItems),
            _ if self.totals.iter().all(|&t| t == items) => Err(Missing::AllRight),
            _ if self.totals.iter().all(|&t| t == 0) => Err(Missing::AllWrong),
            _ if self.totals.iter().all(|t| *t == self.totals[0]) => Err(Missing::NoSpread),
            _ => Ok(()),
        }
    }
}

/// A count as a number with a fraction.
pub(crate) fn real<T: TryInto<u32>>(count: T) -> f64 {
    // Counts of seats, items and marks stay far below four thousand million.
    count.try_into().map_or(f64::from(u32::MAX), f64::from)
}

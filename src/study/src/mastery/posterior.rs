//! A share that is itself uncertain: the beta posterior, and what it forecasts.

use super::interval::Interval;
use crate::numeric::{beta, real};

/// What is known of a share: Beta(a, b).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BetaPosterior {
    /// Prior successes and those seen; positive.
    pub a: f64,
    /// Prior failures and those seen; positive.
    pub b: f64,
}

impl BetaPosterior {
    /// The prior that leans towards being right twice as much as wrong: Beta(2, 1).
    pub const LEANING: Self = Self { a: 2.0, b: 1.0 };
    /// Jeffreys's prior: Beta(1/2, 1/2).
    pub const JEFFREYS: Self = Self { a: 0.5, b: 0.5 };

    /// What is known after `right` of `of` more.
    #[must_use]
    pub fn after(self, right: usize, of: usize) -> Self {
        Self {
            a: self.a + real(right),
            b: self.b + real(of.saturating_sub(right)),
        }
    }

    /// The mean.
    pub fn mean(self) -> f64 {
        self.a / (self.a + self.b)
    }

    /// The standard deviation.
    pub fn sd(self) -> f64 {
        let n = self.a + self.b;
        (self.a * self.b / (n * n * (n + 1.0))).sqrt()
    }

    /// The probability that the share is above `cut`.
    pub fn above(self, cut: f64) -> f64 {
        beta::above(self.a, self.b, cut)
    }

    /// The interval that leaves equal tails outside.
    pub fn equal_tails(self, level: f64) -> Interval {
        let tail = (1.0 - level) / 2.0;
        Interval {
            low: beta::quantile(self.a, self.b, tail),
            high: beta::quantile(self.a, self.b, 1.0 - tail),
        }
    }

    /// The shortest interval with this probability; nothing where the density has
    /// no peak inside (a or b at most 1).
    pub fn shortest(self, level: f64) -> Option<Interval> {
        if self.a <= 1.0 || self.b <= 1.0 {
            return None;
        }
        // The density is equal at both ends of the shortest interval, and the
        // difference between the ends rises with the lower tail.
        let ends = |tail: f64| Interval {
            low: beta::quantile(self.a, self.b, tail),
            high: beta::quantile(self.a, self.b, tail + level),
        };
        let (mut low, mut high) = (0.0, 1.0 - level);
        for _ in 0..60 {
            let tail = f64::midpoint(low, high);
            let Interval { low: l, high: h } = ends(tail);
            if beta::density(self.a, self.b, l) < beta::density(self.a, self.b, h) {
                low = tail;
            } else {
                high = tail;
            }
        }
        Some(ends(f64::midpoint(low, high)))
    }

    /// What scores this share forecasts on a form of `items` questions.
    pub fn forecast(self, items: u32) -> Forecast {
        let n = f64::from(items);
        let whole = beta::ln_beta(self.a, self.b);
        let chance = |x: u32| {
            let x = f64::from(x);
            let ways = -(n + 1.0).ln() - beta::ln_beta(x + 1.0, n - x + 1.0);
            (ways + beta::ln_beta(x + self.a, n - x + self.b) - whole).exp()
        };
        Forecast {
            chances: (0..=items).map(chance).collect(),
        }
    }
}

/// The probability of each score from 0 to all.
#[derive(Clone, Debug, PartialEq)]
pub struct Forecast {
    /// By score.
    pub chances: Vec<f64>,
}

impl Forecast {
    /// The probability of at least `need` right.
    pub fn pass(&self, need: usize) -> f64 {
        self.chances.iter().skip(need).sum()
    }

    /// The mean score.
    pub fn mean(&self) -> f64 {
        let score = |(x, p): (usize, &f64)| real(x) * p;
        self.chances.iter().enumerate().map(score).sum()
    }

    /// The standard deviation of the score.
    pub fn sd(&self) -> f64 {
        let mean = self.mean();
        let square = |(x, p): (usize, &f64)| (real(x) - mean).powi(2) * p;
        self.chances
            .iter()
            .enumerate()
            .map(square)
            .sum::<f64>()
            .sqrt()
    }

    /// The scores that leave at most equal tails outside.
    pub fn interval(&self, level: f64) -> (usize, usize) {
        let tail = (1.0 - level) / 2.0;
        (self.quantile(tail), self.quantile(1.0 - tail))
    }

    /// The least score that is not passed with probability `p`.
    fn quantile(&self, p: f64) -> usize {
        let mut sum = 0.0;
        for (score, chance) in self.chances.iter().enumerate() {
            sum += chance;
            // Sums of many chances carry rounding in the last places.
            if sum >= p - 1e-12 {
                return score;
            }
        }
        self.chances.len().saturating_sub(1)
    }
}

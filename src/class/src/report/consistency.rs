//! Whether the same seats would pass again: decision consistency and accuracy
//! from one administration, after Hanson and Brennan (1990) with a
//! two-parameter beta for true scores and Lord's two-term compound binomial.

use super::measure::{beta, gauss};
use super::scores::{Scores, real};
use super::told::{Missing, Told};
use study::numeric::beta::ln_beta;

/// How many standard deviations of the true scores are integrated over on
/// either side of their mean: beyond it lies less than a float shows.
const WIDE: f64 = 14.0;

/// Consistency of passing and failing at a cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Consistency {
    /// The items that have to be right to pass.
    pub cut: usize,
    /// The share of seats that would be judged alike twice.
    pub agreement: f64,
    /// The share that would be judged alike by chance.
    pub chance: f64,
    /// Agreement beyond chance.
    pub kappa: f64,
    /// The share of seats that are judged as their true score deserves.
    pub accuracy: f64,
    /// The share of seats that the model expects to pass.
    pub passing: f64,
    /// Lord's K.
    pub lords_k: f64,
    /// The parameters of the beta distribution of true scores.
    pub beta: (f64, f64),
}

impl Consistency {
    /// At a cut, with a reliability above 0.
    ///
    /// # Errors
    /// Why it cannot be estimated.
    pub fn of(scores: &Scores, alpha: f64, cut: usize) -> Told<Self> {
        scores.enough()?;
        let (k, m, v) = (real(scores.items), scores.mean, scores.variance);
        let true_variance = alpha.clamp(0.0, 1.0) * v;
        if true_variance <= 0.0 {
            return Err(Missing::NotTogether);
        }
        let lords_k = k * ((k - 1.0) * true_variance - k * v + m * (k - m))
            / (2.0 * (m * (k - m) - true_variance));
        let mu = m / k;
        let spread = mu * (1.0 - mu) / (true_variance / (k * k)) - 1.0;
        if spread <= 0.0 || !lords_k.is_finite() {
            return Err(Missing::NoFit);
        }
        let truth = Beta {
            a: mu * spread,
            b: (1.0 - mu) * spread,
        };
        let pass = |t: f64| passing(t, scores.items, cut, lords_k);
        let at = real(cut) / k;
        let over = |f: &dyn Fn(f64) -> f64| truth.mean(f, 0.0, at) + truth.mean(f, at, 1.0);
        let once = over(&pass);
        let twice = over(&|t| pass(t).powi(2));
        let agreement = 1.0 - 2.0 * (once - twice);
        let chance = once * once + (1.0 - once).powi(2);
        Ok(Self {
            cut,
            agreement,
            chance,
            kappa: kappa(agreement, chance),
            accuracy: truth.mean(&pass, at, 1.0) + truth.mean(&|t| 1.0 - pass(t), 0.0, at),
            passing: once,
            lords_k,
            beta: (truth.a, truth.b),
        })
    }
}

/// Agreement beyond chance; 0 where chance alone agrees always, as when all are
/// far above the cut.
pub(super) fn kappa(agreement: f64, chance: f64) -> f64 {
    if 1.0 - chance < 1e-12 {
        0.0
    } else {
        (agreement - chance) / (1.0 - chance)
    }
}

/// The chance that somebody with the true share `t` has `cut` items right.
fn passing(t: f64, items: usize, cut: usize, lords_k: f64) -> f64 {
    let whole = |count: usize| i64::try_from(count).unwrap_or(i64::MAX / 4);
    let (k, c) = (whole(items), whole(cut));
    let fewer = |least| beta::at_least(least, k - 2, t);
    let second = fewer(c) - 2.0 * fewer(c - 1) + fewer(c - 2);
    beta::at_least(c, k, t) - lords_k * t * (1.0 - t) * second
}

/// A beta distribution.
#[derive(Clone, Copy, Debug)]
pub(super) struct Beta {
    pub a: f64,
    pub b: f64,
}

impl Beta {
    /// The integral of a function times the density from `low` to `high`.
    pub fn mean(self, f: &dyn Fn(f64) -> f64, low: f64, high: f64) -> f64 {
        let mu = self.a / (self.a + self.b);
        let sd = (mu * (1.0 - mu) / (self.a + self.b + 1.0)).sqrt();
        let low = low.max(mu - WIDE * sd);
        let high = high.min(mu + WIDE * sd);
        if low >= high {
            return 0.0;
        }
        let middle = f64::midpoint(low, high);
        self.lower(f, low, middle) + self.upper(f, middle, high)
    }

    /// With a = A below 1 the density has no bound at 0; in u = t^A it has.
    fn lower(self, f: &dyn Fn(f64) -> f64, low: f64, high: f64) -> f64 {
        let power = self.a.min(1.0);
        let norm = -ln_beta(self.a, self.b);
        let inside = |u: f64| {
            let t = u.powf(1.0 / power);
            let density = norm + (self.a - power) * t.ln() + (self.b - 1.0) * (-t).ln_1p();
            f(t) * density.exp() / power
        };
        gauss::integral(inside, low.max(0.0).powf(power), high.powf(power))
    }

    /// The same at 1, seen from there.
    fn upper(self, f: &dyn Fn(f64) -> f64, low: f64, high: f64) -> f64 {
        let mirrored = Self {
            a: self.b,
            b: self.a,
        };
        mirrored.lower(&|t| f(1.0 - t), 1.0 - high, 1.0 - low)
    }
}

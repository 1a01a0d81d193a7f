//! How far the scores of a class would come out again: alpha with its
//! interval, the error of measurement, KR-21.

use super::measure::beta::f_quantile;
use super::scores::{Scores, real};
use super::told::{Missing, Told};

/// Reliability of the scores.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reliability {
    /// Cronbach's alpha, which is KR-20 here as items are right or not. Above 0.
    pub alpha: f64,
    /// Its interval at 95 per cent (Feldt 1965).
    pub interval: (f64, f64),
    /// The standard error of measurement, in items.
    pub error: f64,
    /// KR-21, which takes all items for equally hard; can be negative.
    pub kr21: f64,
}

impl Reliability {
    /// From the scores and the variance of each item (divisor n - 1). Items
    /// that all seats had right or wrong count too.
    ///
    /// # Errors
    /// Why it cannot be estimated.
    pub fn of(scores: &Scores, variances: &[f64]) -> Told<Self> {
        scores.enough()?;
        let k = real(scores.items);
        let alpha = k / (k - 1.0) * (1.0 - variances.iter().sum::<f64>() / scores.variance);
        if alpha <= 0.0 {
            return Err(Missing::NotTogether);
        }
        let n = real(scores.totals.len());
        let (d1, d2) = (n - 1.0, (n - 1.0) * (k - 1.0));
        let bound = |p| 1.0 - (1.0 - alpha) * f_quantile(p, d1, d2);
        Ok(Self {
            alpha,
            interval: (bound(0.975), bound(0.025)),
            error: scores.sd() * (1.0 - alpha).max(0.0).sqrt(),
            kr21: kr21(scores),
        })
    }
}

fn kr21(scores: &Scores) -> f64 {
    let (k, m) = (real(scores.items), scores.mean);
    k / (k - 1.0) * (1.0 - m * (k - m) / (k * scores.population))
}

/// The error of measurement at a score (Lord 1955, value from memory), in items:
/// nearer to the truth close to the cut than one error for all. None for fewer
/// than two items or a score beyond them.
pub fn conditional_error(score: u32, items: usize) -> Option<f64> {
    let (x, k) = (f64::from(score), real(items));
    (items > 1 && x <= k).then(|| (x * (k - x) / (k - 1.0)).sqrt())
}

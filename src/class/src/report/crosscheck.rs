//! Other ways to the same question, for whoever wants to compare: they use
//! KR-21 or shrink hard, and come out lower as a rule.

use super::consistency::{Beta, kappa};
use super::measure::beta;
use super::scores::{Scores, real};

/// Agreement and kappa by other methods.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossChecks {
    /// Subkoviak (1976): agreement and kappa.
    pub subkoviak: (f64, f64),
    /// Huynh (1976): agreement and kappa; none where KR-21 is not above 0.
    pub huynh: Option<(f64, f64)>,
}

impl CrossChecks {
    /// At a cut, with alpha and KR-21.
    pub fn of(scores: &Scores, alpha: f64, kr21: f64, cut: usize) -> Self {
        Self {
            subkoviak: subkoviak(scores, alpha, cut),
            huynh: (kr21 > 0.0).then(|| huynh(scores, kr21, cut)),
        }
    }
}

fn with_kappa(agreement: f64, pass: f64) -> (f64, f64) {
    let chance = pass * pass + (1.0 - pass).powi(2);
    (agreement, kappa(agreement, chance))
}

/// Each seat passes a parallel form by a binomial with its share drawn
/// towards the mean. Seats with the same score are worked out once.
fn subkoviak(scores: &Scores, alpha: f64, cut: usize) -> (f64, f64) {
    let (k, n) = (real(scores.items), real(scores.totals.len()));
    let reliability = alpha.clamp(0.0, 1.0);
    let mut seats = vec![0_u32; scores.items + 1];
    for &total in &scores.totals {
        if let Some(count) = usize::try_from(total).ok().and_then(|t| seats.get_mut(t)) {
            *count += 1;
        }
    }
    let (mut agreement, mut pass) = (0.0, 0.0);
    for (total, &count) in seats.iter().enumerate().filter(|(_, count)| **count > 0) {
        let share = reliability * real(total) / k + (1.0 - reliability) * scores.mean / k;
        let p = at_least(cut, scores.items, share);
        agreement += f64::from(count) * (p * p + (1.0 - p).powi(2));
        pass += f64::from(count) * p;
    }
    with_kappa(agreement / n, pass / n)
}

/// True scores follow a beta from the mean and KR-21, both forms a binomial.
fn huynh(scores: &Scores, kr21: f64, cut: usize) -> (f64, f64) {
    let k = real(scores.items);
    let a = (1.0 / kr21 - 1.0) * scores.mean;
    let truth = Beta {
        a,
        b: k / kr21 - k - a,
    };
    let pass = |t: f64| at_least(cut, scores.items, t);
    let at = real(cut) / k;
    let over = |f: &dyn Fn(f64) -> f64| truth.mean(f, 0.0, at) + truth.mean(f, at, 1.0);
    let once = over(&pass);
    let twice = over(&|t| pass(t).powi(2));
    with_kappa(1.0 - 2.0 * (once - twice), once)
}

fn at_least(cut: usize, items: usize, share: f64) -> f64 {
    let whole = |count: usize| i64::try_from(count).unwrap_or(i64::MAX / 4);
    beta::at_least(whole(cut), whole(items), share)
}

/// How dependably seats stand above or below a share `lambda` of right answers,
/// whatever the others do: Phi(lambda) (Brennan and Kane 1977). None where
/// there is no spread about it, or fewer than two items.
pub fn dependability(scores: &Scores, lambda: f64) -> Option<f64> {
    let k = real(scores.items);
    let mean = scores.mean / k;
    let variance = scores.population / (k * k);
    let about = (mean - lambda).powi(2) + variance;
    (scores.items > 1 && about > 0.0)
        .then(|| 1.0 - (mean * (1.0 - mean) - variance) / about / (k - 1.0))
}

//! Personal fit: one multiplier on all intervals, not 21 parameters, because one
//! student gives too little data for more.

use super::{calibration::Prediction, model::Model};

/// How many reviews a day or more after the last are needed before the
/// multiplier is applied.
pub const REVIEWS_NEEDED: usize = 200;

/// How far students are thought to differ: the standard deviation of the
/// logarithm of the multiplier.
const SD: f64 = 0.3;

/// This student's multiplier, from one Newton step on the log-likelihood of what
/// was recalled and what was not, starting at 1; 0.6 to 1.6. It is 1 until
/// [`REVIEWS_NEEDED`] reviews are there.
pub fn multiplier(model: &Model, reviews: &[Prediction]) -> f64 {
    if reviews.len() < REVIEWS_NEEDED {
        return 1.0;
    }
    let (mut slope, mut bend, mut least_bend) = (0.0, -1.0 / (SD * SD), -1.0 / (SD * SD));
    for review in reviews {
        let (first, second, information) = terms(model, review);
        slope += first;
        bend += second;
        least_bend -= information;
    }
    // Where the likelihood is not bent downwards at the start, its expected bend is.
    let bend = if bend < 0.0 { bend } else { least_bend };
    (-slope / bend).exp().clamp(0.6, 1.6)
}

/// First and second derivative of one review's log-likelihood with respect to
/// the logarithm of the multiplier, and its expected information.
fn terms(model: &Model, review: &Prediction) -> (f64, f64, f64) {
    let (factor, power) = model.curve();
    let u = factor * f64::from(review.days) / review.stability;
    let q = u / (1.0 + u);
    let recall = review.recall;
    let chance = review.chance().clamp(1e-9, 1.0 - 1e-9);
    let first = (1.0 - review.guess) * power * recall * q;
    let second = first * (power * q + q - 1.0);
    let spread = chance * (1.0 - chance);
    let miss = if review.right { 1.0 - chance } else { -chance };
    let pull = miss / spread;
    (
        pull * first,
        pull * second - (pull * first).powi(2),
        first * first / spread,
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use clinic::case::Seed;

    /// Reviews of a student whose memory lasts `true_multiplier` times as long as the model says.
    fn reviews(count: usize, true_multiplier: f64, guess: f64) -> Vec<Prediction> {
        let model = Model::default();
        let mut seed = Seed::new(7);
        let mut coin = |chance: f64| {
            f64::from(u32::try_from(seed.bits() >> 32).unwrap()) / 4_294_967_296.0 < chance
        };
        (0..count)
            .map(|n| {
                let stability = 2.0 + f64::from(u32::try_from(n % 30).unwrap());
                let days = u32::try_from(1 + n % 45).unwrap();
                let truth = model.recall(stability * true_multiplier, f64::from(days));
                Prediction {
                    recall: model.recall(stability, f64::from(days)),
                    guess,
                    right: coin(guess + (1.0 - guess) * truth),
                    days,
                    stability,
                }
            })
            .collect()
    }

    #[test]
    fn nothing_is_fitted_before_200_reviews() {
        let model = Model::default();
        let exactly = |m: f64, wanted: f64| assert!((m - wanted).abs() < 1e-12, "{m}");
        exactly(multiplier(&model, &[]), 1.0);
        exactly(multiplier(&model, &reviews(199, 0.5, 0.25)), 1.0);
        assert!(multiplier(&model, &reviews(200, 0.5, 0.25)) < 1.0);
    }

    #[test]
    fn the_multiplier_is_found_from_many_reviews() {
        let model = Model::default();
        for (truth, guess) in [(0.7, 0.0), (1.0, 0.25), (1.4, 0.25), (1.4, 0.0)] {
            let found = multiplier(&model, &reviews(8000, truth, guess));
            assert!((found - truth).abs() < 0.15, "{truth} {guess}: {found}");
        }
        let far = multiplier(&model, &reviews(8000, 20.0, 0.0));
        assert!((far - 1.6).abs() < 1e-12 || far > 1.3, "{far}");
    }

    #[test]
    fn the_derivatives_are_those_of_the_likelihood() {
        let model = Model::default();
        for review in reviews(40, 0.8, 0.2) {
            let at = |x: f64| {
                let recall = model.recall(review.stability * x.exp(), f64::from(review.days));
                let chance = review.guess + (1.0 - review.guess) * recall;
                if review.right {
                    chance.ln()
                } else {
                    (1.0 - chance).ln()
                }
            };
            let h = 1e-4;
            let (first, second, _) = terms(&model, &review);
            assert!(((at(h) - at(-h)) / (2.0 * h) - first).abs() < 1e-6);
            assert!(((at(h) - 2.0 * at(0.0) + at(-h)) / (h * h) - second).abs() < 1e-5);
        }
    }
}

//! Logistic recalibration: how the forecasts of memory would have to be bent to
//! fit what happened. It is reported, and no date is reckoned by it: of one
//! student's record only the multiplier of [`super::personal`] is applied.
//!
//! The model: log-odds of right = a + b × log-odds of the forecast (Cox 1958,
//! value from memory), fitted by maximum likelihood. With a = 0 and b = 1 the
//! forecasts stand as they are.

use super::calibration::Prediction;
use crate::numeric::real;

/// How many reviews are needed before anything is fitted.
pub const REVIEWS_NEEDED: usize = 100;

/// How many of them have to have been right, and how many missed: ten for each
/// of the two numbers that are fitted would be better, five are the least.
pub const OF_EACH_NEEDED: usize = 5;

/// A 95 % interval reaches so many standard errors to either side.
const REACH: f64 = 1.959_963_984_540_054;

/// Newton steps; a fit that has not come to rest by then is none.
const STEPS: usize = 50;

/// Forecasts bent to what happened.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// The shift in log-odds: above 0 where more was remembered than forecast.
    pub shift: f64,
    /// The slope: below 1 where forecasts were too sure both ways.
    pub slope: f64,
    /// The standard error of the shift.
    pub shift_error: f64,
    /// The standard error of the slope.
    pub slope_error: f64,
    /// The Brier score of the forecasts as they stood; less is better.
    pub before: f64,
    /// The same once they are bent, on the same reviews and so somewhat flattering.
    pub after: f64,
}

/// The recalibration of some reviews, or why there is none.
#[derive(Clone, Debug, PartialEq)]
pub struct Recalibration {
    /// The fit; nothing behind a gate that is not passed.
    pub fit: Option<Fit>,
    /// What it says, in sentences.
    pub words: String,
}

impl Recalibration {
    /// The recalibration of these reviews.
    pub fn of(reviews: &[Prediction]) -> Self {
        let right = reviews.iter().filter(|review| review.right).count();
        let missed = reviews.len() - right;
        let refused = |words: String| Self { fit: None, words };
        if reviews.len() < REVIEWS_NEEDED {
            return refused(format!(
                "Whether forecasts run too high or too low is worked out from {REVIEWS_NEEDED} reviews on; there are {} so far.",
                reviews.len()
            ));
        }
        if right.min(missed) < OF_EACH_NEEDED {
            let (few, what) = if missed < right {
                (missed, "missed")
            } else {
                (right, "right")
            };
            return refused(format!(
                "Only {few} of {} reviews were {what}: too few to tell whether forecasts run too high or too low.",
                reviews.len()
            ));
        }
        let Some(fit) = fit(reviews) else {
            return refused(
                "The forecasts lie too close together to tell whether they run too high or too low."
                    .into(),
            );
        };
        Self {
            words: fit.words(reviews.len()),
            fit: Some(fit),
        }
    }
}

impl Fit {
    /// The chance that the fit makes of a forecast.
    pub fn bent(&self, chance: f64) -> f64 {
        logistic(self.shift + self.slope * odds(chance))
    }

    fn words(&self, reviews: usize) -> String {
        let off = |value: f64, usual: f64, error: f64| (value - usual).abs() > REACH * error;
        let bent = (self.bent(0.9) * 100.0).round();
        let differs =
            off(self.shift, 0.0, self.shift_error) || off(self.slope, 1.0, self.slope_error);
        if !differs {
            return format!(
                "Over {reviews} reviews a forecast of 90 % meant about {bent:.0} %: no further off than chance explains."
            );
        }
        let how = if bent < 90.0 {
            "less was remembered than forecast"
        } else if bent > 90.0 {
            "more was remembered than forecast"
        } else {
            "the forecasts were too sure, or not sure enough, away from 90 %"
        };
        format!("Over {reviews} reviews a forecast of 90 % meant about {bent:.0} %: {how}.")
    }
}

fn logistic(x: f64) -> f64 {
    1.0 / (1.0 + (-x).exp())
}

/// No forecast counts as certain.
fn odds(chance: f64) -> f64 {
    let chance = chance.clamp(1e-6, 1.0 - 1e-6);
    (chance / (1.0 - chance)).ln()
}

/// The fit by Newton's method, from the forecasts as they stand; nothing where
/// the forecasts do not differ or it does not come to rest.
fn fit(reviews: &[Prediction]) -> Option<Fit> {
    let (mut shift, mut slope) = (0.0, 1.0);
    for _ in 0..STEPS {
        let sums = Sums::of(reviews, shift, slope);
        let determinant = sums.all * sums.squares - sums.odds * sums.odds;
        if determinant <= 1e-9 * sums.all * sums.squares {
            return None;
        }
        let by_shift = (sums.squares * sums.pull - sums.odds * sums.pull_odds) / determinant;
        let by_slope = (sums.all * sums.pull_odds - sums.odds * sums.pull) / determinant;
        shift += by_shift;
        slope += by_slope;
        if by_shift.abs().max(by_slope.abs()) < 1e-10 {
            return finished(reviews, shift, slope, &sums, determinant);
        }
    }
    None
}

fn finished(
    reviews: &[Prediction],
    shift: f64,
    slope: f64,
    sums: &Sums,
    determinant: f64,
) -> Option<Fit> {
    let brier = |chance: &dyn Fn(&Prediction) -> f64| {
        let error =
            |review: &Prediction| (chance(review) - real(usize::from(review.right))).powi(2);
        reviews.iter().map(error).sum::<f64>() / real(reviews.len())
    };
    let fit = Fit {
        shift,
        slope,
        shift_error: (sums.squares / determinant).sqrt(),
        slope_error: (sums.all / determinant).sqrt(),
        before: brier(&Prediction::chance),
        after: brier(&|review| logistic(shift + slope * odds(review.chance()))),
    };
    (shift.is_finite() && slope.is_finite()).then_some(fit)
}

/// What a Newton step is made of: the information and the pull.
#[derive(Default)]
struct Sums {
    all: f64,
    odds: f64,
    squares: f64,
    pull: f64,
    pull_odds: f64,
}

impl Sums {
    fn of(reviews: &[Prediction], shift: f64, slope: f64) -> Self {
        let mut sums = Self::default();
        for review in reviews {
            let x = odds(review.chance());
            let p = logistic(shift + slope * x);
            let weight = p * (1.0 - p);
            let pull = real(usize::from(review.right)) - p;
            sums.all += weight;
            sums.odds += weight * x;
            sums.squares += weight * x * x;
            sums.pull += pull;
            sums.pull_odds += pull * x;
        }
        sums
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use clinic::case::Seed;

    /// Reviews whose truth is the forecast bent by this shift and slope.
    fn reviews(count: usize, shift: f64, slope: f64) -> Vec<Prediction> {
        let mut seed = Seed::new(11);
        let mut even = || f64::from(u32::try_from(seed.bits() >> 32).unwrap()) / 4_294_967_296.0;
        (0..count)
            .map(|_| {
                let recall = 0.55 + 0.44 * even();
                let truth = logistic(shift + slope * odds(recall));
                Prediction {
                    recall,
                    guess: 0.0,
                    right: even() < truth,
                    days: 3,
                    stability: 5.0,
                }
            })
            .collect()
    }

    #[test]
    fn nothing_is_fitted_behind_a_gate() {
        for count in [0, 1, REVIEWS_NEEDED - 1] {
            let found = Recalibration::of(&reviews(count, 0.0, 1.0));
            assert!(found.fit.is_none() && found.words.contains("100 reviews"));
        }
        let mut all_right = reviews(300, 0.0, 1.0);
        for review in &mut all_right {
            review.right = true;
        }
        let found = Recalibration::of(&all_right);
        assert!(found.fit.is_none() && found.words.contains("Only 0 of 300"));
        let mut alike = reviews(300, 0.0, 1.0);
        for review in &mut alike {
            review.recall = 0.9;
        }
        let found = Recalibration::of(&alike);
        assert!(found.fit.is_none() && found.words.contains("close together"));
    }

    #[test]
    fn a_known_bend_is_found_within_its_error() {
        for (shift, slope) in [(0.0, 1.0), (-0.8, 1.0), (0.5, 0.6), (0.0, 1.6)] {
            let reviews = reviews(6000, shift, slope);
            let found = Recalibration::of(&reviews);
            let fit = found.fit.expect("a fit");
            assert!((fit.shift - shift).abs() < 4.0 * fit.shift_error, "{fit:?}");
            assert!((fit.slope - slope).abs() < 4.0 * fit.slope_error, "{fit:?}");
            assert!(fit.after <= fit.before + 1e-4, "{fit:?}");
            // The equations of the greatest likelihood: nothing pulls any more.
            let sums = Sums::of(&reviews, fit.shift, fit.slope);
            assert!(sums.pull.abs() < 1e-6 && sums.pull_odds.abs() < 1e-6);
            let straight = (shift, slope) == (0.0, 1.0);
            assert_eq!(
                found.words.contains("chance explains"),
                straight,
                "{}",
                found.words
            );
        }
        let low = Recalibration::of(&reviews(6000, -0.8, 1.0));
        assert!(low.words.contains("less was remembered"), "{}", low.words);
        let high = Recalibration::of(&reviews(6000, 0.9, 1.0));
        assert!(high.words.contains("more was remembered"), "{}", high.words);
    }

    #[test]
    fn two_groups_come_out_as_their_shares() {
        // With two forecasts the fit passes through both shares: 30 of 50 where
        // 0.8 was forecast, 45 of 50 where 0.9 was.
        let group = |recall: f64, right: usize| {
            (0..50).map(move |at| Prediction {
                recall,
                guess: 0.0,
                right: at < right,
                days: 2,
                stability: 2.0,
            })
        };
        let reviews: Vec<Prediction> = group(0.8, 30).chain(group(0.9, 45)).collect();
        let fit = Recalibration::of(&reviews).fit.expect("a fit");
        assert!((fit.bent(0.8) - 0.6).abs() < 1e-9, "{fit:?}");
        assert!((fit.bent(0.9) - 0.9).abs() < 1e-9, "{fit:?}");
        let before = (30.0 * 0.04 + 20.0 * 0.64 + 45.0 * 0.01 + 5.0 * 0.81) / 100.0;
        assert!((fit.before - before).abs() < 1e-12);
        let after = (30.0 * 0.16 + 20.0 * 0.36 + 45.0 * 0.01 + 5.0 * 0.81) / 100.0;
        assert!((fit.after - after).abs() < 1e-9);
    }
}

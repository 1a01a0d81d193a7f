//! Calibration of the memory model: what it predicted against what happened.

use crate::{
    mastery::{Interval, wilson},
    numeric::real,
};

/// One review a day or more after the last: what was predicted, what happened.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prediction {
    /// The predicted chance of recall.
    pub recall: f64,
    /// The chance of being right without recall.
    pub guess: f64,
    /// Whether the answer was right.
    pub right: bool,
    /// Days since the last answer, at least 1.
    pub days: u32,
    /// The stability before this review, in days.
    pub stability: f64,
}

impl Prediction {
    /// The predicted chance of a right answer: recalled, or not recalled and guessed.
    pub fn chance(&self) -> f64 {
        self.guess + (1.0 - self.guess) * self.recall
    }
}

/// Reviews of about the same predicted chance.
#[derive(Clone, Debug, PartialEq)]
pub struct Bin {
    /// From this predicted chance of a right answer ...
    pub from: f64,
    /// ... to below this one.
    pub to: f64,
    /// How many reviews.
    pub count: usize,
    /// How many of them were right.
    pub right: usize,
    /// The mean predicted chance; nothing where there are no reviews.
    pub predicted: Option<f64>,
    /// The share that was right; nothing where there are no reviews.
    pub observed: Option<f64>,
    /// The 95 % interval of that share (Wilson).
    pub interval: Interval,
}

/// The table of predictions against what happened.
#[derive(Clone, Debug, PartialEq)]
pub struct Calibration {
    /// Five bins, from the least predicted chance.
    pub bins: Vec<Bin>,
    /// How many reviews there are in all.
    pub reviews: usize,
    /// Mean of minus the logarithm of the probability given to what happened;
    /// less is better. Nothing without reviews.
    pub log_loss: Option<f64>,
    /// The same for a forecaster who always says the overall share of right answers.
    pub plain_log_loss: Option<f64>,
    /// What the table says, in a sentence.
    pub words: String,
}

/// Most reviews happen near the wanted recall, so bins are narrow there.
const EDGES: [f64; 6] = [0.0, 0.6, 0.7, 0.8, 0.9, 1.0];

impl Calibration {
    /// The table of these reviews.
    pub fn of(reviews: &[Prediction]) -> Self {
        let mut sums = [(0_usize, 0_usize, 0.0_f64); 5];
        let mut loss = 0.0;
        for review in reviews {
            let chance = review.chance();
            let bin = EDGES[1..5].iter().filter(|&&edge| chance >= edge).count();
            let (count, right, predicted) = &mut sums[bin];
            *count += 1;
            *right += usize::from(review.right);
            *predicted += chance;
            loss -= log_of(if review.right { chance } else { 1.0 - chance });
        }
        let bins: Vec<Bin> = sums
            .iter()
            .zip(EDGES.windows(2))
            .map(|(&(count, right, predicted), edges)| bin(edges, count, right, predicted))
            .collect();
        let some = !reviews.is_empty();
        let right = bins.iter().map(|bin| bin.right).sum::<usize>();
        Self {
            reviews: reviews.len(),
            log_loss: some.then(|| loss / real(reviews.len())),
            plain_log_loss: some.then(|| plain(right, reviews.len())),
            words: words(&bins, reviews.len()),
            bins,
        }
    }
}

fn bin(edges: &[f64], count: usize, right: usize, predicted: f64) -> Bin {
    Bin {
        from: edges[0],
        to: edges[1],
        count,
        right,
        predicted: (count > 0).then(|| predicted / real(count)),
        observed: (count > 0).then(|| real(right) / real(count)),
        interval: wilson(right, count, 0.95),
    }
}

/// No single surprise weighs without limit.
fn log_of(chance: f64) -> f64 {
    chance.max(1e-9).ln()
}

fn plain(right: usize, all: usize) -> f64 {
    let share = real(right) / real(all);
    -(share * log_of(share) + (1.0 - share) * log_of(1.0 - share))
}

fn words(bins: &[Bin], reviews: usize) -> String {
    if reviews < 30 {
        return format!(
            "Too few reviews to judge the forecast: {reviews} so far, and 30 are needed."
        );
    }
    let off = bins.iter().filter(|bin| {
        bin.predicted
            .is_some_and(|p| p < bin.interval.low || p > bin.interval.high)
    });
    match off.count() {
        0 => format!(
            "Over {reviews} reviews, what you remembered agrees with what was forecast, as far as \
             chance allows one to tell."
        ),
        off => format!(
            "Over {reviews} reviews, {off} of the 5 groups lie further from the forecast than \
             chance explains; review dates may be somewhat early or late for you."
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn review(recall: f64, guess: f64, right: bool) -> Prediction {
        Prediction {
            recall,
            guess,
            right,
            days: 3,
            stability: 3.0,
        }
    }

    #[test]
    fn reviews_fall_into_the_bin_of_their_chance_with_guessing() {
        let reviews = [
            review(0.5, 0.0, true),
            review(0.5, 0.25, false),
            review(0.9, 0.0, true),
            review(1.0, 0.0, true),
        ];
        let table = Calibration::of(&reviews);
        let counts: Vec<usize> = table.bins.iter().map(|bin| bin.count).collect();
        assert_eq!(counts, [1, 1, 0, 0, 2]);
        assert_eq!(table.bins[1].predicted, Some(0.625));
        assert_eq!(table.bins[1].observed, Some(0.0));
        assert_eq!(table.bins[2].predicted, None);
        let wanted = -(0.5_f64.ln() + 0.375_f64.ln() + 0.9_f64.ln()) / 4.0;
        assert!((table.log_loss.unwrap() - wanted).abs() < 1e-12);
        assert!(table.words.contains("Too few"));
    }

    #[test]
    fn no_review_gives_no_number() {
        let table = Calibration::of(&[]);
        assert_eq!((table.log_loss, table.bins.len()), (None, 5));
    }
}

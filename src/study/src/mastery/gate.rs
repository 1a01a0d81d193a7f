//! 'Enough practice?': a sequential test (Wald 1947), or a beta posterior. Never
//! so many right in a row.

use super::posterior::BetaPosterior;

/// What a sequential test says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Decision {
    /// Enough practice.
    Mastered,
    /// More practice is needed.
    NotMastered,
    /// Not yet decided.
    Undecided,
}

impl Decision {
    /// The decision in a sentence.
    pub fn words(self) -> &'static str {
        match self {
            Self::Mastered => "Enough practice: your answers show that you have this.",
            Self::NotMastered => "More practice is needed here.",
            Self::Undecided => "Undecided: your answers so far fit both having this and not yet.",
        }
    }
}

/// A sequential test of two shares of right answers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sequential {
    /// The share of a student who does not have it.
    pub p0: f64,
    /// The share of one who has it; above `p0`.
    pub p1: f64,
    /// How often it may say mastered at `p0`.
    pub alpha: f64,
    /// How often it may say not mastered at `p1`.
    pub beta: f64,
    /// After so many answers without a decision it stays undecided.
    pub longest: usize,
}

impl Default for Sequential {
    /// 60 % against 85 %, one error in ten either way, 40 answers at most.
    fn default() -> Self {
        Self {
            p0: 0.60,
            p1: 0.85,
            alpha: 0.10,
            beta: 0.10,
            longest: 40,
        }
    }
}

impl Sequential {
    /// The lower and the upper bound of the log-likelihood ratio.
    pub fn bounds(&self) -> (f64, f64) {
        (
            (self.beta / (1.0 - self.alpha)).ln(),
            ((1.0 - self.beta) / self.alpha).ln(),
        )
    }

    /// The log-likelihood ratio after each answer, up to the decision.
    pub fn path(&self, answers: &[bool]) -> Vec<f64> {
        let (low, high) = self.bounds();
        let right = (self.p1 / self.p0).ln();
        let wrong = ((1.0 - self.p1) / (1.0 - self.p0)).ln();
        let mut ratio = 0.0;
        let mut path = Vec::new();
        for &answer in answers.iter().take(self.longest) {
            ratio += if answer { right } else { wrong };
            path.push(ratio);
            if ratio >= high || ratio <= low {
                break;
            }
        }
        path
    }

    /// The decision, and after how many answers it fell.
    pub fn decide(&self, answers: &[bool]) -> (Decision, Option<usize>) {
        let (low, high) = self.bounds();
        let path = self.path(answers);
        match path.last() {
            Some(&ratio) if ratio >= high => (Decision::Mastered, Some(path.len())),
            Some(&ratio) if ratio <= low => (Decision::NotMastered, Some(path.len())),
            _ => (Decision::Undecided, None),
        }
    }
}

/// For set-ups and safety steps, which have no difficulty of their own: whether
/// the share of right ones is above `cut` with probability 0.90, from the prior Beta(2, 1).
pub fn enough(right: usize, of: usize, cut: f64) -> bool {
    BetaPosterior::LEANING.after(right, of).above(cut) >= 0.90
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn seven_right_in_a_row_suffice_and_forty_end_it() {
        let test = Sequential::default();
        assert_eq!(test.decide(&[true; 6]), (Decision::Undecided, None));
        assert_eq!(test.decide(&[true; 7]), (Decision::Mastered, Some(7)));
        assert_eq!(test.decide(&[false; 9]), (Decision::NotMastered, Some(3)));
        // Three right for each wrong keeps the ratio between the bounds.
        let mixed: Vec<bool> = (0..200).map(|n| n % 4 != 0).collect();
        assert_eq!(test.path(&mixed).len(), 40);
        assert_eq!(test.decide(&mixed), (Decision::Undecided, None));
    }

    #[test]
    fn the_posterior_asks_for_more_than_a_few() {
        assert!(!enough(3, 3, 0.75));
        assert!(enough(12, 12, 0.75));
        assert!(!enough(9, 12, 0.75));
    }
}

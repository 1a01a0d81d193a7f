//! The equations of memory (FSRS-6), in f64, with the published default parameters.

use super::grade::Grade;
use crate::numeric::whole;

/// No interval is longer than this, in days: a hundred years.
pub const LONGEST_INTERVAL: u32 = 36_500;

/// The least stability, in days.
const LEAST_STABILITY: f64 = 0.001;

/// The 21 parameters, w0 to w20 of the published equations.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parameters(pub [f64; 21]);

impl Default for Parameters {
    /// The published defaults, fitted to many students' reviews.
    fn default() -> Self {
        Self([
            0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796,
            1.4835, 0.0614, 0.2629, 1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
        ])
    }
}

/// What is remembered of one question.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct State {
    /// Days until the chance of recall has fallen to 0.9.
    pub stability: f64,
    /// How hard it is for this student, 1 to 10.
    pub difficulty: f64,
}

/// The memory model.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Model {
    w: [f64; 21],
    /// Makes the chance of recall 0.9 when as many days have passed as the stability.
    factor: f64,
    /// The part of the growth of stability that is the same for all questions.
    growth: f64,
    /// The difficulty that all difficulties are drawn towards: the raw value for grade 4.
    easiest: f64,
}

impl Default for Model {
    fn default() -> Self {
        Self::new(Parameters::default())
    }
}

impl Model {
    /// The model with these parameters.
    pub fn new(parameters: Parameters) -> Self {
        let w = parameters.0;
        Self {
            w,
            factor: 0.9_f64.powf(-1.0 / w[20]) - 1.0,
            growth: w[8].exp(),
            easiest: raw_difficulty(&w, Grade::AtOnce),
        }
    }

    /// The factor F and the exponent w20 of the forgetting curve.
    pub(super) fn curve(&self) -> (f64, f64) {
        (self.factor, self.w[20])
    }

    /// The chance of recall `days` after a review that left this stability.
    pub fn recall(&self, stability: f64, days: f64) -> f64 {
        (1.0 + self.factor * days.max(0.0) / stability).powf(-self.w[20])
    }

    /// What is remembered after the first answer.
    pub fn first(&self, grade: Grade) -> State {
        State {
            stability: self.w[usize::from(grade.number()) - 1].max(LEAST_STABILITY),
            difficulty: raw_difficulty(&self.w, grade).clamp(1.0, 10.0),
        }
    }

    /// What is remembered after a further answer, given a whole number of days later.
    pub fn next(&self, state: State, days: u32, grade: Grade) -> State {
        let stability = if days == 0 {
            self.same_day(state, grade)
        } else if grade == Grade::Missed {
            self.missed(state, self.recall(state.stability, f64::from(days)))
        } else {
            self.recalled(state, self.recall(state.stability, f64::from(days)), grade)
        };
        State {
            stability: stability.max(LEAST_STABILITY),
            difficulty: self.next_difficulty(state.difficulty, grade),
        }
    }

    /// Whole days until the chance of recall has fallen to `retention` (between
    /// 0 and 1): at least 1, at most `cap`; halves go to the even number.
    pub fn interval(&self, stability: f64, retention: f64, cap: u32) -> u32 {
        whole(stability * self.spread(retention)).clamp(1, cap.max(1))
    }

    /// Days until recall has fallen to `retention`, per day of stability.
    pub(super) fn spread(&self, retention: f64) -> f64 {
        (retention.powf(-1.0 / self.w[20]) - 1.0) / self.factor
    }

    fn next_difficulty(&self, difficulty: f64, grade: Grade) -> f64 {
        let change = -self.w[6] * (f64::from(grade.number()) - 3.0);
        let damped = difficulty + change * (10.0 - difficulty) / 9.0;
        let drawn = self.w[7] * self.easiest + (1.0 - self.w[7]) * damped;
        drawn.clamp(1.0, 10.0)
    }

    fn recalled(&self, state: State, recall: f64, grade: Grade) -> f64 {
        let w = &self.w;
        let hardship = match grade {
            Grade::Strained => w[15],
            Grade::AtOnce => w[16],
            Grade::Missed | Grade::Recalled => 1.0,
        };
        let growth = self.growth
            * (11.0 - state.difficulty)
            * state.stability.powf(-w[9])
            * (((1.0 - recall) * w[10]).exp() - 1.0)
            * hardship;
        state.stability * (1.0 + growth)
    }

    fn missed(&self, state: State, recall: f64) -> f64 {
        let w = &self.w;
        let left = w[11]
            * state.difficulty.powf(-w[12])
            * ((state.stability + 1.0).powf(w[13]) - 1.0)
            * ((1.0 - recall) * w[14]).exp();
        left.min(state.stability / (w[17] * w[18]).exp())
    }

    fn same_day(&self, state: State, grade: Grade) -> f64 {
        let w = &self.w;
        let change = (w[17] * (f64::from(grade.number()) - 3.0 + w[18])).exp()
            * state.stability.powf(-w[19]);
        state.stability
            * if grade == Grade::Missed {
                change
            } else {
                change.max(1.0)
            }
    }
}

/// The difficulty after the first answer, not clamped.
fn raw_difficulty(w: &[f64; 21], grade: Grade) -> f64 {
    w[4] - (w[5] * (f64::from(grade.number()) - 1.0)).exp() + 1.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn recall_is_nine_in_ten_after_the_stability() {
        let model = Model::default();
        for stability in [0.001, 0.5, 3.0, 400.0] {
            assert!((model.recall(stability, stability) - 0.9).abs() < 1e-12);
        }
        assert!((model.recall(3.0, -5.0) - 1.0).abs() < 1e-15);
    }

    #[test]
    fn four_reviews_on_the_due_day_give_the_worked_intervals() {
        // Worked with the Python package fsrs 6.3.2.
        let model = Model::default();
        let mut state = model.first(Grade::Recalled);
        let mut intervals = Vec::new();
        for _ in 0..4 {
            let days = model.interval(state.stability, 0.9, LONGEST_INTERVAL);
            intervals.push(days);
            state = model.next(state, days, Grade::Recalled);
        }
        assert_eq!(intervals, [2, 11, 46, 163]);
    }
}

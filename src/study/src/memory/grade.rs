//! Grades from evidence: what was seen to happen, not how sure the student felt.

use crate::{answer::Answer, numeric::real};
use std::collections::VecDeque;

/// How well something was recalled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Not recalled.
    Missed,
    /// Recalled with strain.
    Strained,
    /// Recalled.
    Recalled,
    /// Recalled at once. Never given for a choice among options, where a guess
    /// looks the same.
    AtOnce,
}

impl Grade {
    /// The grade as the number of the published equations, 1 to 4.
    pub fn number(self) -> u8 {
        match self {
            Self::Missed => 1,
            Self::Strained => 2,
            Self::Recalled => 3,
            Self::AtOnce => 4,
        }
    }

    /// The grade with this number, 1 to 4.
    pub fn of_number(number: u8) -> Option<Self> {
        [Self::Missed, Self::Strained, Self::Recalled, Self::AtOnce]
            .into_iter()
            .find(|grade| grade.number() == number)
    }

    /// The grade of an answer: wrong is a miss; right with a hint,
    /// slow for this student, or marked unsure is strained; right is recalled.
    pub fn of(answer: &Answer, slow: bool) -> Self {
        if !answer.right {
            Self::Missed
        } else if answer.hint || answer.unsure || slow {
            Self::Strained
        } else {
            Self::Recalled
        }
    }

    /// The grade in words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Missed => "not recalled",
            Self::Strained => "recalled with strain",
            Self::Recalled => "recalled",
            Self::AtOnce => "recalled at once",
        }
    }
}

/// A student's own pace: the times of the last 200 right answers, each as a
/// multiple of what the question usually takes.
///
/// The window lets a student who becomes quicker be measured against the new pace.
#[derive(Clone, Debug, Default)]
pub struct Pace {
    recent: VecDeque<f64>,
    sorted: Vec<f64>,
}

impl Pace {
    const WINDOW: usize = 200;
    /// Below this many timed right answers nothing is called slow.
    const NEEDED: usize = 20;

    /// The student's own 80th percentile, as a multiple of the usual time;
    /// nothing while fewer than 20 right answers have been timed.
    pub fn slow_from(&self) -> Option<f64> {
        let count = self.sorted.len();
        // The smallest time that four fifths do not exceed.
        (count >= Self::NEEDED).then(|| self.sorted[(4 * count).div_ceil(5) - 1])
    }

    /// Whether an answer that took `seconds`, where `usual` are expected, is
    /// slower than the student's own 80th percentile. An untimed one is not.
    pub fn is_slow(&self, seconds: u32, usual: u32) -> bool {
        match (ratio(seconds, usual), self.slow_from()) {
            (Some(ratio), Some(limit)) => ratio > limit,
            _ => false,
        }
    }

    /// Takes in the time of a right answer.
    pub fn take(&mut self, seconds: u32, usual: u32) {
        let Some(ratio) = ratio(seconds, usual) else {
            return;
        };
        if self.recent.len() == Self::WINDOW
            && let Some(oldest) = self.recent.pop_front()
        {
            let at = self.sorted.partition_point(|&t| t < oldest);
            self.sorted.remove(at);
        }
        self.recent.push_back(ratio);
        let at = self.sorted.partition_point(|&t| t < ratio);
        self.sorted.insert(at, ratio);
    }

    /// The mean of the student's times as multiples of the usual ones; 1 before any.
    pub fn mean(&self) -> f64 {
        if self.recent.is_empty() {
            1.0
        } else {
            self.recent.iter().sum::<f64>() / real(self.recent.len())
        }
    }
}

fn ratio(seconds: u32, usual: u32) -> Option<f64> {
    (seconds > 0 && usual > 0).then(|| f64::from(seconds) / f64::from(usual))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::day::Day;

    fn answer(right: bool, hint: bool, unsure: bool) -> Answer {
        Answer {
            question: "q".into(),
            competency: "c".into(),
            right,
            hint,
            unsure,
            seconds: 10,
            first_try: true,
            day: Day(0),
        }
    }

    #[test]
    fn grades_come_from_what_happened() {
        let rows = [
            (answer(false, false, false), false, Grade::Missed),
            (answer(false, true, true), true, Grade::Missed),
            (answer(true, true, false), false, Grade::Strained),
            (answer(true, false, true), false, Grade::Strained),
            (answer(true, false, false), true, Grade::Strained),
            (answer(true, false, false), false, Grade::Recalled),
        ];
        for (answer, slow, wanted) in rows {
            assert_eq!(Grade::of(&answer, slow), wanted, "{answer:?} {slow}");
        }
    }

    #[test]
    fn slow_is_beyond_the_own_80th_percentile() {
        let mut pace = Pace::default();
        for seconds in 1..=19 {
            pace.take(seconds, 10);
        }
        assert!(
            !pace.is_slow(1000, 10),
            "too little is known of this student"
        );
        pace.take(20, 10);
        assert_eq!(pace.slow_from(), Some(1.6));
        assert!(!pace.is_slow(16, 10));
        assert!(pace.is_slow(17, 10));
        assert!(!pace.is_slow(17, 20), "a long question may take longer");
        assert!(!pace.is_slow(0, 10), "an untimed answer is not slow");
    }

    #[test]
    fn the_pace_follows_a_student_who_becomes_quicker() {
        let mut pace = Pace::default();
        for _ in 0..500 {
            pace.take(40, 10);
        }
        for _ in 0..200 {
            pace.take(8, 10);
        }
        assert_eq!(pace.slow_from(), Some(0.8));
        assert_eq!(pace.sorted.len(), 200);
    }
}

//! An examination on a fixed day: intervals shrink towards it, and what would be
//! forgotten by then is asked once more in the last week.

use super::model::Model;
use crate::{
    day::Day,
    numeric::{real, whole},
};

/// The chance of recall wanted on the examination day.
const WANTED: f64 = 0.9;

/// In the days before the examination, this many, every question is asked once
/// more that would otherwise be below the wanted recall.
const LAST_DAYS: u32 = 7;

/// The day of an examination.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Examination(pub Day);

impl Examination {
    /// The longest interval allowed after a review on `reviewed`, in days: a
    /// fifth of the time left, rounded up, at least 1. Nothing once the day has passed.
    pub fn cap(self, reviewed: Day) -> Option<u32> {
        (reviewed <= self.0).then(|| {
            // A fifth in whole numbers, so that nothing is rounded the wrong way.
            self.0.since(reviewed).div_ceil(5).max(1)
        })
    }

    /// The day of the forced last review of a question: in the last seven days,
    /// spread over them by the hash of the question's id. Nothing where recall on the day
    /// will do, or where a review has already fallen in those days.
    pub fn last_review(
        self,
        hash: u64,
        model: &Model,
        stability: f64,
        reviewed: Day,
    ) -> Option<Day> {
        let from = self.0.minus(LAST_DAYS);
        if reviewed >= from || self.recall(model, stability, reviewed) >= WANTED {
            return None;
        }
        let shift = hash % u64::from(LAST_DAYS);
        Some(from.plus(u32::try_from(shift).unwrap_or(0)))
    }

    /// The chance of recall on the examination day of what was last reviewed on `reviewed`.
    pub fn recall(self, model: &Model, stability: f64, reviewed: Day) -> f64 {
        model.recall(stability, f64::from(self.0.since(reviewed)))
    }

    /// What to tell the student about the day itself.
    pub fn words(self, today: Day) -> String {
        if self.0 < today {
            return "The examination day that is set has passed. Reviews go by memory alone until \
                    you set another day; nothing is lost."
                .into();
        }
        match self.0.since(today) {
            0 => "The examination is today.".into(),
            1 => "The examination is tomorrow.".into(),
            days => format!("{days} days to the examination."),
        }
    }

    /// The part of a mean recall that `recalls` have on the day, for a sentence:
    /// about how many of how many.
    pub fn expected(recalls: &[f64]) -> (u32, usize) {
        let sum: f64 = recalls.iter().sum();
        (whole(sum.min(real(recalls.len()))), recalls.len())
    }
}

/// The stability that is needed today for recall of at least `retention` after `days` days.
pub fn stability_needed(model: &Model, days: u32, retention: f64) -> f64 {
    f64::from(days) / model.spread(retention)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_interval_is_at_most_a_fifth_of_the_time_left() {
        let examination = Examination(Day(100));
        let rows = [
            (0, Some(20)),
            (1, Some(20)),
            (5, Some(19)),
            (94, Some(2)),
            (95, Some(1)),
            (99, Some(1)),
            (100, Some(1)),
            (101, None),
        ];
        for (reviewed, wanted) in rows {
            assert_eq!(examination.cap(Day(reviewed)), wanted, "{reviewed}");
        }
    }

    #[test]
    fn what_would_fade_is_asked_in_the_last_week() {
        let (model, examination) = (Model::default(), Examination(Day(100)));
        let day = examination.last_review(7, &model, 10.0, Day(60));
        assert!(day.is_some_and(|day| day >= Day(93) && day < Day(100)));
        assert_eq!(examination.last_review(7, &model, 400.0, Day(60)), None);
        assert_eq!(examination.last_review(7, &model, 1.0, Day(95)), None);
    }

    #[test]
    fn the_stability_needed_gives_the_recall() {
        let model = Model::default();
        for (days, retention) in [(7, 0.9), (40, 0.85), (365, 0.95)] {
            let stability = stability_needed(&model, days, retention);
            assert!((model.recall(stability, f64::from(days)) - retention).abs() < 1e-12);
        }
    }

    #[test]
    fn a_day_in_the_past_is_told_in_words() {
        assert!(Examination(Day(4)).words(Day(5)).contains("has passed"));
        assert!(Examination(Day(5)).words(Day(5)).contains("today"));
        assert_eq!(
            Examination(Day(9)).words(Day(5)),
            "4 days to the examination."
        );
    }
}

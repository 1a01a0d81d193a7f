//! When a question falls due: memory, shifted a little to even out the load,
//! held by the examination day.

use super::{
    examination::Examination,
    fold::Trace,
    model::{LONGEST_INTERVAL, Model},
};
use crate::{day::Day, numeric::whole};

/// By what a student's reviews are dated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Schedule {
    /// The memory model.
    pub model: Model,
    retention: f64,
    /// Days until recall has fallen to `retention`, per day of stability.
    spread: f64,
    /// This student's intervals as a multiple of the model's; 1 until enough is known.
    pub multiplier: f64,
    /// The examination, if one is set and has not passed.
    pub examination: Option<Examination>,
}

/// Why a question is asked again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reason {
    /// It would soon be forgotten.
    Fading,
    /// Once more in the last week before the examination.
    LastWeek,
    /// Only because the examination is near; memory alone would leave it longer.
    NearExamination,
    /// It is dated after today: the clock of the device was ahead.
    DatedAhead,
}

impl Reason {
    /// Whether it should be asked before anything new is begun. A repeat that
    /// only the nearness of the examination asks for may wait.
    pub fn presses(self) -> bool {
        self != Self::NearExamination
    }

    /// The reason in words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Fading => "You would soon forget this.",
            Self::LastWeek => "Once more in the last week before the examination.",
            Self::NearExamination => "The examination is near, so this comes round sooner.",
            Self::DatedAhead => {
                "This was dated after today, by a clock that was ahead; it is asked again to set \
                 the date right."
            }
        }
    }
}

impl Schedule {
    /// The usual recall at which a question is asked again.
    pub const USUAL: f64 = 0.90;
    /// Where more falls due each day than there is time for.
    pub const EASED: f64 = 0.85;

    /// The schedule for a student on `today`; an examination day that has passed is ignored.
    pub fn new(today: Day, examination: Option<Examination>, multiplier: f64) -> Self {
        Self {
            multiplier,
            examination: examination.filter(|e| e.0 >= today),
            ..Self::asking_at(Model::default(), Self::USUAL)
        }
    }

    /// The same, asking again a little later because the queue overflows.
    #[must_use]
    pub fn eased(self) -> Self {
        Self {
            multiplier: self.multiplier,
            examination: self.examination,
            ..Self::asking_at(self.model, Self::EASED)
        }
    }

    fn asking_at(model: Model, retention: f64) -> Self {
        Self {
            model,
            retention,
            spread: model.spread(retention),
            multiplier: 1.0,
            examination: None,
        }
    }

    /// The chance of recall at which a question is asked again.
    pub fn retention(&self) -> f64 {
        self.retention
    }

    /// The chance that a question is recalled on a day, with this student's multiplier.
    pub fn recall(&self, trace: &Trace, day: Day) -> f64 {
        self.model.recall(
            trace.state.stability * self.multiplier,
            f64::from(day.since(trace.last)),
        )
    }

    /// When a question falls due and why; `hash` is that of its id. Always at least a day after its last
    /// review; it may lie before today where reviews were left undone.
    pub fn due(&self, hash: u64, trace: &Trace) -> (Day, Reason) {
        let stability = trace.state.stability * self.multiplier;
        let days = whole(stability * self.spread).clamp(1, LONGEST_INTERVAL);
        let days = evened(hash, days);
        let mut due = (trace.last.plus(days), Reason::Fading);
        let Some(examination) = self.examination else {
            return due;
        };
        if let Some(day) = examination.last_review(hash, &self.model, stability, trace.last)
            && day.max(trace.last.plus(1)) < due.0
        {
            due = (day.max(trace.last.plus(1)), Reason::LastWeek);
        }
        if let Some(cap) = examination.cap(trace.last)
            && trace.last.plus(cap) < due.0
        {
            due = (trace.last.plus(cap), Reason::NearExamination);
        }
        due
    }
}

/// Moves an interval of 3 days or more by at most 5 % either way, by the
/// hash of the
/// question's id, so that what was learnt on one day does not all come back on one.
fn evened(hash: u64, days: u32) -> u32 {
    if days < 3 {
        return days;
    }
    let most = days / 20;
    let wide = u64::from(2 * most + 1);
    // The low bits of the hash differ even for ids that differ in one character.
    let shift = u32::try_from(hash % wide).unwrap_or(0);
    days - most + shift
}

/// Seconds that a question takes this student, by their own pace.
pub(super) fn seconds(usual: u32, pace: f64) -> u32 {
    whole(f64::from(usual) * pace.clamp(0.5, 2.0)).max(1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn an_interval_moves_by_a_twentieth_at_most_and_by_id_alone() {
        for days in [1, 2, 3, 19, 20, 39, 40, 365] {
            let mut seen = BTreeSet::new();
            for n in 0..500 {
                let hash = crate::numeric::hash(&format!("question-{n}"));
                let moved = evened(hash, days);
                assert_eq!(moved, evened(hash, days));
                assert!(moved.abs_diff(days) * 20 <= days, "{days} -> {moved}");
                seen.insert(moved);
            }
            let wanted = 2 * (days / 20) + 1;
            assert_eq!(seen.len(), usize::try_from(wanted).unwrap(), "{days}");
        }
    }
}

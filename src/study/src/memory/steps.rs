//! Repeats within a day: a new or missed question comes back after a minute and
//! after ten, before it is left for whole days.

use super::{
    grade::Grade,
    model::{LONGEST_INTERVAL, Model, State},
};

const DAY: i64 = 86_400;

/// Where a question stands between its first showing and whole-day reviews.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phase {
    /// New: on this step of the first day's repeats.
    Learning(usize),
    /// Left for whole days.
    Review,
    /// Missed at a review: on this step of the repeats after a miss.
    Relearning(usize),
}

impl Phase {
    /// The step it is on, if it is being repeated within the day.
    pub fn step(self) -> Option<usize> {
        match self {
            Self::Learning(step) | Self::Relearning(step) => Some(step),
            Self::Review => None,
        }
    }
}

/// The waits within a day, in seconds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Steps {
    /// After a first showing.
    pub learning: &'static [i64],
    /// After a miss.
    pub relearning: &'static [i64],
}

impl Default for Steps {
    fn default() -> Self {
        Self {
            learning: &[60, 600],
            relearning: &[600],
        }
    }
}

/// A question followed to the second.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Within {
    /// What is remembered.
    pub state: State,
    /// Where it stands.
    pub phase: Phase,
    /// When it was last answered, in seconds since any fixed moment.
    pub last: i64,
    /// How many seconds until it should be asked again.
    pub wait: i64,
}

impl Steps {
    /// The first answer to a question, at `now` seconds.
    pub fn first(&self, model: &Model, retention: f64, grade: Grade, now: i64) -> Within {
        let state = model.first(grade);
        self.settle(model, retention, Phase::Learning(0), state, grade, now)
    }

    /// A further answer at `now` seconds. A clock moved back counts as no time.
    pub fn next(
        &self,
        model: &Model,
        retention: f64,
        before: Within,
        grade: Grade,
        now: i64,
    ) -> Within {
        let days = u32::try_from(now.saturating_sub(before.last) / DAY).unwrap_or(0);
        let state = model.next(before.state, days, grade);
        self.settle(model, retention, before.phase, state, grade, now)
    }

    fn settle(
        &self,
        model: &Model,
        retention: f64,
        phase: Phase,
        state: State,
        grade: Grade,
        now: i64,
    ) -> Within {
        let step = match phase {
            Phase::Learning(step) => after(self.learning, step, grade).map(learning),
            Phase::Relearning(step) => after(self.relearning, step, grade).map(relearning),
            Phase::Review if grade == Grade::Missed => {
                self.relearning.first().map(|&wait| relearning((0, wait)))
            }
            Phase::Review => None,
        };
        let (phase, wait) = step.unwrap_or_else(|| {
            let days = model.interval(state.stability, retention, LONGEST_INTERVAL);
            (Phase::Review, i64::from(days) * DAY)
        });
        Within {
            state,
            phase,
            last: now,
            wait,
        }
    }
}

fn learning((step, wait): (usize, i64)) -> (Phase, i64) {
    (Phase::Learning(step), wait)
}

fn relearning((step, wait): (usize, i64)) -> (Phase, i64) {
    (Phase::Relearning(step), wait)
}

/// The step after this grade and how long to wait for it; nothing when the
/// question is ready to be left for whole days.
fn after(waits: &[i64], step: usize, grade: Grade) -> Option<(usize, i64)> {
    let &first = waits.first()?;
    match grade {
        Grade::Missed => Some((0, first)),
        Grade::Strained => {
            // With strain on the first step: half way to the second, or half as
            // long again where there is none.
            let wait = match (step, waits.get(1)) {
                (0, Some(second)) => i64::midpoint(first, *second),
                (0, None) => first + first / 2,
                _ => *waits.get(step)?,
            };
            Some((step, wait))
        }
        Grade::Recalled => waits.get(step + 1).map(|&wait| (step + 1, wait)),
        Grade::AtOnce => None,
    }
}

//! The sitting at a case, found in the record.

use catalogue::ids::FindingId;
use record::{
    Event,
    folds::{self, Sitting},
};

/// A case as the record names it.
#[derive(Clone, Debug)]
pub struct Sought {
    frame: String,
    seed: u64,
    with: Option<String>,
}

impl Sought {
    /// A case of a frame, a seed and what it was asked for with.
    pub fn new(frame: &str, seed: u64, with: Option<&FindingId>) -> Self {
        Self {
            frame: frame.into(),
            seed,
            with: with.map(ToString::to_string),
        }
    }

    /// The sitting to go on with: the latest under way, or else the latest that
    /// was finished.
    pub fn latest(&self, events: &[Event]) -> Option<Sitting> {
        let is = |case: &str, seed: u64, with: &Option<String>| {
            case == self.frame && seed == self.seed && *with == self.with
        };
        let mut open = folds::under_way(events).into_iter();
        let under_way = open.rfind(|it| is(&it.case, it.seed, &it.with));
        under_way.or_else(|| {
            let mut done = folds::finished_cases(events).into_iter();
            let last = done.rfind(|it| is(&it.case, it.seed, &it.with))?;
            folds::sitting(events, last.sitting)
        })
    }
}

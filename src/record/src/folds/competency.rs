//! What was shown, by competency.

use std::collections::{BTreeMap, BTreeSet};

use crate::event::Event;
use crate::moment::Moment;
use crate::values::Verdict;
use crate::what::What;

/// Answers that speak for one competency.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tally {
    counts: [u32; Verdict::ALL.len()],
    /// The latest answer, by the student's clock.
    pub last: Moment,
}

impl Tally {
    /// How many answers were judged so.
    pub fn of(&self, verdict: Verdict) -> u32 {
        self.counts[verdict as usize]
    }

    /// How many answers in all.
    pub fn total(&self) -> u32 {
        self.counts.iter().sum()
    }
}

/// Answers by the id of their competency. A decision answered twice in one
/// sitting counts once, by its first answer.
pub fn by_competency(events: &[Event]) -> BTreeMap<String, Tally> {
    let mut counted = BTreeSet::new();
    let mut tallies: BTreeMap<String, Tally> = BTreeMap::new();
    for event in events {
        let What::CaseAnswered(answer) = &event.what else {
            continue;
        };
        if !counted.insert((answer.sitting, answer.decision.as_str())) {
            continue;
        }
        if !tallies.contains_key(&answer.competency) {
            let none_yet = Tally {
                counts: [0; Verdict::ALL.len()],
                last: event.at,
            };
            tallies.insert(answer.competency.clone(), none_yet);
        }
        if let Some(tally) = tallies.get_mut(&answer.competency) {
            tally.counts[answer.verdict as usize] += 1;
            tally.last = tally.last.max(event.at);
        }
    }
    tallies
}

//! What was shown, by competency.

use std::collections::{BTreeMap, BTreeSet};

use super::evidence::evidence;
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

/// What the ids of numbers to be worked out begin with, at the bench and among
/// questions.
const NUMBERS: &str = "numbers.";

/// What was done by hand, by the id of its competency: decisions of cases, mixes
/// that were handed over, and numbers that were worked out. What was done twice
/// in one sitting counts once, by its first answer; of a number within a form,
/// the last answer counts, once the form is handed in.
pub fn by_competency(events: &[Event]) -> BTreeMap<String, Tally> {
    let mut tallies = Tallies::default();
    let (mut mixed, mut worked) = (BTreeSet::new(), BTreeSet::new());
    let mut counted = BTreeSet::new();
    for event in events {
        match &event.what {
            What::CaseAnswered(it) if counted.insert((it.sitting, it.decision.as_str())) => {
                tallies.count(&it.competency, it.verdict, event.at);
            }
            What::MixHandedOver(it) if mixed.insert(it.sitting) => {
                tallies.count(&it.competency, it.verdict, event.at);
            }
            _ => {}
        }
    }
    let numbers = evidence(events).into_iter();
    for it in numbers.filter(|it| it.answer.question.starts_with(NUMBERS)) {
        if worked.insert((it.answer.sitting, it.answer.question.as_str())) {
            tallies.count(&it.answer.competency, it.answer.verdict, it.at);
        }
    }
    tallies.0
}

#[derive(Default)]
struct Tallies(BTreeMap<String, Tally>);

impl Tallies {
    fn count(&mut self, competency: &str, verdict: Verdict, at: Moment) {
        if !self.0.contains_key(competency) {
            let none_yet = Tally {
                counts: [0; Verdict::ALL.len()],
                last: at,
            };
            self.0.insert(competency.to_owned(), none_yet);
        }
        if let Some(tally) = self.0.get_mut(competency) {
            tally.counts[verdict as usize] += 1;
            tally.last = tally.last.max(at);
        }
    }
}

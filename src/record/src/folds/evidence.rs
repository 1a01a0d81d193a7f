//! Which answers to questions speak for what a student can do.

use std::collections::{BTreeSet, HashMap};

use crate::event::Event;
use crate::moment::Moment;
use crate::study::QuestionAnswered;
use crate::values::SittingId;
use crate::what::What;

/// An answer, and when it was given.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Answered<'e> {
    /// When.
    pub at: Moment,
    /// The answer.
    pub answer: &'e QuestionAnswered,
}

/// The answers that are evidence, in the order of the record: all that were
/// given in sittings, and of each form that was handed in the last answer to
/// each question. What was answered in a form under way may still change.
pub fn evidence(events: &[Event]) -> Vec<Answered<'_>> {
    let evidence = Evidence::of(events);
    let events = events.iter().enumerate();
    let answers = events.filter_map(|(place, event)| evidence.at(place, event));
    answers.collect()
}

/// Tells which events of a record are [`evidence`], event by event, and goes on
/// with a record that grows.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Evidence {
    begun: BTreeSet<SittingId>,
    /// Of each form that was handed in, the place of the last answer to each question.
    handed_in: HashMap<SittingId, HashMap<String, usize>>,
}

impl Evidence {
    /// Of these events.
    pub fn of(events: &[Event]) -> Self {
        let mut found = Self::default();
        let mut handed_in = BTreeSet::new();
        for event in events {
            match &event.what {
                What::FormBegun(it) => {
                    found.begun.insert(it.form);
                }
                What::FormFinished(it) => {
                    handed_in.insert(it.form);
                }
                _ => {}
            }
        }
        let forms = found.begun.intersection(&handed_in);
        found.handed_in = forms.map(|form| (*form, HashMap::new())).collect();
        for (place, event) in events.iter().enumerate() {
            if let What::QuestionAnswered(it) = &event.what
                && let Some(last) = found.handed_in.get_mut(&it.sitting)
            {
                last.insert(it.question.clone(), place);
            }
        }
        found
    }

    /// The answer in the event at a place of the record, if it is evidence.
    pub fn at<'e>(&self, place: usize, event: &'e Event) -> Option<Answered<'e>> {
        let What::QuestionAnswered(answer) = &event.what else {
            return None;
        };
        let counts = match self.handed_in.get(&answer.sitting) {
            Some(last) => last.get(&answer.question) == Some(&place),
            None => !self.begun.contains(&answer.sitting),
        };
        let at = event.at;
        counts.then_some(Answered { at, answer })
    }

    /// Takes in what follows on `before`, the events known so far. Gives whether
    /// the answers among those are evidence or not as they were; if not, this is
    /// as it was, and all has to be looked at anew.
    #[must_use]
    pub fn go_on(&mut self, before: &[Event], new: &[Event]) -> bool {
        let met = |form: SittingId| {
            before.iter().chain(new).any(|event| match &event.what {
                What::QuestionAnswered(it) => it.sitting == form,
                What::FormFinished(it) => it.form == form,
                _ => false,
            })
        };
        let stands = new.iter().all(|event| match &event.what {
            What::FormFinished(_) => false,
            What::FormBegun(it) => self.begun.contains(&it.form) || !met(it.form),
            What::QuestionAnswered(it) => !self.handed_in.contains_key(&it.sitting),
            _ => true,
        });
        if stands {
            let begun = new.iter().filter_map(|event| match &event.what {
                What::FormBegun(it) => Some(it.form),
                _ => None,
            });
            self.begun.extend(begun);
        }
        stands
    }
}

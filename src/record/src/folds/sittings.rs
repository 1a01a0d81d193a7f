//! Cases under way and cases finished.
//!
//! Two tabs may both go on with one case. Then the first answer to a decision
//! counts, and the first end: the student saw the explanation after it.

use std::collections::{BTreeMap, BTreeSet};

use crate::event::Event;
use crate::moment::Moment;
use crate::values::{PerCent, SittingId};
use crate::what::{CaseAnswered, CaseStarted, What};

/// One run through a case, with everything needed to go on with it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sitting {
    /// Which sitting.
    pub id: SittingId,
    /// The id of the case frame in the catalogue.
    pub case: String,
    /// The seed from which the patient was drawn.
    pub seed: u64,
    /// The finding that the patient had to have beyond the frame, if one.
    pub with: Option<String>,
    /// The preference card it is played with, in its stored form, if one.
    pub card: Option<String>,
    /// When it began.
    pub started: Moment,
    /// The answers in the order given, one a decision.
    pub answers: Vec<CaseAnswered>,
    /// How it ended, if it did.
    pub finish: Option<Finish>,
}

impl Sitting {
    /// The answer to one decision, if it was given.
    pub fn answer_to(&self, decision: &str) -> Option<&CaseAnswered> {
        self.answers.iter().find(|it| it.decision == decision)
    }
}

/// How a case ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Finish {
    /// When.
    pub at: Moment,
    /// Marks for the whole case.
    pub per_cent: PerCent,
}

/// A finished case, in short; [`sitting`] gives its answers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FinishedCase {
    /// Which sitting.
    pub sitting: SittingId,
    /// The id of the case frame in the catalogue.
    pub case: String,
    /// The seed from which the patient was drawn.
    pub seed: u64,
    /// The finding that the patient had to have beyond the frame, if one.
    pub with: Option<String>,
    /// When it began.
    pub started: Moment,
    /// How it ended.
    pub finish: Finish,
}

/// Cases that were started and not finished, in the order they were started.
///
/// An answer whose start is missing (set aside with a damaged segment) shows
/// no case to go on with and is left out here; it still counts for its
/// competency.
pub fn under_way(events: &[Event]) -> Vec<Sitting> {
    let finished = finishes(events);
    let mut found: Vec<Sitting> = Vec::new();
    let mut places: BTreeMap<SittingId, usize> = BTreeMap::new();
    for (at, start) in starts(events) {
        if !finished.contains_key(&start.sitting) {
            places.insert(start.sitting, found.len());
            found.push(begun(at, start));
        }
    }
    for answer in answers(events) {
        if let Some(place) = places.get(&answer.sitting) {
            note(&mut found[*place], answer);
        }
    }
    found
}

/// Cases that were finished, in the order they were started.
pub fn finished_cases(events: &[Event]) -> Vec<FinishedCase> {
    let finished = finishes(events);
    starts(events)
        .filter_map(|(started, start)| {
            Some(FinishedCase {
                sitting: start.sitting,
                case: start.case.clone(),
                seed: start.seed,
                with: start.with.clone(),
                started,
                finish: *finished.get(&start.sitting)?,
            })
        })
        .collect()
}

/// One sitting with its answers, finished or not.
pub fn sitting(events: &[Event], id: SittingId) -> Option<Sitting> {
    let (at, start) = starts(events).find(|(_, start)| start.sitting == id)?;
    let mut found = begun(at, start);
    for answer in answers(events).filter(|answer| answer.sitting == id) {
        note(&mut found, answer);
    }
    found.finish = finishes(events).get(&id).copied();
    Some(found)
}

fn begun(at: Moment, start: &CaseStarted) -> Sitting {
    Sitting {
        id: start.sitting,
        case: start.case.clone(),
        seed: start.seed,
        with: start.with.clone(),
        card: start.card.clone(),
        started: at,
        answers: Vec::new(),
        finish: None,
    }
}

fn note(sitting: &mut Sitting, answer: &CaseAnswered) {
    if sitting.answer_to(&answer.decision).is_none() {
        sitting.answers.push(answer.clone());
    }
}

/// The first start of each sitting.
fn starts(events: &[Event]) -> impl Iterator<Item = (Moment, &CaseStarted)> {
    let mut seen = BTreeSet::new();
    events.iter().filter_map(move |event| match &event.what {
        What::CaseStarted(start) if seen.insert(start.sitting) => Some((event.at, start)),
        _ => None,
    })
}

fn answers(events: &[Event]) -> impl Iterator<Item = &CaseAnswered> {
    events.iter().filter_map(|event| match &event.what {
        What::CaseAnswered(answer) => Some(answer),
        _ => None,
    })
}

/// The first end of each sitting.
fn finishes(events: &[Event]) -> BTreeMap<SittingId, Finish> {
    let mut found = BTreeMap::new();
    for event in events {
        if let What::CaseFinished(end) = &event.what {
            found.entry(end.sitting).or_insert(Finish {
                at: event.at,
                per_cent: end.per_cent,
            });
        }
    }
    found
}

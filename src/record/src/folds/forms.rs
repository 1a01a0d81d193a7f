//! Practice forms: under way, paused, handed in.

use std::collections::{BTreeMap, BTreeSet, HashMap};

use crate::event::Event;
use crate::moment::Moment;
use crate::study::{FormBegun, QuestionAnswered};
use crate::values::SittingId;
use crate::what::What;

/// A practice form, with everything needed to go on with it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Form {
    /// How it was begun: its questions, code, minutes and pass mark.
    pub begun: FormBegun,
    /// When it was begun.
    pub at: Moment,
    /// The answers that hold, by the id of the question.
    pub answers: BTreeMap<String, QuestionAnswered>,
    /// The ids of the questions that are flagged.
    pub flagged: BTreeSet<String>,
    /// Every pause, with its end if it is over.
    pub pauses: Vec<(Moment, Option<Moment>)>,
    /// When it was handed in, if it was.
    pub finished: Option<Moment>,
    /// When anything was last done on it.
    pub last: Moment,
}

impl Form {
    /// Whether it rests now.
    pub fn is_paused(&self) -> bool {
        self.finished.is_none() && self.pauses.last().is_some_and(|(_, end)| end.is_none())
    }

    /// Seconds in pauses until `now`. A clock moved back makes none.
    pub fn seconds_paused(&self, now: Moment) -> u32 {
        let until = self.finished.unwrap_or(now);
        self.pauses
            .iter()
            .map(|(from, end)| seconds(*from, end.unwrap_or(until)))
            .fold(0, u32::saturating_add)
    }

    /// Seconds worked on it until `now`, or until it was handed in.
    pub fn seconds_worked(&self, now: Moment) -> u32 {
        seconds(self.at, self.finished.unwrap_or(now)).saturating_sub(self.seconds_paused(now))
    }
}

fn seconds(from: Moment, to: Moment) -> u32 {
    let seconds = to.utc_ms.saturating_sub(from.utc_ms).max(0) / 1000;
    u32::try_from(seconds).unwrap_or(u32::MAX)
}

/// All forms, in the order in which they were begun.
pub fn forms(events: &[Event]) -> Vec<Form> {
    gathered(events, None)
}

/// One form.
pub fn form(events: &[Event], id: SittingId) -> Option<Form> {
    gathered(events, Some(id)).pop()
}

fn gathered(events: &[Event], only: Option<SittingId>) -> Vec<Form> {
    let mut forms: Vec<Form> = Vec::new();
    let mut places: HashMap<SittingId, usize> = HashMap::new();
    for event in events {
        if let What::FormBegun(it) = &event.what {
            if only.is_none_or(|id| id == it.form) && !places.contains_key(&it.form) {
                places.insert(it.form, forms.len());
                forms.push(Form {
                    begun: it.clone(),
                    at: event.at,
                    answers: BTreeMap::new(),
                    flagged: BTreeSet::new(),
                    pauses: Vec::new(),
                    finished: None,
                    last: event.at,
                });
            }
            continue;
        }
        let id = match &event.what {
            What::QuestionAnswered(it) => it.sitting,
            What::FormFlagged(it) => it.form,
            What::FormPaused(it) => it.form,
            What::FormFinished(it) => it.form,
            _ => continue,
        };
        if let Some(place) = places.get(&id) {
            note(&mut forms[*place], event);
        }
    }
    forms
}

/// What was done after a form was handed in, in another tab, changes nothing.
fn note(form: &mut Form, event: &Event) {
    if form.finished.is_some() {
        return;
    }
    form.last = event.at;
    match &event.what {
        What::QuestionAnswered(it) => {
            form.answers.insert(it.question.clone(), it.clone());
        }
        What::FormFlagged(it) if it.flagged => {
            form.flagged.insert(it.question.clone());
        }
        What::FormFlagged(it) => {
            form.flagged.remove(&it.question);
        }
        What::FormPaused(it) => rest(form, it.paused, event.at),
        What::FormFinished(_) => form.finished = Some(event.at),
        _ => {}
    }
}

/// A pause within a pause is the same pause.
fn rest(form: &mut Form, paused: bool, at: Moment) {
    if paused && !form.is_paused() {
        form.pauses.push((at, None));
    } else if !paused && let Some((_, end)) = form.pauses.last_mut() {
        end.get_or_insert(at);
    }
}

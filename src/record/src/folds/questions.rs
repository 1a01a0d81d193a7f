//! The sittings that questions were answered in, and the questions that were
//! set aside.

use std::collections::BTreeMap;

use crate::event::Event;
use crate::moment::Moment;
use crate::study::QuestionAnswered;
use crate::values::SittingId;
use crate::what::What;

/// A sitting of questions, with everything needed to go on with it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Study {
    /// Which sitting.
    pub id: SittingId,
    /// The minutes that were chosen.
    pub minutes: u16,
    /// The ids of the questions it was composed of.
    pub questions: Vec<String>,
    /// When it was begun.
    pub begun: Moment,
    /// The answers, in the order given; a question may come back.
    pub answers: Vec<QuestionAnswered>,
    /// When it ended, if it did.
    pub ended: Option<Moment>,
}

/// One sitting of questions.
pub fn study(events: &[Event], id: SittingId) -> Option<Study> {
    let mut found: Option<Study> = None;
    for event in events {
        match &event.what {
            What::SittingBegun(it) if it.sitting == id && found.is_none() => {
                found = Some(Study {
                    id,
                    minutes: it.minutes,
                    questions: it.questions.clone(),
                    begun: event.at,
                    answers: Vec::new(),
                    ended: None,
                });
            }
            What::QuestionAnswered(it) if it.sitting == id => {
                if let Some(study) = &mut found {
                    study.answers.push(it.clone());
                }
            }
            What::SittingEnded(it) if it.sitting == id => {
                if let Some(study) = &mut found {
                    study.ended.get_or_insert(event.at);
                }
            }
            _ => {}
        }
    }
    found
}

/// The latest sitting of questions that was begun and not ended, with the
/// minutes that were chosen.
pub fn study_under_way(events: &[Event]) -> Option<(SittingId, u16)> {
    let mut open: Vec<(SittingId, u16)> = Vec::new();
    for event in events {
        match &event.what {
            What::SittingBegun(it) => open.push((it.sitting, it.minutes)),
            What::SittingEnded(it) => open.retain(|(id, _)| *id != it.sitting),
            _ => {}
        }
    }
    open.pop()
}

/// The questions that are set aside, by id, with the note.
pub fn aside(events: &[Event]) -> BTreeMap<String, String> {
    let mut notes = BTreeMap::new();
    for event in events {
        if let What::QuestionSetAside(it) = &event.what {
            match &it.note {
                Some(note) => notes.insert(it.question.clone(), note.clone()),
                None => notes.remove(&it.question),
            };
        }
    }
    notes
}

//! What there is, by name: the small part of a catalogue that the first screen
//! needs. It is fetched with the page, and the rest after it.

use crate::{
    Catalogue,
    cases::Level,
    ids::{CaseId, LessonId},
    reading_order::in_reading_order,
};
use serde::{Deserialize, Serialize};

/// What there is, by name.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Outline {
    /// All lessons, in the order in which they are best read.
    pub lessons: Vec<LessonLine>,
    /// All case frames, the easiest first.
    pub cases: Vec<CaseLine>,
}

/// A lesson by name.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct LessonLine {
    /// Which lesson.
    pub id: LessonId,
    /// What it is called.
    pub title: String,
    /// How many minutes it takes to read, at least one.
    pub minutes: u16,
    /// Whether it is the lesson of the procedure with the same id.
    pub of_procedure: bool,
}

/// A case frame by name.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct CaseLine {
    /// Which frame.
    pub id: CaseId,
    /// What it is called.
    pub title: String,
    /// How hard its patients are.
    pub level: Level,
}

impl Outline {
    /// The outline of a catalogue.
    pub fn of(catalogue: &Catalogue) -> Self {
        let lessons = in_reading_order(catalogue).into_iter();
        let mut cases: Vec<_> = catalogue
            .cases
            .iter()
            .map(|frame| CaseLine {
                id: frame.id.clone(),
                title: frame.title.clone(),
                level: frame.level,
            })
            .collect();
        cases.sort_by_key(|line| line.level);
        Self {
            lessons: lessons
                .map(|lesson| LessonLine {
                    id: lesson.id.clone(),
                    title: lesson.title.clone(),
                    minutes: lesson.minutes(),
                    of_procedure: catalogue.procedure(&lesson.id.as_str().into()).is_some(),
                })
                .collect(),
            cases,
        }
    }
}

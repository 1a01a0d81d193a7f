//! What comes next: the first lesson not read, the first case not done.

use catalogue::outline::{CaseLine, LessonLine, Outline};
use record::{Event, folds};
use std::collections::BTreeSet;

/// What was met so far, as Today has to know it: one look at a long record for
/// all that stands there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Met {
    /// The lessons that were read.
    pub lessons: BTreeSet<String>,
    /// The cases that wait to be gone on with, the latest first.
    pub open: Vec<Open>,
    /// The cases that were ever begun.
    pub cases: BTreeSet<String>,
}

/// A case that waits to be gone on with.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Open {
    /// The id of the case frame.
    pub case: String,
    /// The seed from which the patient was drawn.
    pub seed: u64,
    /// The finding that the patient had to have beyond the frame, if one.
    pub with: Option<String>,
    /// How many decisions were made.
    pub answers: usize,
}

impl Met {
    /// By these events.
    pub fn of(events: &[Event]) -> Self {
        let open = folds::under_way(events).into_iter().rev().map(|it| Open {
            case: it.case,
            seed: it.seed,
            with: it.with,
            answers: it.answers.len(),
        });
        let open: Vec<Open> = open.collect();
        let finished = folds::finished_cases(events).into_iter().map(|it| it.case);
        Self {
            lessons: folds::lessons_read(events).into_keys().collect(),
            cases: finished
                .chain(open.iter().map(|it| it.case.clone()))
                .collect(),
            open,
        }
    }

    /// Whether nothing was met at all.
    pub fn nothing(&self) -> bool {
        self.lessons.is_empty() && self.cases.is_empty()
    }
}

/// The next lesson to read; none when all are read.
pub fn lesson<'o>(outline: &'o Outline, met: &Met) -> Option<&'o LessonLine> {
    let mut lessons = outline.lessons.iter();
    lessons.find(|it| !met.lessons.contains(it.id.as_str()))
}

/// The next case to take: the easiest that was never begun.
pub fn case<'o>(outline: &'o Outline, met: &Met) -> Option<&'o CaseLine> {
    let mut cases = outline.cases.iter();
    cases.find(|it| !met.cases.contains(it.id.as_str()))
}

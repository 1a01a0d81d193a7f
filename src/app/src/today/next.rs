//! What comes next: the first lesson not read, the first case not done.

use catalogue::outline::{CaseLine, LessonLine, Outline};
use record::{Event, folds};
use std::collections::BTreeSet;

/// The next lesson to read; none when all are read.
pub fn lesson<'o>(outline: &'o Outline, events: &[Event]) -> Option<&'o LessonLine> {
    let read = folds::lessons_read(events);
    let mut lessons = outline.lessons.iter();
    lessons.find(|it| !read.contains_key(it.id.as_str()))
}

/// The next case to take: the easiest that was never begun.
pub fn case<'o>(outline: &'o Outline, events: &[Event]) -> Option<&'o CaseLine> {
    let open = folds::under_way(events).into_iter().map(|it| it.case);
    let finished = folds::finished_cases(events).into_iter().map(|it| it.case);
    let begun: BTreeSet<String> = open.chain(finished).collect();
    let mut cases = outline.cases.iter();
    cases.find(|it| !begun.contains(it.id.as_str()))
}

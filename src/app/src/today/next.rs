//! What comes next: the first lesson not read, the first case not done.

use crate::procedures::in_reading_order;
use catalogue::{Catalogue, cases::CaseFrame, lesson::Lesson};
use record::{Event, folds};
use std::collections::BTreeSet;

/// The next lesson to read; none when all are read.
pub fn lesson<'c>(catalogue: &'c Catalogue, events: &[Event]) -> Option<&'c Lesson> {
    let read = folds::lessons_read(events);
    let lessons = in_reading_order(catalogue);
    lessons
        .into_iter()
        .find(|it| !read.contains_key(it.id.as_str()))
}

/// The next case to take: the easiest that was never begun.
pub fn case<'c>(catalogue: &'c Catalogue, events: &[Event]) -> Option<&'c CaseFrame> {
    let open = folds::under_way(events).into_iter().map(|it| it.case);
    let finished = folds::finished_cases(events).into_iter().map(|it| it.case);
    let begun: BTreeSet<String> = open.chain(finished).collect();
    let fresh = catalogue
        .cases
        .iter()
        .filter(|it| !begun.contains(it.id.as_str()));
    fresh.min_by_key(|it| it.level)
}

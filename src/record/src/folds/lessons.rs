//! Which lessons were read.

use std::collections::BTreeMap;

use crate::event::Event;
use crate::moment::Moment;
use crate::what::What;

/// The lessons that were read to their end, by id, with the latest time.
pub fn lessons_read(events: &[Event]) -> BTreeMap<String, Moment> {
    let mut read: BTreeMap<String, Moment> = BTreeMap::new();
    for event in events {
        if let What::LessonRead(it) = &event.what {
            let last = read.entry(it.lesson.clone()).or_insert(event.at);
            *last = event.at.max(*last);
        }
    }
    read
}

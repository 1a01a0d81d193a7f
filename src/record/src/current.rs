//! The segment that a log is filling.

use crate::event::Event;
use crate::key::SegmentKey;
use crate::line;
use crate::segment::{self, CAPACITY};

/// Events that stand in the store under `key`, and room for more.
#[derive(Debug)]
pub struct Current {
    /// Where it is kept.
    pub key: SegmentKey,
    events: Vec<Event>,
    stored: Option<String>,
}

impl Current {
    /// An empty segment, not yet in the store.
    pub fn new(key: SegmentKey) -> Self {
        Self {
            key,
            events: Vec::new(),
            stored: None,
        }
    }

    /// The empty segment after this one.
    pub fn next(&self) -> Self {
        Self::new(SegmentKey {
            number: self.key.number.saturating_add(1),
            ..self.key
        })
    }

    /// How many more events it takes.
    pub fn room(&self) -> usize {
        CAPACITY - self.events.len()
    }

    /// Whether it takes no more.
    pub fn is_full(&self) -> bool {
        self.room() == 0
    }

    /// The text that was last put into the store.
    pub fn stored(&self) -> Option<&str> {
        self.stored.as_deref()
    }

    /// Its text with further events.
    pub fn text_with<'a>(&self, more: impl ExactSizeIterator<Item = &'a Event>) -> String {
        let count = self.events.len() + more.len();
        let mut lines = String::new();
        if let Some((_header, written)) = self.stored().and_then(|text| text.split_once('\n')) {
            lines.push_str(written);
        }
        for event in more {
            line::write(event, &mut lines);
        }
        segment::write(self.key, count, &lines)
    }

    /// Notes that `text`, with these further events, is in the store.
    pub fn accept(&mut self, more: impl Iterator<Item = Event>, text: String) {
        self.events.extend(more);
        self.stored = Some(text);
    }

    /// The events it held.
    pub fn into_events(self) -> Vec<Event> {
        self.events
    }
}

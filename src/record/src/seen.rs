//! What a log remembers of the texts it read or wrote, to know what changed.

use crate::checksum;

/// What is remembered of a text in the store.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Seen {
    len: usize,
    checksum: u32,
    /// Whole and full: its writer has no more reason to change it.
    pub settled: bool,
}

impl Seen {
    /// Remembers `text`.
    pub fn new(text: &str, settled: bool) -> Self {
        Self {
            len: text.len(),
            checksum: checksum::of(text.as_bytes()),
            settled,
        }
    }

    /// Whether `text` is the one remembered.
    pub fn is_of(&self, text: &str) -> bool {
        self.len == text.len() && self.checksum == checksum::of(text.as_bytes())
    }
}

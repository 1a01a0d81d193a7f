//! What became of a change to the log, in words for the student.

use core::fmt;

use crate::event::Id;
use crate::store::StoreError;

/// Events that are only in memory, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unsaved {
    /// How many; may be 0 when the store failed before anything was appended.
    pub events: usize,
    /// What the store said.
    pub why: StoreError,
}

impl fmt::Display for Unsaved {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "{} You can go on, but what you do now lasts only until this page is closed: \
             export your record to keep it.",
            self.why
        )
    }
}

/// What became of an appended event.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Appended {
    /// The id it was given.
    pub id: Id,
    /// `None` when everything is in the store.
    pub unsaved: Option<Unsaved>,
}

/// What an import brought.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Imported {
    /// Events that were not in the record before.
    pub new: usize,
    /// Events that were there already.
    pub known: usize,
    /// `None` when everything is in the store.
    pub unsaved: Option<Unsaved>,
}

//! What can happen in a class: an assignment taken up at a seat, its tasks
//! begun, the whole handed in; a skill checked off.

use serde::{Deserialize, Serialize};

use crate::values::SittingId;

/// An assignment was taken up at a seat, or once more for another try.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AssignmentTaken {
    /// The run at the assignment that begins.
    pub run: SittingId,
    /// What tells the assignment from others: eight hexadecimal digits.
    pub assignment: String,
    /// All it says, in the letters of its code.
    pub code: String,
    /// The number of the seat.
    pub seat: u16,
    /// Which try it is, from 1.
    pub attempt: u8,
    /// What it is called.
    pub title: String,
    /// The last day on which it can be handed in, in days from 1 January 1970.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub due: Option<u16>,
    /// How many tasks it has.
    pub tasks: u16,
    /// Its tasks in a few words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub about: Option<String>,
    /// How many minutes all of them take an unhurried student, as far as that
    /// was known when it was taken up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minutes: Option<u16>,
}

/// A task of an assignment was begun.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TaskBegun {
    /// The run at the assignment.
    pub run: SittingId,
    /// The place of the task, from 0.
    pub place: u16,
    /// The sitting in which it is done.
    pub sitting: SittingId,
}

/// An assignment was handed in: its code was made.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HandedIn {
    /// The run at the assignment.
    pub run: SittingId,
    /// The code of the hand-in, in letters.
    pub code: String,
}

/// A skill was checked off on a person's work, step by step.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SkillChecked {
    /// The id of the procedure.
    pub procedure: String,
    /// The names of the steps that were done as they should be.
    pub done: Vec<String>,
    /// The names of the steps that were not.
    pub missed: Vec<String>,
    /// Whether one of those is a critical step.
    pub critical: bool,
    /// Whether whoever watched counts the skill as shown.
    pub shown: bool,
}

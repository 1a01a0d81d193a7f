//! What a student hands in: responses and times, and the number of a seat. No
//! name, no marks: those are worked out again where it is read.

mod code;
pub mod inbox;
mod made;
mod outcome;
mod row;

pub use code::MOST_TYPED;
pub use inbox::Inbox;
pub use outcome::{Outcome, Received};
pub use row::{Cell, Choice, Column, Mark, Row, Table, Taken};

use crate::assignment::Seat;
use crate::bank::Version;
use crate::task::Response;

/// The most responses of one hand-in.
pub const MOST_RESPONSES: usize = 4096;

/// What is handed in. It is self-reported: made on the student's device, by a
/// program in the student's hands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HandIn {
    /// The bank that the tasks were drawn from.
    pub bank: Version,
    /// The assignment, as [`Assignment::id`](crate::assignment::Assignment::id) tells it.
    pub assignment: u32,
    /// The seat.
    pub seat: Seat,
    /// Which try it is, from 1.
    pub attempt: u8,
    /// When it was finished, in minutes from 1 January 1970 by the student's
    /// own clock and time zone, so that the day is the one that the student saw.
    pub finished: u32,
    /// The responses, task by task in the order of the assignment's slots, part by part.
    pub responses: Vec<Vec<Response>>,
}

/// What is said wherever results of hand-ins are shown.
pub const SELF_REPORTED: &str = "Hand-ins are self-reported. They were made on the students' own devices, without supervision; they show practice, and do not take the place of an examination.";

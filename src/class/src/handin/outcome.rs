//! What became of each thing that was read.

use crate::assignment::Seat;
use crate::refusal::Refusal;
use core::fmt;

/// What became of a line, a link or a symbol.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// It was graded and counts.
    Accepted(Seat),
    /// It is a part of a hand-in of which others are still missing.
    Part {
        /// Which part, from 1.
        number: u8,
        /// Of how many.
        of: u8,
        /// How many are still missing.
        missing: u8,
    },
    /// It is no hand-in that can be read.
    Refused(Refusal),
    /// It is a hand-in to another assignment.
    OtherAssignment(Seat),
    /// It was read before.
    Duplicate(Seat),
    /// The same seat and try was handed in again later.
    Older(Seat),
    /// It is one try more than was allowed.
    TooManyTries(Seat),
    /// Its responses do not fit what was set.
    DoesNotFit(Seat),
    /// There is nothing on the line.
    Nothing,
}

/// What became of something, and where it stood.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Received {
    /// Which one it was of all that were read, from 1.
    pub number: usize,
    /// What became of it.
    pub outcome: Outcome,
}

impl Outcome {
    /// One word for it, to sort by.
    pub fn word(self) -> &'static str {
        match self {
            Self::Accepted(_) => "accepted",
            Self::Part { .. } => "in parts",
            Self::Refused(refusal) => refusal.word(),
            Self::OtherAssignment(_) => "foreign",
            Self::Duplicate(_) => "duplicate",
            Self::Older(_) => "older",
            Self::TooManyTries(_) => "one try too many",
            Self::DoesNotFit(_) => "does not fit",
            Self::Nothing => "empty",
        }
    }
}

impl fmt::Display for Outcome {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Accepted(Seat(seat)) => write!(f, "Seat {seat}: graded and counted."),
            Self::Part { number, of, missing } => match missing {
                0 => write!(f, "Part {number} of {of}: all parts are there."),
                1 => write!(f, "Part {number} of {of}: one more is missing. Read that one too."),
                _ => write!(f, "Part {number} of {of}: {missing} more are missing. Read those too."),
            },
            Self::Refused(Refusal::OtherBank) => f.write_str(
                "This hand-in answers cases and questions from another state of the lessons than the one on this device. They cannot be drawn again here, so it is not graded. Read it on a device that still has that state, or set the assignment again.",
            ),
            Self::Refused(refusal) => refusal.fmt(f),
            Self::OtherAssignment(Seat(seat)) => write!(
                f,
                "Seat {seat}: this is handed in to another assignment. Open that one and read it there."
            ),
            Self::Duplicate(Seat(seat)) => {
                write!(f, "Seat {seat}: the same hand-in was read before. It counts once.")
            }
            Self::Older(Seat(seat)) => write!(
                f,
                "Seat {seat}: the same try was handed in again later. The later one counts."
            ),
            Self::TooManyTries(Seat(seat)) => write!(
                f,
                "Seat {seat}: this is one try more than the assignment allows. It does not count."
            ),
            Self::DoesNotFit(Seat(seat)) => write!(
                f,
                "Seat {seat}: the answers do not fit what this seat was set. Ask for the seat's number, and for the hand-in again."
            ),
            Self::Nothing => f.write_str("There is nothing on this line."),
        }
    }
}

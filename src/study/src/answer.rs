//! One answer, as the record keeps it. Memory and mastery are folds over
//! answers, so a record can be replayed at any time.

use crate::day::Day;
use serde::{Deserialize, Serialize};

/// What happened when a question was put to the student.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "four things that each did or did not happen, in any combination"
)]
pub struct Answer {
    /// The id of the question.
    pub question: String,
    /// The id of its competency when it was asked, so that the answer can still
    /// be counted by subject when the question has left the catalogue.
    pub competency: String,
    /// Whether it was right.
    pub right: bool,
    /// Whether a hint was shown first.
    pub hint: bool,
    /// Whether the student marked it as unsure.
    pub unsure: bool,
    /// How long it took, in whole seconds; 0 where it was not timed.
    pub seconds: u32,
    /// Whether it was the first attempt at this showing, with neither the
    /// question nor its answer on screen within the last 14 days.
    pub first_try: bool,
    /// The day of study on which it was given.
    pub day: Day,
}

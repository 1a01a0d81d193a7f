//! Simulated students: what the schedule is worth, measured on students whose
//! memory is known because it is made up.
//!
//! The truth follows its own parameters, drawn anew for each student, so that the
//! schedule is not tested against itself. A simulation shows that one way of
//! study beats another under these assumptions; it proves nothing of people.

mod bank;
mod chance;
mod compare;
mod student;

pub use bank::bank;
pub use chance::Chance;
pub use compare::{Comparison, Outcome, Setting, Way, compare};
pub use student::Student;

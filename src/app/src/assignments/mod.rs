//! Assignments, on the student's side: taken up at a seat, done task by task,
//! handed in as a code. What the class knows of a student is the number of a seat.
//!
//! - `code`: from letters to an assignment
//! - `set`: an assignment that a link or a typed code brought
//! - `list`, `one`: what was taken up on this device
//! - `run`: beginning tasks, and the hand-in; `given`: what was answered
//! - `task`: a mix, a number, a question that is done within its assignment
//! - `outward`: a code on its way to other people
//! - `reported`: what a school's system is told, where the page runs in one
//! - `words`: tasks and days in words

mod code;
mod given;
mod list;
mod one;
mod outward;
mod reported;
mod run;
mod set;
mod task;
mod words;

pub use code::{bank, clinic_with, code_of, graders};
pub use list::AssignmentsScreen;
pub use one::AssignmentScreen;
pub use outward::{Outward, Symbol};
pub use run::{form_drawn, minutes, take_up};
pub use set::SetScreen;
pub use task::TaskScreen;
pub use words::{due, expected, id, id_of, task, tasks};

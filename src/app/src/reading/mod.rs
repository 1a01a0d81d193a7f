//! Reading a tray: what it would be laid for.
//!
//! - `free`: lay anything, and see what it would be for
//! - `exercise`: a drawn tray, three questions, then the evidence
//! - `evidence`, `words`: what each thing says, in words
//!
//! Readings go by the standard set-ups: a tray means the same to everybody.

mod evidence;
mod exercise;
mod free;
mod laid;
mod ranked;
mod words;

pub use exercise::ReadingExerciseScreen;
pub use free::ReadingScreen;

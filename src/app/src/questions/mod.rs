//! Questions, for every screen that asks, shows or counts them.
//!
//! - `bank`: all questions, made ready in the background
//! - `shown`: what a student has shown and remembers, kept up with the record
//! - `studied`: how a student stands by it on the day of study
//! - `following`: what follows from that, worked out once for all screens
//! - `plan`: the examination day, the minutes a day, the pass mark
//! - `days`: days of study in words
//! - `given`: an answer as the record keeps it
//! - `draft`: an answer that was not given yet
//! - `hint`, `clue`: a hint that does not give the answer away, and its button
//! - `aside`: a question set aside with a note
//! - `ask`: a question that waits for its answer, a file for each form
//! - `told`: a question that was answered
//!
//! What is right, when it comes back and what it shows, `study` knows.

mod aside;
pub mod ask;
mod bank;
mod clue;
pub mod days;
mod draft;
mod following;
mod given;
mod hint;
pub mod plan;
mod shown;
mod studied;
pub mod told;

pub use aside::SetAside;
pub use bank::{Questions, Ready, ReadyFor, at_hand, awaited, prepare, questions};
pub use clue::{Clue, ruled_out};
pub use draft::{Draft, Kept};
pub use following::following;
pub use given::{answer, judged};
pub use hint::{Hint, hint};
pub use studied::{Studied, studied};

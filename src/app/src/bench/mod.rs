//! The bench: mixing by hand, and working the numbers.
//!
//! - `home`: what there is to do, and what was done lately
//! - `mixing`: a mix made by hand, against the clock or in words
//! - `numbers`: the tools for numbers, with their drawings
//! - `exercise`: numbers to be worked, one after another
//!
//! Nothing here reckons or judges: it asks [`clinic::mixing`] and [`clinic::numbers`].

#![expect(
    clippy::large_types_passed_by_value,
    reason = "a session or a sitting is a handle of signals, and every view gets a copy"
)]

mod exercise;
mod home;
mod mixing;
mod numbers;

pub use exercise::{ExerciseScreen, NumberTask, worked_out};
pub use home::BenchScreen;
pub use mixing::{MixScreen, MixTask, handed_over};
pub use numbers::{ToolScreen, ToolsScreen};

//! Between instructor and students: assignments, hand-ins, class reports, packs
//! and exchange formats.
//!
//! - [`bank`]: which state of what is taught a code speaks of
//! - [`task`]: what is set, and what is answered and graded
//! - [`assignment`]: what an instructor sets, and its codes
//! - [`handin`]: what a student hands in, and how many of them are read
//! - [`cases`], [`mixes`], [`numbers`], [`questions`], [`forms`]: what each kind
//!   of task is for a seat, and grading it; [`graders`]: all of them as one
//! - [`qr`]: codes as symbols for a camera
//! - [`report`]: what a class can do, and how far the numbers can be trusted
//! - [`exchange`]: tables, calendars and packages for other systems
//! - [`pack`]: what an instructor writes beside the built-in catalogue
//! - [`roster`]: names for seats, kept on the instructor's device alone
//!
//! A hand-in carries responses only; what they are worth is worked out again
//! on the instructor's device, by a [`task::Grader`]. Nothing here knows the
//! clock or chance: days, moments and seeds come in as arguments.

pub mod assignment;
pub mod bank;
pub mod cases;
mod draw;
pub mod exchange;
pub mod forms;
pub mod graders;
pub mod handin;
pub mod mixes;
pub mod numbers;
pub mod pack;
pub mod qr;
pub mod questions;
pub mod refusal;
pub mod report;
pub mod roster;
pub mod task;
mod wire;

pub use wire::check::crc32 as checksum;

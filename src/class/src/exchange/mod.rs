//! Forms that other systems read. None of them needs a server of ours: each is
//! a file that the instructor hands on.
//!
//! - [`csv`]: tables for spreadsheets
//! - [`json`]: the class report, with a published schema
//! - [`calendar`]: the day an assignment is due
//! - [`scorm`]: a package that runs inside a school's system
//! - [`qti`]: questions for other banks
//! - [`xapi`]: statements, as a file
//! - [`zip`]: what packages are wrapped in
//!
//! Signing in through a school's system and sending results back to it needs a
//! server that keeps a key, and is not offered.

pub mod calendar;
pub mod csv;
pub mod json;
pub mod qti;
pub mod scorm;
pub mod xapi;
mod xml;
pub mod zip;

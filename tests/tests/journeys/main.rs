//! Journeys through the built page in real browsers, at phone size unless a
//! journey says otherwise. `cargo site test browser` runs them.

mod assignments;
mod bench;
mod cases;
mod class;
mod codes;
mod collect;
mod engines;
mod find;
mod keeping;
mod numbers;
mod offline;
mod packs;
mod reasoner;
mod report;
mod scorm;
mod screens;
mod shell;
mod study;
mod tools;
mod update;
mod visit;

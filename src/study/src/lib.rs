//! What to study and how it goes: questions written from the catalogue, memory, mastery, readiness and practice forms.

pub mod answer;
pub mod day;
pub mod form;
pub mod item;
pub mod mastery;
pub mod memory;
pub mod numeric;
pub mod simulation;
pub mod sitting;
mod slices;

pub mod families;
pub mod question;

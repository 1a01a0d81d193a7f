//! What the record says: each answer a pass over the events in their order.

mod class;
mod competency;
mod evidence;
mod forms;
mod lessons;
mod mixes;
mod questions;
mod settings;
mod sittings;
mod unknown;

pub use class::{Assigned, Begun, assigned, assignments, skills_checked};
pub use competency::{Tally, by_competency};
pub use evidence::{Answered, Evidence, evidence};
pub use forms::{Form, form, forms};
pub use lessons::lessons_read;
pub use mixes::{Mixed, mixes};
pub use questions::{Study, aside, study, study_under_way};
pub use settings::settings;
pub use sittings::{Finish, FinishedCase, Sitting, finished_cases, sitting, under_way};
pub use unknown::unknown_kinds;

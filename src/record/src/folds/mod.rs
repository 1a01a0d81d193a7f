//! What the record says: each answer a pass over the events in their order.

mod competency;
mod lessons;
mod settings;
mod sittings;
mod unknown;

pub use competency::{Tally, by_competency};
pub use lessons::lessons_read;
pub use settings::settings;
pub use sittings::{Finish, FinishedCase, Sitting, finished_cases, sitting, under_way};
pub use unknown::unknown_kinds;

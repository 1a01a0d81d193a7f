//! Practice forms: assembled examinations to the blueprint, the same for everyone
//! who has the same code, and what their result says.
//!
//! Quotas by largest remainder, a seeded fill, then swaps inside a competency
//! with priced violations, all in whole numbers so that every device builds the
//! same form (weighted deviations: Swanson and Stocking 1993).

mod assemble;
mod candidate;
mod code;
mod draft;
mod outcome;
mod parallel;
mod quota;
mod request;

pub use assemble::{assemble, assemble_in_slices};
pub use code::{SharedForm, Stale};
pub use outcome::{Given, Outcome, Part, Pauses};
pub use parallel::{Parallel, compare};
pub use quota::{quotas, rounding};
pub use request::{Form, Mode, Request, Unfit};

//! What a class can do, item by item and seat by seat, and how far the numbers
//! can be trusted. Where a number would mean nothing, words stand in its place.
//!
//! - [`Report::of`]: all of it; [`Work`]: the same in steps, for a page that
//!   shows how far it is and can stop
//! - [`Told`]: a number, or why there is none
//!
//! An item is right or not; acceptable ways count as right, a blank as wrong.
//! Reliability is worked out over the items that every seat was asked.

mod again;
mod consistency;
mod crosscheck;
mod flags;
mod item;
pub mod measure;
mod options;
mod reliability;
mod scores;
mod seat;
mod talk;
mod told;
mod work;

pub use again::{Again, CommonFault, Topic};
pub use consistency::Consistency;
pub use crosscheck::{CrossChecks, dependability};
pub use flags::Flag;
pub use item::{Gate, ItemReport};
pub use options::OptionReport;
pub use reliability::Reliability;
pub use scores::Scores;
pub use seat::{Part, SeatReport};
pub use talk::{Talk, Why};
pub use told::{Missing, Told};
pub use work::{Progress, Report, Tries, Work};

//! Teeth by number: the three notations, when teeth come and go, and where
//! they stand on a drawn pair of arches.

mod arch;
mod eruption;
mod notation;

pub use arch::{Placed, arch};
pub use eruption::{Moment, eruption, facts};
pub use notation::{System, read, working, written};

//! The instructor's desk: assign, collect, see. All of it stays on the
//! instructor's device.
//!
//! - `home`: what was set, and the ways on
//! - `assign`: choosing what is set; `issued`: what goes out of it
//! - `collect`: reading hand-ins; `hand_in`: one that came by link
//! - `grading`: hand-ins graded again, in steps
//! - `report`: what they come to
//! - `roster`: names for seats
//! - `check_off`: the sheet by which a procedure is checked off
//! - `kept`, `sealed`: what this device keeps

mod assign;
mod check_off;
mod collect;
mod grading;
mod hand_in;
mod home;
mod issued;
mod kept;
mod report;
mod roster;
mod sealed;
mod way;

pub use assign::AssignScreen;
pub use check_off::CheckOffScreen;
pub use collect::CollectScreen;
pub use hand_in::HandInScreen;
pub use home::DeskScreen;
pub use issued::IssuedScreen;
pub use report::ReportScreen;
pub use roster::RosterScreen;

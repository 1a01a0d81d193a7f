//! SCORM 1.2: an assignment that runs inside a school's system. The package
//! holds the page itself; while it runs, the page finds the system's object
//! `API` in a window above it and tells it what [`Session::values`] gives. Facts
//! of the standard: value from memory.
//!
//! What the page has to do, in this order: `LMSInitialize("")`; `LMSGetValue` of
//! what was suspended; `LMSSetValue` for every pair; `LMSCommit("")` after every
//! item; `LMSFinish("")` when the page is left. Interactions are only written,
//! each number once; the page passes those that are new. Where there is no
//! `API`, it runs as it does everywhere else.

mod interaction;
mod kept;
mod manifest;
mod session;

pub use interaction::{Interaction, Said, identifier};
pub use kept::Kept;
pub use manifest::{LAUNCH, package};
pub use session::{MOST_SUSPENDED, ScormError, Session, Status, time};

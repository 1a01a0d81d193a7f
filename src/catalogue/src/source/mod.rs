//! Reading the source files of a catalogue, with every fault at once. They
//! come from the folder `content/`, or from memory: see [`Files`].
//!
//! Files are read with serde; cross references are checked afterwards on the
//! typed catalogue. A check knows where in the data it stands as a path such as
//! `step[3].uses.cement-spatula`, and [`locate`] turns that into line and column.

mod check;
pub mod edit;
mod fault;
mod figures;
mod files;
pub mod lists;
mod locate;
mod lone;
mod markdown;
mod nearest;
mod read;

pub use fault::Fault;
pub use files::Files;
pub use lone::lesson;
pub use read::{Read, read, read_files};

//! What a bur's number says: the short number of old American lists, and the
//! fifteen digits of the international one.

mod long;
mod short;

pub use long::{LongNumber, long, long_working};
pub use short::{Short, short, short_working};

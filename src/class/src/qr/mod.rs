//! Codes as QR symbols (ISO/IEC 18004): encoding, splitting what does not fit
//! one, and putting the parts together again. Symbols are read elsewhere.
//!
//! A link goes in as two segments, the prefix as bytes and the letters as
//! capitals, which makes the symbol smaller than one segment of bytes would be.

mod join;
mod split;
mod symbol;

pub use join::{Joined, Joiner};
pub use split::{MOST_PARTS, split};
pub use symbol::Symbol;

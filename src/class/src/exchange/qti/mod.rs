//! QTI 2.2: questions for other banks, a package of choice and order items.
//! Facts of the standard: value from memory, but for its name space.

mod item;
mod package;

pub use item::{Expected, Question};
pub use package::package;

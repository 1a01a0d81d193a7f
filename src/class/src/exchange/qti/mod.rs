//! QTI 2.2: questions for other banks, a package of choices, orders and numbers.
//! Facts of the standard: value from memory, but for its name space.

mod asked;
mod item;
mod package;

pub use item::{Expected, Question};
pub use package::package;

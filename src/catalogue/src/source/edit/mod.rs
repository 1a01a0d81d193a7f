//! Changing a TOML document in place: only the text of what is changed is
//! another afterwards, so remarks and layout stay.
//!
//! - [`Tree`]: what a document says, with the place of everything in its text
//! - `change`: replacing, adding, taking out and moving

mod change;
#[cfg(test)]
mod tests;
mod tree;

pub use change::{add_copy, move_entry, put_field, remove, set};
pub use tree::{Layout, Node, Step, Tree, Value};

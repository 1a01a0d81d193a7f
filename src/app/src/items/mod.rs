//! Instruments and materials: a searchable list, and a page for each.

mod item;
mod list;
mod uses;

pub use item::ItemScreen;
pub use list::{ItemsScreen, matches};

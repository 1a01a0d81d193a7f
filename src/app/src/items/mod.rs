//! Instruments and materials: a searchable list, and a page for each.

mod alike;
mod item;
mod list;
mod meeting;
mod used;
mod uses;

pub use item::ItemScreen;
pub use list::{ItemsScreen, matches};

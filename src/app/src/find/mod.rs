//! Finding anything by a few words.

mod results;
mod screen;
pub mod words;

pub use screen::FindScreen;

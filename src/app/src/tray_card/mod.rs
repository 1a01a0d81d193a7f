//! The tray card: a procedure on paper, to be kept where trays are laid.

mod cautions;
mod paper;
mod screen;
mod steps;
mod tray;

pub use paper::Paper;
pub use screen::TrayCardScreen;

//! The frame round every screen: the bar, the notices, the safety line.

mod bar;
mod elsewhere;
mod export;
mod frame;
mod notices;
mod screen;

pub use elsewhere::NotHere;
pub use export::ExportButton;
pub use frame::Frame;

//! Packs: what an instructor writes beside the built-in catalogue, and what a
//! device makes of them.
//!
//! - `used`: the packs in use, as the first module needs to know of them
//! - `open`: the catalogue made of built-in sources and packs in use
//! - `in_use`: which packs the page was opened with, and what comes from them
//! - `from`: the line that says so beside a thing
//! - `needed`: what an assignment needs that this device does not use
//! - `kept`: the packs that this device keeps
//! - `sources`: the built-in sources, fetched where packs are written
//! - `checks`: a pack held to the checks of content
//! - `list`, `one`, `add`, `file`, `offered`: the screens

mod add;
mod changes;
mod checks;
mod faults;
mod file;
mod from;
mod in_use;
mod kept;
mod kinds;
mod list;
mod needed;
mod offered;
mod one;
mod open;
mod puts;
mod sources;
mod taking;
pub mod used;
mod whole;
mod writing;

pub use add::AddScreen;
pub use changes::LinesScreen;
pub use file::FileScreen;
pub use from::FromPack;
pub use list::PacksScreen;
pub use needed::{PackNeeded, code, set_prefix};
pub use offered::OfferedScreen;
pub use one::PackScreen;
pub use open::{Opened, built_in, with_packs};

//! Helpers shared by the checks in this folder: what the page does in real
//! browsers ([`browser`]), a hand that mixes there ([`hand`]), what other devices
//! of a class hand in ([`class`]). Checks against published values need no helper.

pub mod browser;
pub mod class;
pub mod hand;

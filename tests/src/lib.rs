//! Helpers shared by the checks in this folder: what the page does in real
//! browsers ([`browser`]). Checks against published values need no helper.

pub mod browser;

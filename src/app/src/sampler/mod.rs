//! The sampler: every family of questions, for an instructor to read.

mod families;
mod family;

pub use families::FamiliesScreen;
pub use family::FamilyScreen;

//! What to study and how it goes: questions written from the catalogue, memory, mastery, readiness and practice forms.

pub mod families;
pub mod question;

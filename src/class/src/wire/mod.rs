//! How codes are written: bytes, their checks, and letters that can be typed.

pub mod base32;
pub mod bytes;
pub mod check;
pub mod envelope;

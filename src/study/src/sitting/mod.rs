//! A sitting: one run of study of 5, 10 or 20 minutes. Reviews that are due come
//! first, then new matter in the order of the procedures being learnt.

mod compose;
mod summary;

pub use compose::{Ask, Length, Sitting, Wanted, Why, compose};
pub use summary::{Summary, Then};

//! Mixing by hand: one model for every two-part material.
//!
//! What is done comes in as [`Action`]s, time as whole milliseconds; there is
//! no clock here, and the same actions always give the same mix. A [`Mix`] can
//! be looked at ([`Look`]), tested ([`TestSeen`]) and handed over ([`Verdict`]).
//!
//! How it works: a mass ripens in seconds of the published way. The pace is 1
//! when it is done as published in the usual room (23 °C, 50 %), and is
//! multiplied by warmth, moisture, condensed water, powder, strokes and the
//! mouth, each as the material's `content/kinetics/` says. So the published
//! times are met by construction, published lines are followed exactly, and
//! everything else keeps published directions and is labelled an illustration.
//!
//! - [`units`]: seconds, grams, degrees and the like as types
//! - [`room`]: the air and its dew point
//! - [`action`]: what can be done; [`Replay`]: a list of that, to be graded again
//! - [`recipe`]: a material and a use; [`way`]: how it is mixed as published
//! - [`wanted`]: when the dentist asks for it
//! - [`offer`]: what a screen has to put out; [`plan`]: what can be done next, in words

pub mod action;
mod arithmetic;
mod bench;
mod causes;
mod doing;
pub mod feel;
mod findings;
mod judge;
pub mod look;
pub mod made;
mod mass;
pub mod mix;
pub mod offer;
pub mod plan;
mod reads;
pub mod recipe;
mod refusal;
pub mod replay;
pub mod room;
pub mod seen;
pub mod units;
pub mod verdict;
pub mod wanted;
pub mod way;

pub use action::{Action, Stroke, Vigour};
pub use bench::Ledger;
pub use look::Look;
pub use mix::Mix;
pub use offer::{Offer, steps_of};
pub use recipe::Recipe;
pub use replay::Replay;
pub use room::Room;
pub use seen::TestSeen;
pub use units::{Celsius, Grams, Millimetres, Millis, PerCent, Seconds, Share, Units};
pub use verdict::{Fault, Verdict};
pub use wanted::Wanted;

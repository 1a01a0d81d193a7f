//! Reading what a person types: a number with its unit, a ratio, a date, a
//! time. It is understood, or refused with the reason in a sentence; nothing
//! is ever taken as meant that was not written.

mod clock;
mod date;
mod field;
mod number;
mod ratio;

pub use clock::{Clock, clock};
pub use date::date;
pub use field::{
    AGE, AMOUNT, CARTRIDGES, Field, STRENGTH, Strength, TEMPERATURE, VOLUME, Volume, WEIGHT, Weight,
};
pub use number::number;
pub use ratio::{Dilution, dilution};

use std::fmt;

/// Why an entry was not taken: a sentence or two, with what to write instead.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal(pub String);

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// A refusal with this sentence.
pub(super) fn refuse<T>(sentence: impl Into<String>) -> Result<T, Refusal> {
    Err(Refusal(sentence.into()))
}

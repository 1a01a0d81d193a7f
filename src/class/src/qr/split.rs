//! Splitting what does not fit one symbol. Each part is a link of its own,
//! wrapped and checked like any other, and says which part of what it is.

use super::Symbol;
use crate::wire::{
    base32,
    bytes::Writer,
    check,
    envelope::{self, Kind},
};

/// The most parts of one thing.
pub const MOST_PARTS: usize = 64;

/// The letters of each symbol that something sealed takes: one if it fits,
/// several if not; none if it would take more than [`MOST_PARTS`]. The prefix
/// stands before the letters in every symbol.
pub fn split(prefix: &str, sealed: &[u8]) -> Option<Vec<String>> {
    let whole = base32::encode(sealed);
    if Symbol::of(prefix, &whole).is_some() {
        return Some(vec![whole]);
    }
    let bank = envelope::open(sealed).ok()?.bank;
    let sum = check::crc32(sealed);
    let parts = |of: usize| -> Option<Vec<String>> {
        let size = sealed.len().div_ceil(of);
        let of = u8::try_from(sealed.len().div_ceil(size)).ok()?;
        sealed
            .chunks(size)
            .zip(1..)
            .map(|(chunk, number)| {
                let mut body = Writer::default();
                body.byte(number).byte(of).four(sum).raw(chunk);
                let letters = base32::encode(&envelope::seal(Kind::Part, bank, &body.0));
                Symbol::of(prefix, &letters).map(|_| letters)
            })
            .collect()
    };
    (2..=MOST_PARTS).find_map(parts)
}

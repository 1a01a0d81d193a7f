//! What every code that is scanned or sent is wrapped in:
//!
//! ```text
//! version and kind   1 byte, the version in the high four bits
//! bank               4 bytes
//! body
//! CRC-32             4 bytes, of everything before it
//! ```
//!
//! The version stands first and the checksum last for ever, so that a newer
//! code is always told apart from a damaged one. The bank stands under the checksum,
//! so that a code cannot be turned into one for other lessons.

use super::{base32, bytes::Reader, bytes::Writer, check};
use crate::bank::Version;
use crate::refusal::{Check, Refusal};

/// The version that is written.
pub const VERSION: u8 = 1;

/// The most letters that are looked at: far more than the largest hand-in has.
pub const MOST: usize = 64 * 1024;

/// The fewest bytes: an envelope with nothing in it.
const LEAST: usize = 9;

/// What is inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// An assignment.
    Assignment = 1,
    /// A hand-in.
    HandIn = 2,
    /// A part of something that did not fit one symbol.
    Part = 3,
}

/// Something unwrapped.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Opened<'b> {
    /// What is inside.
    pub kind: Kind,
    /// The bank it was made for.
    pub bank: Version,
    /// What is inside.
    pub body: &'b [u8],
}

/// Wraps a body.
pub fn seal(kind: Kind, bank: Version, body: &[u8]) -> Vec<u8> {
    let mut writer = Writer::default();
    writer
        .byte(VERSION << 4 | kind as u8)
        .four(bank.0)
        .raw(body);
    let sum = check::crc32(&writer.0);
    writer.four(sum);
    writer.0
}

/// Unwraps what [`seal`] wrapped.
pub fn open(bytes: &[u8]) -> Result<Opened<'_>, Refusal> {
    let first = *bytes.first().ok_or(Refusal::Damaged(Check::Length))?;
    let version = first >> 4;
    let wrong = |check| match version {
        VERSION => Refusal::Damaged(check),
        _ => Refusal::Foreign,
    };
    if bytes.len() < LEAST {
        return Err(wrong(Check::Length));
    }
    let (before, sum) = bytes.split_at(bytes.len() - 4);
    if Reader(sum).four() != Some(check::crc32(before)) {
        return Err(wrong(Check::Checksum));
    }
    match version {
        VERSION => {}
        newer if newer > VERSION => return Err(Refusal::Newer(newer)),
        _ => return Err(Refusal::Foreign),
    }
    let kind = match first & 15 {
        1 => Kind::Assignment,
        2 => Kind::HandIn,
        3 => Kind::Part,
        _ => return Err(Refusal::Foreign),
    };
    let mut reader = Reader(&before[1..]);
    let bank = Version(reader.four().ok_or(Refusal::Damaged(Check::Length))?);
    Ok(Opened {
        kind,
        bank,
        body: reader.0,
    })
}

/// The letters of a code within a link or a line: what stands after the last
/// of `#`, `/`, `:`, `=` or `?`, without quotes and blanks around it.
pub fn letters(line: &str) -> &str {
    let trimmed = line.trim_matches(|c: char| {
        c.is_whitespace() || matches!(c, '"' | '\'' | '<' | '>' | ',' | ';')
    });
    trimmed
        .rsplit(['#', '/', ':', '=', '?'])
        .next()
        .unwrap_or_default()
}

/// The bytes that a link or a line stands for.
pub fn bytes(line: &str) -> Result<Vec<u8>, Refusal> {
    if line.len() > MOST {
        return Err(Refusal::TooLarge);
    }
    let letters = letters(line);
    if letters.is_empty() {
        return Err(Refusal::Foreign);
    }
    base32::decode(letters).ok_or_else(|| {
        // The first letter holds the version: without it, it never was a code.
        let ours = letters.bytes().next().and_then(base32::value) == Some(u32::from(VERSION) << 1);
        let known = letters
            .bytes()
            .all(|b| base32::passed_over(b) || base32::value(b).is_some());
        match (ours, known) {
            (false, _) => Refusal::Foreign,
            (true, true) => Refusal::Damaged(Check::Length),
            (true, false) => Refusal::Damaged(Check::Letters),
        }
    })
}

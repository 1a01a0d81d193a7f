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

/// The latest version. Each thing is written in the first version that has room
/// for what it says, so that an older page reads all that it can.
///
/// - 1: cases, trays to be read, mixes for the usual use, questions, forms;
///   answers that are options or plain numbers
/// - 2: mixes for a named use, numbers to be worked out; answers that are typed
///   or mixed
pub const VERSION: u8 = 2;

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
    /// The version of its form.
    pub version: u8,
    /// What is inside.
    pub kind: Kind,
    /// The bank it was made for.
    pub bank: Version,
    /// What is inside.
    pub body: &'b [u8],
}

/// Wraps a body of the first version.
pub fn seal(kind: Kind, bank: Version, body: &[u8]) -> Vec<u8> {
    seal_as(1, kind, bank, body)
}

/// Wraps a body of a version.
pub fn seal_as(version: u8, kind: Kind, bank: Version, body: &[u8]) -> Vec<u8> {
    let mut writer = Writer::default();
    writer
        .byte(version << 4 | kind as u8)
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
        1..=VERSION => Refusal::Damaged(check),
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
        1..=VERSION => {}
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
        version,
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
        let first = letters.bytes().next().and_then(base32::value);
        let ours = first.is_some_and(|it| (1..=u32::from(VERSION)).contains(&(it >> 1)));
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

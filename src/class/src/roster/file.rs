//! A roster as a file, and the one checked way back in.
//!
//! ```text
//! trayward-roster 1
//! 1<tab>A label
//! 2<tab>Another
//! end 2 7d0c11f2
//! ```
//!
//! The last line holds the number of labels and the CRC-32 of all before it.

use super::{MOST_LETTERS, Roster};
use crate::assignment::Seat;
use crate::wire::check;
use core::fmt::{self, Write};

const FIRST: &str = "trayward-roster 1\n";

/// The most bytes of a file: every seat, with the longest label.
const MOST: usize = 65_536 * (MOST_LETTERS * 4 + 8);

/// Why a file was not taken. Nothing was changed by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RosterError {
    /// It is not a roster.
    Foreign,
    /// It comes from a newer version.
    Newer,
    /// It is larger than any roster.
    TooLarge,
    /// It is not as it was written.
    Changed,
}

impl fmt::Display for RosterError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Foreign => "This file is not a Trayward roster. Choose the file that was exported from the class page.",
            Self::Newer => "This roster was exported by a newer Trayward. Reload the page to get the newest version, then import it again.",
            Self::TooLarge => "This file is larger than any roster can be. Look whether the right one was chosen.",
            Self::Changed => "This roster is damaged or was changed after it was exported. Export it again where it came from.",
        })
    }
}

impl core::error::Error for RosterError {}

/// Writes a roster.
pub fn write(roster: &Roster) -> String {
    let mut text = String::from(FIRST);
    let mut count = 0;
    for (seat, label) in roster.lines() {
        // Writing to a String cannot fail.
        let _ = writeln!(text, "{}\t{label}", seat.0);
        count += 1;
    }
    let end = end_line(count, &text);
    text.push_str(&end);
    text
}

/// Reads what [`write`] wrote.
///
/// # Errors
/// [`RosterError`] where the file is anything but a whole, unchanged roster.
pub fn read(bytes: &[u8]) -> Result<Roster, RosterError> {
    if bytes.len() > MOST {
        return Err(RosterError::TooLarge);
    }
    if !bytes.starts_with(FIRST.as_bytes()) {
        let newer = bytes.starts_with(b"trayward-roster ");
        return Err(if newer {
            RosterError::Newer
        } else {
            RosterError::Foreign
        });
    }
    let text = core::str::from_utf8(bytes).map_err(|_| RosterError::Changed)?;
    let whole = text.strip_suffix('\n').ok_or(RosterError::Changed)?;
    let end = whole.rfind('\n').ok_or(RosterError::Changed)? + 1;
    let (before, last) = text.split_at(end);
    let lines: Vec<&str> = before.split_terminator('\n').skip(1).collect();
    if last != end_line(lines.len(), before) {
        return Err(RosterError::Changed);
    }
    let mut roster = Roster::default();
    for line in lines {
        let (seat, label) = line.split_once('\t').ok_or(RosterError::Changed)?;
        let seat = seat.parse().map_err(|_| RosterError::Changed)?;
        roster.set(Seat(seat), label);
    }
    Ok(roster)
}

fn end_line(count: usize, before: &str) -> String {
    format!("end {count} {:08x}\n", check::crc32(before.as_bytes()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_roster_comes_back(labels in prop::collection::vec((any::<u16>(), ".{0,80}"), 0..20)) {
            let mut roster = Roster::default();
            for (seat, label) in &labels {
                roster.set(Seat(*seat), label);
            }
            prop_assert_eq!(read(write(&roster).as_bytes()), Ok(roster));
        }

        #[test]
        fn anything_can_be_read(bytes: Vec<u8>) {
            let _ = read(&bytes);
            let mut text = FIRST.as_bytes().to_vec();
            text.extend(bytes);
            let _ = read(&text);
        }
    }

    #[test]
    fn a_changed_roster_is_refused() {
        let mut roster = Roster::default();
        roster.set(Seat(3), "By the window");
        let text = write(&roster);
        assert_eq!(
            read(text.replace("window", "Window").as_bytes()),
            Err(RosterError::Changed)
        );
        assert_eq!(
            read(text.replace("roster 1", "roster 2").as_bytes()),
            Err(RosterError::Newer)
        );
        assert_eq!(read(b"hello"), Err(RosterError::Foreign));
        assert_eq!(
            (roster.label(Seat(3)), roster.label(Seat(4))),
            ("By the window".into(), "Seat 4".into())
        );
        assert_eq!(roster.free(), Some(Seat(1)));
    }
}

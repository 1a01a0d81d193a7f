//! The whole record as one file, and the one checked way back in.
//!
//! ```text
//! trayward-record-export 1
//! 5c2f6d10 {"t":...}
//! 01d3e1aa {"t":...}
//! end 2 7d0c11f2
//! ```
//!
//! Event lines are those of segments. The last line holds the number of
//! events and the CRC-32 of every byte before it, so that a file cut short
//! anywhere, or with a line taken out, is noticed.

use core::fmt;

use crate::checksum;
use crate::event::Event;
use crate::line;
use crate::segment::VERSION;

/// The first word of every exported file.
const FORMAT: &str = "trayward-record-export";

/// Writes events as the text of an export file.
pub fn write_export(events: &[Event]) -> String {
    let mut text = format!("{FORMAT} {VERSION}\n");
    for event in events {
        line::write(event, &mut text);
    }
    let end = end_line(events.len(), &text);
    text.push_str(&end);
    text
}

/// Reads an export file and checks all of it.
///
/// # Errors
/// [`ImportError`] when the file is anything but a whole, unchanged export of
/// a version this one knows.
pub fn read_export(bytes: &[u8]) -> Result<Vec<Event>, ImportError> {
    if bytes.is_empty() {
        return Err(ImportError::Empty);
    }
    check_first_line(bytes)?;
    let text = core::str::from_utf8(bytes).map_err(|_| ImportError::Changed)?;

    let whole = text.strip_suffix('\n').ok_or(ImportError::CutShort)?;
    let end_at = whole.rfind('\n').map_or(0, |at| at + 1);
    let (before, end) = text.split_at(end_at);
    if !end.starts_with("end ") {
        return Err(ImportError::CutShort);
    }
    let lines: Vec<&str> = before.split_terminator('\n').skip(1).collect();
    if end != end_line(lines.len(), before) {
        return Err(ImportError::Changed);
    }
    lines
        .iter()
        .map(|text| line::read(text).ok_or(ImportError::Changed))
        .collect()
}

fn end_line(count: usize, before: &str) -> String {
    format!("end {count} {:08x}\n", checksum::of(before.as_bytes()))
}

/// Looks at bytes, not text: a newer form need not be text at all after its
/// first line.
fn check_first_line(bytes: &[u8]) -> Result<(), ImportError> {
    let mut words = bytes
        .split(|byte| *byte == b'\n')
        .next()
        .and_then(|line| core::str::from_utf8(line).ok())
        .ok_or(ImportError::Foreign)?
        .split(' ');
    if words.next() != Some(FORMAT) {
        return Err(ImportError::Foreign);
    }
    let version = words.next().ok_or(ImportError::CutShort)?;
    match version.parse::<u32>() {
        Ok(number) if number > VERSION => Err(ImportError::Newer(number)),
        Ok(VERSION) if version.len() == 1 && words.next().is_none() => Ok(()),
        _ => Err(ImportError::Changed),
    }
}

/// Why a file was not taken in. Nothing was changed by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ImportError {
    /// The file is empty.
    Empty,
    /// The file is not an exported record.
    Foreign,
    /// The file comes from a later version, with this number.
    Newer(u32),
    /// The end of the file is missing.
    CutShort,
    /// The file is not as it was written.
    Changed,
}

impl fmt::Display for ImportError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (what, mend) = match self {
            Self::Empty => ("This file is empty.", "Choose the file that was exported."),
            Self::Foreign => (
                "This file is not an exported Trayward record.",
                "Choose the file that was exported from the Record page.",
            ),
            Self::Newer(_) => (
                "This file was exported by a newer Trayward than this one.",
                "Reload the page to get the newest version, then import it again.",
            ),
            Self::CutShort => (
                "The end of this file is missing.",
                "Copy or download it again, or export it again where it came from.",
            ),
            Self::Changed => (
                "This file is damaged or was changed after it was exported.",
                "Export it again where it came from.",
            ),
        };
        write!(f, "{what} {mend} Nothing was imported.")
    }
}

impl core::error::Error for ImportError {}

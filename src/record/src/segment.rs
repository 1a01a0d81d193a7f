//! A segment: the text of up to [`CAPACITY`] events under one key.
//!
//! ```text
//! trayward-record 1 3 00000000000000ab 2 9be5ac01
//! 5c2f6d10 {"t":...}
//! 01d3e1aa {"t":...}
//! ```
//!
//! The header names format, version, segment number, writer and number of
//! events, and ends with the CRC-32 of what stands before it. The writer is
//! who wrote the segment; events that came by import keep their own writers.
//! A later version keeps the first two words of the header as they are.

use crate::checksum;
use crate::event::{Event, Writer};
use crate::key::SegmentKey;
use crate::line;
use crate::report::Fault;

/// The version of the stored form that this crate writes.
pub const VERSION: u32 = 1;

/// The most events a segment holds. Each new event rewrites its segment, so
/// this bounds the cost of one: some 12 kB of text.
pub const CAPACITY: usize = 64;

/// The first word of every segment.
const FORMAT: &str = "trayward-record";

/// What was read from a segment.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Reading {
    /// The good events, in the order they stand.
    pub events: Vec<Event>,
    /// What is wrong with the segment; empty for a whole one.
    pub faults: Vec<Fault>,
}

/// Writes the text of a segment from the finished lines of its events.
pub fn write(key: SegmentKey, count: usize, lines: &str) -> String {
    let mut text = header(key.number, key.writer, count);
    text.push('\n');
    text.push_str(lines);
    text
}

/// Reads a segment. Good lines of a damaged one are kept; one of a later
/// version or another format gives no events.
pub fn read(key: SegmentKey, text: &str) -> Reading {
    let (first, rest) = text.split_once('\n').unwrap_or((text, ""));
    if let Some(version) = newer_version(first) {
        return Reading {
            faults: vec![Fault::Newer(version)],
            ..Reading::default()
        };
    }

    let mut reading = Reading::default();
    let lines: Vec<&str> = rest.split_terminator('\n').collect();
    for (index, text) in lines.iter().enumerate() {
        match line::read(text) {
            Some(event) => reading.events.push(event),
            // People count lines from one, and the header is the first.
            None => reading.faults.push(Fault::Line(index + 2)),
        }
    }

    match parse_header(first) {
        None if reading.events.is_empty() => reading.faults = vec![Fault::Foreign],
        None => reading.faults.push(Fault::Header),
        Some(header) => {
            if (header.number, header.writer) != (key.number, key.writer) {
                reading.faults.push(Fault::Misplaced);
            }
            if header.count != lines.len() {
                reading.faults.push(Fault::Count {
                    said: header.count,
                    found: lines.len(),
                });
            }
            if !text.ends_with('\n') {
                reading.faults.push(Fault::Torn);
            }
        }
    }
    reading
}

struct Header {
    number: u64,
    writer: Writer,
    count: usize,
}

fn header(number: u64, writer: Writer, count: usize) -> String {
    let words = format!("{FORMAT} {VERSION} {number} {writer} {count}");
    let sum = checksum::of(words.as_bytes());
    format!("{words} {sum:08x}")
}

fn parse_header(text: &str) -> Option<Header> {
    let mut words = text.split(' ').skip(2);
    let number = words.next()?.parse().ok()?;
    let writer = Writer::parse(words.next()?)?;
    let count = words.next()?.parse().ok()?;
    // Written back and compared: checks format, version and checksum at once.
    (header(number, writer, count) == text).then_some(Header {
        number,
        writer,
        count,
    })
}

/// The version a header names, when it is ours but later than this one.
///
/// Taken at its word without a checksum: a later version may check
/// differently, and reading its lines wrongly would be worse than not at all.
fn newer_version(text: &str) -> Option<u32> {
    let mut words = text.split(' ');
    let ours = words.next() == Some(FORMAT);
    let version = words.next()?.parse().ok()?;
    (ours && version > VERSION).then_some(version)
}

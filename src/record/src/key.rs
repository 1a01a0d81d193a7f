//! Where a segment is kept: `trayward/1/<writer>/<segment number>`.

use core::fmt;

use crate::event::Writer;
use crate::segment::VERSION;

/// What every key of the record begins with; other keys are none of its
/// business.
const PREFIX: &str = "trayward/";

/// The place of one segment. Only its writer ever puts anything there, so two
/// tabs cannot overwrite one another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SegmentKey {
    /// Who writes the segment.
    pub writer: Writer,
    /// Its number among the writer's segments, from 1.
    pub number: u64,
}

impl fmt::Display for SegmentKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{PREFIX}{VERSION}/{}/{}", self.writer, self.number)
    }
}

/// What a key in the store says about itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum KeyKind {
    /// A segment that this version can read.
    Segment(SegmentKey),
    /// A segment of a later version with this number.
    Newer(u32),
    /// In the place of segments, but not one.
    Strange,
    /// Nothing to do with the record's segments.
    Elsewhere,
}

/// Sorts a key of the store.
///
/// The page may keep things of its own under `trayward/<word>`; only a number
/// after the prefix makes a key one of the record.
pub fn sort(key: &str) -> KeyKind {
    let Some((version, place)) = key.strip_prefix(PREFIX).and_then(|k| k.split_once('/')) else {
        return KeyKind::Elsewhere;
    };
    match version.parse::<u32>() {
        Ok(VERSION) => {}
        Ok(version) if version > VERSION => return KeyKind::Newer(version),
        Ok(_) => return KeyKind::Strange,
        Err(_) => return KeyKind::Elsewhere,
    }
    let parsed = place.split_once('/').and_then(|(writer, number)| {
        Some(SegmentKey {
            writer: Writer::parse(writer)?,
            number: number.parse().ok()?,
        })
    });
    match parsed {
        // Written back and compared: "01" or "+1" is no number of ours.
        Some(segment) if segment.to_string() == key => KeyKind::Segment(segment),
        _ => KeyKind::Strange,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_are_sorted() {
        let ours = SegmentKey {
            writer: Writer(0xab),
            number: 12,
        };
        assert_eq!(ours.to_string(), "trayward/1/00000000000000ab/12");
        assert_eq!(sort(&ours.to_string()), KeyKind::Segment(ours));
        for (key, kind) in [
            ("trayward/2/anything", KeyKind::Newer(2)),
            ("trayward/1/00000000000000ab/012", KeyKind::Strange),
            ("trayward/1/00000000000000AB/12", KeyKind::Strange),
            ("trayward/1/ab", KeyKind::Strange),
            ("trayward/0/x", KeyKind::Strange),
            ("trayward/theme", KeyKind::Elsewhere),
            ("trayward/ui/theme", KeyKind::Elsewhere),
            ("other", KeyKind::Elsewhere),
            ("", KeyKind::Elsewhere),
        ] {
            assert_eq!(sort(key), kind, "{key}");
        }
    }
}

//! One event as one line of text: a checksum, a space, compact JSON.
//!
//! ```text
//! 5c2f6d10 {"t":1764055845000,"w":"00000000000000ab","at":1764055845000,"off":60,"k":"lesson-read","d":{"lesson":"amalgam"}}
//! ```
//!
//! `t` and `w` are tick and writer of the id, `at` and `off` the moment, `k`
//! the kind and `d` its particulars. The checksum is the CRC-32 of the JSON.

use std::borrow::Cow;
use std::fmt::Write;

use serde::Deserialize;
use serde_json::value::RawValue;

use crate::checksum;
use crate::event::{Event, Id, Writer};
use crate::moment::Moment;
use crate::what::{What, to_json};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Fields<'a> {
    t: u64,
    #[serde(borrow)]
    w: Cow<'a, str>,
    at: i64,
    off: i16,
    #[serde(borrow)]
    k: Cow<'a, str>,
    #[serde(borrow)]
    d: &'a RawValue,
}

/// Adds the line of `event`, with its line end, to `text`.
pub fn write(event: &Event, text: &mut String) {
    let json = format!(
        r#"{{"t":{},"w":"{}","at":{},"off":{},"k":{},"d":{}}}"#,
        event.id.tick,
        event.id.writer,
        event.at.utc_ms,
        event.at.offset_min,
        to_json(event.what.kind()),
        event.what.body(),
    );
    let sum = checksum::of(json.as_bytes());
    // Writing to a String cannot fail.
    let _ = writeln!(text, "{sum:08x} {json}");
}

/// Reads a line without its line end; `None` when the checksum does not match
/// or the JSON is not an event.
pub fn read(line: &str) -> Option<Event> {
    let (sum, json) = line.split_once(' ')?;
    if checksum::parse(sum)? != checksum::of(json.as_bytes()) {
        return None;
    }
    let fields: Fields<'_> = serde_json::from_str(json).ok()?;
    Some(Event {
        id: Id {
            tick: fields.t,
            writer: Writer::parse(&fields.w)?,
        },
        at: Moment {
            utc_ms: fields.at,
            offset_min: fields.off,
        },
        what: What::from_parts(&fields.k, fields.d.get())?,
    })
}

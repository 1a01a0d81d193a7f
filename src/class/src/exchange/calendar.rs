//! The day an assignment is due, as a calendar file (RFC 5545).

use crate::assignment::{Assignment, Day};

/// The most octets of a line, without its end.
const OCTETS: usize = 75;

/// A calendar with one whole day, and a reminder a day before; none where the
/// assignment has no due day. `made` is the moment at which it is made, in
/// seconds from 1 January 1970, UTC.
pub fn calendar(assignment: &Assignment, link: &str, made: u64) -> Option<String> {
    let due = assignment.due?;
    let basic = |day: Day| day.to_string().replace('-', "");
    let name = text(&assignment.name());
    let lines = [
        "BEGIN:VCALENDAR".into(),
        "VERSION:2.0".into(),
        "PRODID:-//Trayward//Assignments//EN".into(),
        "BEGIN:VEVENT".into(),
        format!(
            "UID:{:08x}-{}@trayward.invalid",
            assignment.id(),
            basic(due)
        ),
        format!("DTSTAMP:{}", stamp(made)),
        format!("DTSTART;VALUE=DATE:{}", basic(due)),
        format!("DTEND;VALUE=DATE:{}", basic(due.next())),
        format!("SUMMARY:{name}: last day to hand in"),
        format!("DESCRIPTION:{}", text(&format!("Open it here:\n{link}"))),
        "TRANSP:TRANSPARENT".into(),
        "BEGIN:VALARM".into(),
        "ACTION:DISPLAY".into(),
        format!("DESCRIPTION:{name} is due tomorrow"),
        "TRIGGER:-P1D".into(),
        "END:VALARM".into(),
        "END:VEVENT".into(),
        "END:VCALENDAR".to_owned(),
    ];
    Some(lines.iter().map(|line| folded(line)).collect())
}

/// `20261125T140000Z`.
fn stamp(seconds: u64) -> String {
    let day = Day(u16::try_from(seconds / 86_400).unwrap_or(u16::MAX));
    let of_day = seconds % 86_400;
    format!(
        "{}T{:02}{:02}{:02}Z",
        day.to_string().replace('-', ""),
        of_day / 3600,
        of_day / 60 % 60,
        of_day % 60
    )
}

/// A text as the value of a property.
fn text(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\\' => out.push_str("\\\\"),
            ';' => out.push_str("\\;"),
            ',' => out.push_str("\\,"),
            '\n' => out.push_str("\\n"),
            c if c.is_control() => {}
            c => out.push(c),
        }
    }
    out
}

/// A line with its end, broken where it is too long; never within a letter.
fn folded(line: &str) -> String {
    let mut out = String::with_capacity(line.len() + 8);
    let mut used = 0;
    for c in line.chars() {
        if used + c.len_utf8() > OCTETS {
            out.push_str("\r\n ");
            used = 1;
        }
        out.push(c);
        used += c.len_utf8();
    }
    out.push_str("\r\n");
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn lines_are_short_and_come_back(line in "[^\\r\\n]{0,300}") {
            let out = folded(&line);
            for each in out.split("\r\n") {
                prop_assert!(each.len() <= OCTETS);
            }
            prop_assert_eq!(out.replace("\r\n ", "").replace("\r\n", ""), line);
        }
    }

    #[test]
    fn texts_are_escaped() {
        assert_eq!(text("a,b;c\\d\ne"), "a\\,b\\;c\\\\d\\ne");
    }
}

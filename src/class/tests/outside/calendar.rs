//! The calendar file, read by the crate `icalendar`.

use crate::made::assignment;
use class::exchange::calendar::calendar;
use icalendar::parser::{read_calendar, unfold};

#[test]
fn the_due_day_is_read_by_another_reader() {
    let set = assignment(20);
    let link = format!(
        "https://practice.example.org/#/set/{}",
        "0123456789".repeat(30)
    );
    // 2026-11-25 14:00:05 UTC by GNU date.
    let text = calendar(&set, &link, 1_795_615_205).expect("it has a due day");
    assert!(text.split("\r\n").all(|line| line.len() <= 75));
    assert!(!text.replace("\r\n", "").contains('\n'));
    let unfolded = unfold(&text);
    let read = read_calendar(&unfolded).expect("it is a calendar");
    let event = read
        .components
        .iter()
        .find(|c| c.name == "VEVENT")
        .expect("an event");
    let value = |name: &str| event.find_prop(name).map(|p| p.val.to_string());
    // Day 20500 is 2026-02-16 by GNU date.
    assert_eq!(value("DTSTART").as_deref(), Some("20260216"));
    assert_eq!(value("DTEND").as_deref(), Some("20260217"));
    assert_eq!(value("DTSTAMP").as_deref(), Some("20261125T140005Z"));
    assert_eq!(
        value("SUMMARY").as_deref(),
        Some("Assignment 7: last day to hand in")
    );
    let told = value("DESCRIPTION").unwrap().replace("\\n", "\n");
    assert_eq!(told, format!("Open it here:\n{link}"));
    assert_eq!(event.components.len(), 1, "a reminder");
}

#[test]
fn without_a_due_day_there_is_no_calendar() {
    let mut set = assignment(20);
    set.due = None;
    assert_eq!(calendar(&set, "x", 0), None);
}

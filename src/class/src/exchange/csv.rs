//! Tables for spreadsheets, after RFC 4180: lines end in CR LF, fields with a
//! comma, a quote or a line end are quoted, every line has as many fields. A
//! mark at the start says UTF-8, which spreadsheets ask for. A text that a
//! spreadsheet would take for a formula begins with an apostrophe.

use crate::report::{Gate, Report};
use crate::roster::Roster;

/// A field.
#[derive(Clone, Debug, PartialEq)]
pub enum Field {
    /// A text.
    Text(String),
    /// A whole number.
    Count(u64),
    /// A number, with three digits after the point.
    Number(f64),
    /// Nothing.
    None,
}

impl Field {
    fn text(text: impl AsRef<str>) -> Self {
        Self::Text(text.as_ref().to_owned())
    }

    fn maybe(number: Option<f64>) -> Self {
        number.map_or(Self::None, Self::Number)
    }

    fn yes(yes: bool) -> Self {
        Self::text(if yes { "yes" } else { "no" })
    }

    fn written(&self) -> String {
        match self {
            Self::Text(text) => quoted(&harmless(text)),
            Self::Count(count) => count.to_string(),
            Self::Number(number) => format!("{number:.3}"),
            Self::None => String::new(),
        }
    }
}

/// Writes a table. Short lines are filled, long ones cut, to the length of the head.
pub fn table(head: &[Field], lines: &[Vec<Field>]) -> String {
    let mut text = String::from('\u{feff}');
    let all = std::iter::once(head).chain(lines.iter().map(Vec::as_slice));
    for line in all {
        for place in 0..head.len() {
            if place > 0 {
                text.push(',');
            }
            let field = line.get(place).map_or_else(String::new, Field::written);
            // A line with nothing on it is passed over by many readers.
            text.push_str(if head.len() == 1 && field.is_empty() {
                "\"\""
            } else {
                &field
            });
        }
        text.push_str("\r\n");
    }
    text
}

fn harmless(text: &str) -> String {
    if text.starts_with(['=', '+', '-', '@', '\t', '\r']) {
        format!("'{text}")
    } else {
        text.to_owned()
    }
}

fn quoted(text: &str) -> String {
    if text.contains(['"', ',', '\r', '\n']) {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text.to_owned()
    }
}

/// The seats of a report by competency. Labels of a roster are written only
/// where one is given. `name` gives the name of a competency by its id.
pub fn seats(report: &Report, roster: Option<&Roster>, name: &dyn Fn(&str) -> String) -> String {
    let mut head: Vec<Field> = [
        "Seat",
        "Label",
        "Try",
        "Late",
        "Seconds",
        "Asked",
        "Right",
        "Per cent right",
        "Marks",
        "Error of measurement (items)",
        "Passed",
        "Could have hurt somebody",
        "Left open",
    ]
    .map(Field::text)
    .into();
    for competency in &report.competencies {
        let name = name(competency);
        head.push(Field::text(format!("{name}: right")));
        head.push(Field::text(format!("{name}: asked")));
    }
    let lines: Vec<Vec<Field>> = report
        .seats
        .iter()
        .map(|seat| {
            let per_cent = 100.0 * f64::from(seat.all.right) / f64::from(seat.all.asked.max(1));
            let mut line = vec![
                Field::Count(seat.seat.0.into()),
                roster.map_or(Field::None, |r| Field::Text(r.label(seat.seat))),
                Field::Count(seat.attempt.into()),
                Field::yes(seat.late),
                Field::Count(seat.seconds),
                Field::Count(seat.all.asked.into()),
                Field::Count(seat.all.right.into()),
                Field::Number(per_cent),
                Field::Number(seat.marks),
                Field::maybe(seat.error),
                Field::yes(seat.passed),
                Field::Count(seat.all.harmful.into()),
                Field::Count(seat.all.blank.into()),
            ];
            for part in &seat.parts {
                line.push(Field::Count(part.right.into()));
                line.push(Field::Count(part.asked.into()));
            }
            line
        })
        .collect();
    table(&head, &lines)
}

/// The items of a report. What a class is too small for is left empty.
pub fn items(report: &Report, name: &dyn Fn(&str) -> String) -> String {
    let head = [
        "Task",
        "Item",
        "Competency",
        "Asked",
        "Right",
        "Left open",
        "Could have hurt somebody",
        "Difficulty p",
        "Item-rest r",
        "r from",
        "r to",
        "Upper less lower 27 %",
        "Mean seconds",
        "Worth a look",
    ]
    .map(Field::text);
    let lines: Vec<Vec<Field>> = report
        .items
        .iter()
        .map(|item| {
            let told = |value: Option<f64>| match item.gate {
                Gate::Counts => Field::None,
                _ => Field::maybe(value),
            };
            let flags: Vec<String> = item.flags.iter().map(ToString::to_string).collect();
            vec![
                Field::Count(u64::from(item.place) + 1),
                Field::text(&item.name),
                Field::Text(name(&item.competency)),
                Field::Count(item.asked.into()),
                Field::Count(item.right.into()),
                Field::Count(item.blank.into()),
                Field::Count(item.harmful.into()),
                told(Some(item.p)),
                told(item.r),
                told(item.r_interval.map(|(low, _)| low)),
                told(item.r_interval.map(|(_, high)| high)),
                told(item.d27),
                Field::Number(item.mean_seconds),
                Field::Text(flags.join(" ")),
            ]
        })
        .collect();
    table(&head, &lines)
}

/// The options of the items of a report, in thirds of the class.
pub fn options(report: &Report) -> String {
    let head = [
        "Task",
        "Item",
        "Option",
        "Right for some seat",
        "Taken",
        "Share",
        "Low third",
        "Middle third",
        "High third",
        "r with rest",
    ]
    .map(Field::text);
    let mut lines = Vec::new();
    for item in &report.items {
        for option in &item.options {
            let told = |value| match item.gate {
                Gate::Counts => Field::None,
                _ => value,
            };
            let [low, middle, high] = option.thirds.map(|n| Field::Count(n.into()));
            lines.push(vec![
                Field::Count(u64::from(item.place) + 1),
                Field::text(&item.name),
                Field::text(&option.label),
                Field::yes(option.fits),
                Field::Count(option.count.into()),
                told(Field::Number(option.share)),
                low,
                middle,
                high,
                told(Field::maybe(option.r)),
            ]);
        }
    }
    table(&head, &lines)
}

//! CSV through the crate `csv`, JSON through the crate `jsonschema`.

use crate::made::{Key, assignment, public, rows, table};
use class::assignment::Seat;
use class::exchange::{
    csv::{self, Field},
    json,
};
use class::report::{Report, Tries};
use class::roster::Roster;
use proptest::prelude::*;

fn report() -> Report {
    let public = public();
    let set = assignment(20);
    let key = Key::new(public["key"].as_str().unwrap(), true);
    let table = table(&set, &key, &rows(&public));
    Report::of(&set, &table, Tries::First, &[Seat(1), Seat(40)])
}

fn read(text: &str) -> Vec<Vec<String>> {
    let body = text.strip_prefix('\u{feff}').expect("the mark of UTF-8");
    let mut reader = ::csv::ReaderBuilder::new()
        .has_headers(false)
        .from_reader(body.as_bytes());
    // Lines with another number of fields than the first are an error here.
    reader
        .records()
        .map(|line| line.expect("a line").iter().map(str::to_owned).collect())
        .collect()
}

proptest! {
    #[test]
    fn any_text_comes_back_and_none_is_a_formula(cells in prop::collection::vec(".{0,12}|[=+@\\-\\t\\r\",\\n]{1,4}", 1..12)) {
        let head: Vec<Field> = cells.iter().map(|_| Field::Text("head".into())).collect();
        let line = cells.iter().map(|c| Field::Text(c.clone())).collect();
        let text = csv::table(&head, &[line]);
        let lines = read(&text);
        prop_assert_eq!(lines.len(), 2);
        for (read, sent) in lines[1].iter().zip(&cells) {
            prop_assert!(!read.starts_with(['=', '+', '-', '@', '\t', '\r']));
            let marked = format!("'{sent}");
            prop_assert!(read == sent || *read == marked);
        }
    }
}

#[test]
fn the_tables_of_a_report_are_read_by_another_reader() {
    let report = report();
    let mut roster = Roster::default();
    roster.set(Seat(1), "=By the window, left");
    let name = |id: &str| id.to_owned();
    let seats = read(&csv::seats(&report, Some(&roster), &name));
    assert_eq!(seats.len(), 27);
    assert_eq!(seats[1][1], "'=By the window, left");
    let right: u32 = seats[1..]
        .iter()
        .map(|line| line[6].parse::<u32>().unwrap())
        .sum();
    assert_eq!(right, report.scores.totals.iter().sum::<u32>());
    let items = read(&csv::items(&report, &name));
    assert_eq!(items.len(), 21);
    assert_eq!(items[1][1], "'=Question 0");
    assert_eq!(read(&csv::options(&report)).len(), 81);
}

#[test]
fn the_report_is_valid_by_its_published_schema() {
    let schema: serde_json::Value = serde_json::from_str(json::SCHEMA).expect("the schema is JSON");
    jsonschema::meta::validate(&schema).expect("the schema is one");
    let valid = jsonschema::validator_for(&schema).expect("the schema can be used");
    let set = assignment(4);
    let key = Key::new("AAAA", true);
    let small = |rows: &[&str]| Report::of(&set, &table(&set, &key, rows), Tries::Last, &[]);
    for report in [
        report(),
        small(&[]),
        small(&["ABCD"]),
        small(&["AAAA", "AAAA", "AAAA"]),
    ] {
        let document = serde_json::from_str(&json::report(&report)).expect("it is JSON");
        let faults: Vec<String> = valid
            .iter_errors(&document)
            .map(|e| e.to_string())
            .collect();
        assert!(faults.is_empty(), "{faults:?}");
    }
    let mut wrong: serde_json::Value = serde_json::from_str(&json::report(&report())).unwrap();
    wrong["seats"][0]["label"] = "a name".into();
    assert!(!valid.is_valid(&wrong), "no names");
}

//! Files made to do harm: valid exports that were changed and given checksums
//! that fit, so that nothing but the reader of events stands in the way.

mod common;

use common::events;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::Index;
use record::{Log, MemoryStore, What, Writer, folds, read_export, write_export};
use std::fmt::Write;

/// The kinds of events that this build knows, and some that it does not.
const KINDS: [&str; 22] = [
    "setting-changed",
    "lesson-read",
    "case-started",
    "case-answered",
    "case-finished",
    "sitting-begun",
    "question-answered",
    "sitting-ended",
    "form-begun",
    "form-flagged",
    "form-paused",
    "form-finished",
    "question-set-aside",
    "mix-handed-over",
    "assignment-taken",
    "task-begun",
    "handed-in",
    "skill-checked",
    "reading-begun",
    "x",
    "",
    "\u{1f9b7}",
];

/// CRC-32 (IEEE), bit by bit, so that it is not the one under test.
fn crc(bytes: &[u8]) -> u32 {
    let mut sum = u32::MAX;
    for byte in bytes {
        sum ^= u32::from(*byte);
        for _ in 0..8 {
            let low = sum & 1;
            sum = (sum >> 1) ^ (0xedb8_8320 * low);
        }
    }
    !sum
}

/// An export file of these lines of JSON, whatever they say.
fn sealed(lines: &[String]) -> String {
    let mut text = "trayward-record-export 1\n".to_owned();
    for json in lines {
        // Writing to a String cannot fail.
        let _ = writeln!(text, "{:08x} {json}", crc(json.as_bytes()));
    }
    let sum = crc(text.as_bytes());
    text + &format!("end {} {sum:08x}\n", lines.len())
}

fn json_of(export: &str) -> Vec<String> {
    let lines = export
        .lines()
        .skip(1)
        .filter(|line| !line.starts_with("end "));
    lines.map(|line| line[9..].to_owned()).collect()
}

/// Nothing that can be asked of a record stops at what it holds.
fn ask_everything(log: &Log<MemoryStore>) {
    let all = log.events();
    let _ = folds::under_way(all);
    let _ = folds::finished_cases(all);
    let _ = folds::by_competency(all);
    let _ = folds::assignments(all);
    let _ = folds::skills_checked(all);
    let _ = folds::settings(all);
    let _ = folds::unknown_kinds(all);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(600))]

    #[test]
    fn a_changed_export_that_fits_its_checksums_is_read_or_refused(
        events in events(), at: Index, put in "[0-9a-z\"{}\\[\\],:\\\\.-]{0,12}", count in 0..12usize
    ) {
        let mut lines = json_of(&write_export(&events));
        let which = at.index(lines.len().max(1));
        if let Some(line) = lines.get_mut(which) {
            let letters: Vec<char> = line.chars().collect();
            let from = at.index(letters.len());
            let to = (from + count).min(letters.len());
            *line = letters[..from].iter().chain(put.chars().collect::<Vec<_>>().iter()).chain(&letters[to..]).collect();
        }
        let file = sealed(&lines);
        let mut log = Log::open(MemoryStore::new(), Writer(9));
        match read_export(file.as_bytes()) {
            Ok(read) => {
                prop_assert!(read.len() <= lines.len());
                log.import(file.as_bytes()).unwrap();
                ask_everything(&log);
                prop_assert!(read_export(log.export().as_bytes()).is_ok());
            }
            Err(why) => {
                prop_assert!(why.to_string().ends_with("Nothing was imported."));
                prop_assert!(log.import(file.as_bytes()).is_err());
                prop_assert!(log.events().is_empty());
            }
        }
    }

    #[test]
    fn particulars_of_any_kind_can_say_anything(
        kind in prop::sample::select(&KINDS[..]), body in "[0-9a-z\"{}\\[\\],:. -]{0,60}",
        names in vec("[a-z_]{1,10}", 0..4), number: i64
    ) {
        let _ = What::from_parts(kind, &body);
        let pairs: Vec<String> = names.iter().map(|name| format!("\"{name}\":{number}")).collect();
        let _ = What::from_parts(kind, &format!("{{{}}}", pairs.join(",")));
    }
}

#[test]
fn the_checksum_here_is_the_one_of_exports() {
    let events: Vec<_> = Log::open(MemoryStore::new(), Writer(1)).events().to_vec();
    assert_eq!(
        sealed(&json_of(&write_export(&events))),
        write_export(&events)
    );
    assert_eq!(crc(b"123456789"), 0xcbf4_3926);
}

/// A nest deeper than any stack is looked through without one: it is no event
/// that this build knows, and is kept as it came, like all of those.
#[test]
fn a_deep_nest_stops_nothing() {
    const DEEP: usize = 100_000;
    for kind in KINDS {
        assert_eq!(What::from_parts(kind, &"[".repeat(DEEP)), None, "{kind}");
    }
    let body = format!("{}{}", "[".repeat(DEEP), "]".repeat(DEEP));
    let line = format!(
        r#"{{"t":1,"w":"0000000000000001","at":1,"off":0,"k":"case-answered","d":{body}}}"#
    );
    let read = read_export(sealed(&[line]).as_bytes()).unwrap();
    assert!(matches!(&read[0].what, What::Unknown(it) if it.body() == body));
}

//! The log in a browser's ordinary and bad days.

mod common;

use common::{lesson, moment};
use record::{
    Event, Fault, Id, ImportError, Log, MemoryStore, SegmentKey, Store, StoreError, Writer,
    read_export, write_export,
};

const A: Writer = Writer(0xa);
const B: Writer = Writer(0xb);

fn filled(store: &MemoryStore, writer: Writer, count: i64) -> Log<MemoryStore> {
    let mut log = Log::open(store.clone(), writer);
    for at in 0..count {
        log.append(moment(at), lesson(&format!("{writer}-{at}")));
    }
    log
}

#[test]
fn segments_stay_small_and_are_numbered() {
    let store = MemoryStore::new();
    filled(&store, A, 130);
    let keys = store.keys().unwrap();
    assert_eq!(
        keys,
        [1, 2, 3].map(|number| SegmentKey { writer: A, number }.to_string())
    );
    let lines: Vec<usize> = keys
        .iter()
        .map(|key| store.get(key).unwrap().unwrap().lines().count())
        .collect();
    assert_eq!(lines, [1 + 64, 1 + 64, 1 + 2]);
}

#[test]
fn opening_again_with_the_same_writer_begins_a_new_segment() {
    let store = MemoryStore::new();
    filled(&store, A, 2);
    let before = store.get("trayward/1/000000000000000a/1").unwrap();
    let mut again = Log::open(store.clone(), A);
    again.append(moment(0), lesson("later"));
    assert_eq!(store.get("trayward/1/000000000000000a/1").unwrap(), before);
    assert_eq!(Log::open(store, B).events().len(), 3);
}

#[test]
fn another_tab_is_seen_by_refresh() {
    let store = MemoryStore::new();
    let mut a = Log::open(store.clone(), A);
    let mut b = filled(&store, B, 3);
    assert_eq!(a.refresh(), 3);
    assert_eq!(a.refresh(), 0);
    b.append(moment(9), lesson("new"));
    assert_eq!(a.refresh_key("trayward/theme"), 0);
    assert_eq!(a.refresh_key("trayward/1/000000000000000b/1"), 1);
    assert_eq!(a.events(), b.events());
}

#[test]
fn a_forbidden_store_is_said_at_once_and_the_log_goes_on() {
    let store = MemoryStore::new();
    store.forbid(true);
    let mut log = Log::open(store.clone(), A);
    let said = log.unsaved().unwrap();
    assert_eq!((said.events, &said.why), (0, &StoreError::Forbidden));
    assert!(said.to_string().contains("export"), "{said}");

    let appended = log.append(moment(1), lesson("amalgam"));
    assert_eq!(appended.unsaved.unwrap().events, 1);
    assert_eq!(log.events().len(), 1);
    assert_eq!(read_export(log.export().as_bytes()).unwrap(), log.events());

    store.forbid(false);
    assert_eq!(log.retry(), None);
    assert_eq!(Log::open(store, B).events(), log.events());
}

#[test]
fn a_store_that_opens_late_is_read_then() {
    let store = MemoryStore::new();
    filled(&store, B, 2);
    store.forbid(true);
    let mut log = Log::open(store.clone(), A);
    store.forbid(false);
    assert_eq!(log.retry(), None);
    assert_eq!(log.events().len(), 2);
}

#[test]
fn when_the_store_is_cleared_elsewhere_memory_remains() {
    let store = MemoryStore::new();
    let mut log = filled(&store, A, 3);
    for key in store.keys().unwrap() {
        store.remove(&key).unwrap();
    }
    log.refresh();
    log.append(moment(9), lesson("after"));
    assert_eq!(log.events().len(), 4);
    assert_eq!(Log::open(store, B).events(), log.events());
}

/// Damage done to a stored segment of three events: what is reported, and how
/// many events remain.
#[test]
fn damage_is_named_and_the_rest_kept() {
    type Damage = fn(&str) -> String;
    let table: [(&str, Damage, usize, Fault); 9] = [
        (
            "a changed letter",
            |t| t.replacen("-1\"", "-9\"", 1),
            2,
            Fault::Line(3),
        ),
        ("torn", |t| t[..t.len() - 9].into(), 2, Fault::Line(4)),
        ("no last line end", |t| t.trim_end().into(), 3, Fault::Torn),
        (
            "a line gone",
            |t| {
                t.lines()
                    .take(3)
                    .fold(String::new(), |all, line| all + line + "\n")
            },
            2,
            Fault::Count { said: 3, found: 2 },
        ),
        (
            "header changed",
            |t| t.replacen(" 1 ", " 1 1", 1),
            3,
            Fault::Header,
        ),
        (
            "newer",
            |t| t.replacen("record 1", "record 2", 1),
            0,
            Fault::Newer(2),
        ),
        (
            "foreign",
            |_| "{\"theme\":\"dark\"}".into(),
            0,
            Fault::Foreign,
        ),
        ("emptied", |_| String::new(), 0, Fault::Foreign),
        (
            "copied from elsewhere",
            |_| {
                let other = MemoryStore::new();
                filled(&other, B, 1);
                other.get("trayward/1/000000000000000b/1").unwrap().unwrap()
            },
            1,
            Fault::Misplaced,
        ),
    ];
    for (name, damage, kept, fault) in table {
        let store = MemoryStore::new();
        filled(&store, A, 3);
        let key = SegmentKey {
            writer: A,
            number: 1,
        }
        .to_string();
        let damaged = damage(&store.get(&key).unwrap().unwrap());
        store.put(&key, &damaged).unwrap();

        let mut log = Log::open(store.clone(), A);
        let report = log.reports().next().unwrap_or_else(|| panic!("{name}"));
        assert_eq!((&report.key, report.kept), (&key, kept), "{name}");
        assert_eq!(report.faults[0], fault, "{name}");
        let sentence = report.to_string();
        assert!(
            sentence.contains(&key) && sentence.ends_with('.'),
            "{sentence}"
        );
        assert_eq!(log.events().len(), kept, "{name}");

        log.append(moment(9), lesson("after"));
        assert_eq!(store.get(&key).unwrap(), Some(damaged), "{name}");
        assert_eq!(Log::open(store, B).events(), log.events(), "{name}");
    }
}

#[test]
fn damage_done_while_open_is_stepped_around() {
    let store = MemoryStore::new();
    let mut log = filled(&store, A, 3);
    let key = SegmentKey {
        writer: A,
        number: 1,
    }
    .to_string();
    store.put(&key, "scribble").unwrap();
    log.append(moment(9), lesson("after"));
    assert_eq!(store.get(&key).unwrap().as_deref(), Some("scribble"));
    let again = Log::open(store, B);
    assert_eq!(again.events(), log.events());
    assert_eq!(again.reports().count(), 1);
}

#[test]
fn a_copied_tab_far_ahead_is_stepped_around() {
    let store = MemoryStore::new();
    let mut behind = Log::open(store.clone(), A);
    let ahead = filled(&store, A, 64 * 20);
    let appended = behind.append(moment(-5), lesson("behind"));
    assert_eq!(appended.unsaved, None);
    behind.refresh();
    assert_eq!(behind.events().len(), ahead.events().len() + 1);
    assert_eq!(Log::open(store, B).events(), behind.events());
}

#[test]
fn segments_of_a_later_form_are_named_and_left() {
    let store = MemoryStore::new();
    store.put("trayward/2/whatever", "anything").unwrap();
    let log = Log::open(store.clone(), A);
    assert_eq!(log.reports().next().unwrap().faults, [Fault::Newer(2)]);
    assert_eq!(
        store.get("trayward/2/whatever").unwrap().unwrap(),
        "anything"
    );
}

#[test]
fn a_file_that_is_not_right_is_refused_in_words() {
    let store = MemoryStore::new();
    let mut log = filled(&store, A, 2);
    let good = log.export();
    let table: [(Vec<u8>, ImportError); 8] = [
        (Vec::new(), ImportError::Empty),
        (b"\x89PNG\r\n\x1a\n".to_vec(), ImportError::Foreign),
        (b"name,score\n".to_vec(), ImportError::Foreign),
        (
            good.replacen("export 1", "export 2", 1).into(),
            ImportError::Newer(2),
        ),
        (good[..good.len() - 1].into(), ImportError::CutShort),
        (good[..good.len() / 2].into(), ImportError::CutShort),
        (good.replacen("-0", "-7", 1).into(), ImportError::Changed),
        (good.replace('\n', "\r\n").into(), ImportError::Changed),
    ];
    let (events, keys) = (log.events().to_vec(), store.keys().unwrap());
    for (file, error) in table {
        assert_eq!(log.import(&file), Err(error));
        assert!(error.to_string().ends_with("Nothing was imported."));
        assert_eq!(
            (log.events(), store.keys().unwrap()),
            (&events[..], keys.clone())
        );
    }
}

#[test]
fn an_import_goes_to_the_store_and_is_counted() {
    let from = filled(&MemoryStore::new(), B, 100);
    let store = MemoryStore::new();
    let mut log = filled(&store, A, 3);
    let imported = log.import(from.export().as_bytes()).unwrap();
    assert_eq!(
        (imported.new, imported.known, imported.unsaved),
        (100, 0, None)
    );
    assert_eq!(Log::open(store, Writer(0xc)).events().len(), 103);
}

#[test]
fn a_clock_set_back_does_not_reorder_a_writer() {
    let mut log = Log::open(MemoryStore::new(), A);
    for at in [5_000, 2_000, 9_000, -1] {
        log.append(moment(at), lesson(&at.to_string()));
    }
    let times: Vec<i64> = log.events().iter().map(|event| event.at.utc_ms).collect();
    assert_eq!(times, [5_000, 2_000, 9_000, -1]);
}

#[test]
fn no_imported_event_can_use_the_counter_up() {
    for tick in [u64::MAX, 1 << 53, (1 << 53) - 1] {
        let last = Event {
            id: Id { tick, writer: B },
            at: moment(0),
            what: lesson("far ahead"),
        };
        let mut log = Log::open(MemoryStore::new(), A);
        log.import(write_export(&[last]).as_bytes()).unwrap();
        let ids: Vec<Id> = (0..3)
            .map(|at| log.append(moment(at), lesson("a")).id)
            .collect();
        assert!(ids.is_sorted_by(|a, b| a < b), "{tick} {ids:?}");
        assert_eq!(Log::open(log.store().clone(), B).events(), log.events());
    }
}

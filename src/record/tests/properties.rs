//! The laws of the record, tried on arbitrary events and arbitrary damage.

mod common;

use common::{event, events, lesson, moment, store_of, what};
use proptest::collection::vec;
use proptest::prelude::*;
use record::{
    Event, Id, Log, MemoryStore, SegmentKey, Store, StoreError, What, Writer, folds, read_export,
    segment, union, write_export,
};

const WRITER: Writer = Writer(77);

fn sorted(events: &[Event]) -> Vec<Event> {
    union(events, &[])
}

fn only_key(store: &MemoryStore) -> String {
    store.keys().unwrap().pop().unwrap()
}

fn key() -> SegmentKey {
    SegmentKey {
        writer: WRITER,
        number: 1,
    }
}

fn flip(text: &str, at: prop::sample::Index, bit: u8) -> Vec<u8> {
    let mut bytes = text.as_bytes().to_vec();
    let place = at.index(bytes.len());
    bytes[place] ^= 1 << bit;
    bytes
}

proptest! {
    #[test]
    fn merging_is_commutative_associative_and_idempotent(
        a in events(), b in events(), c in events()
    ) {
        prop_assert_eq!(union(&a, &b), union(&b, &a));
        prop_assert_eq!(union(&union(&a, &b), &c), union(&a, &union(&b, &c)));
        prop_assert_eq!(union(&a, &union(&a, &b)), union(&a, &b));
    }

    #[test]
    fn importing_is_commutative_and_idempotent(a in events(), b in events()) {
        let take = |files: &[&[Event]]| {
            let mut log = Log::open(MemoryStore::new(), WRITER);
            for file in files {
                log.import(write_export(file).as_bytes()).unwrap();
            }
            // What is stored is what is in memory.
            let again = Log::open(log.store().clone(), Writer(78));
            assert_eq!(again.events(), log.events());
            again.events().to_vec()
        };
        let all = union(&a, &b);
        prop_assert_eq!(&take(&[&a, &b]), &all);
        prop_assert_eq!(&take(&[&b, &a]), &all);
        prop_assert_eq!(&take(&[&a, &b, &a, &b]), &all);

        let mut log = Log::open(store_of(&a), Writer(78));
        let had = log.events().len();
        let first = log.import(write_export(&b).as_bytes()).unwrap();
        prop_assert_eq!(first.new, all.len() - had);
        let second = log.import(write_export(&b).as_bytes()).unwrap();
        prop_assert_eq!((second.new, second.known), (0, b.len()));
    }

    #[test]
    fn events_survive_file_and_store(events in events()) {
        let file = write_export(&events);
        prop_assert_eq!(read_export(file.as_bytes()).unwrap(), events.clone());
        let log = Log::open(store_of(&events), Writer(1));
        prop_assert_eq!(log.events(), sorted(&events));
        prop_assert_eq!(log.reports().count(), 0);
    }

    #[test]
    fn parts_of_what_go_together_again(what in what()) {
        prop_assert_eq!(What::from_parts(what.kind(), &what.body()), Some(what));
    }

    #[test]
    fn a_flipped_bit_in_a_segment_is_reported(
        events in vec(event(), 1..6), at in any::<prop::sample::Index>(), bit in 0..8u8
    ) {
        let events = sorted(&events);
        let store = store_of(&events);
        let text = store.get(&only_key(&store)).unwrap().unwrap();
        // A store hands out text; what was no text comes back mended.
        let bytes = flip(&text, at, bit);
        let damaged = String::from_utf8_lossy(&bytes);
        let reading = segment::read(key(), &damaged);
        prop_assert!(!reading.faults.is_empty());
        prop_assert!(reading.events.iter().all(|event| events.contains(event)));

        // The log says so, keeps the rest, and leaves the segment as it is.
        store.put(&only_key(&store), &damaged).unwrap();
        let mut log = Log::open(store.clone(), WRITER);
        prop_assert_eq!(log.reports().count(), 1);
        prop_assert_eq!(log.reports().next().unwrap().kept, reading.events.len());
        log.append(moment(0), lesson("after"));
        prop_assert_eq!(store.get(&key().to_string()).unwrap().unwrap(), damaged);
        let again = Log::open(store, Writer(1));
        prop_assert_eq!(again.events(), log.events());
    }

    #[test]
    fn a_flipped_bit_in_an_export_is_refused(
        events in events(), at in any::<prop::sample::Index>(), bit in 0..8u8
    ) {
        let bytes = flip(&write_export(&events), at, bit);
        prop_assert!(read_export(&bytes).is_err());
        let mut log = Log::open(MemoryStore::new(), WRITER);
        prop_assert!(log.import(&bytes).is_err());
        prop_assert!(log.events().is_empty());
        prop_assert!(log.store().keys().unwrap().is_empty());
    }

    #[test]
    fn arbitrary_bytes_are_refused(bytes in vec(any::<u8>(), 0..200)) {
        prop_assert!(read_export(&bytes).is_err());
        let mut headed = b"trayward-record-export 1\n".to_vec();
        headed.extend(bytes);
        prop_assert!(read_export(&headed).is_err());
    }

    #[test]
    fn arbitrary_text_in_the_store_stops_nothing(
        text in any::<String>(), rest in any::<String>(), events in events()
    ) {
        let store = store_of(&events);
        let places = [
            ("trayward/1/0000000000000001/1".to_owned(), text.clone()),
            ("trayward/1/0000000000000001/2".to_owned(), format!("trayward-record 1 2 {text}")),
            (format!("trayward/1/{rest}"), text.clone()),
            (format!("trayward/{rest}"), text),
        ];
        for (key, text) in &places {
            store.put(key, text).unwrap();
        }
        let mut log = Log::open(store.clone(), Writer(1));
        prop_assert_eq!(log.events(), sorted(&events));
        prop_assert!(log.reports().count() >= 2);
        log.append(moment(0), lesson("after"));
        for (key, text) in &places {
            prop_assert_eq!(&store.get(key).unwrap().unwrap(), text);
        }
    }

    #[test]
    fn a_segment_cut_anywhere_keeps_its_whole_lines(
        events in vec(event(), 1..5), at in any::<prop::sample::Index>()
    ) {
        let events = sorted(&events);
        let store = store_of(&events);
        let text = store.get(&only_key(&store)).unwrap().unwrap();
        let mut end = at.index(text.len());
        while !text.is_char_boundary(end) {
            end -= 1;
        }
        let cut = &text[..end];
        let reading = segment::read(key(), cut);
        prop_assert!(!reading.faults.is_empty());
        let whole = cut.matches('\n').count().saturating_sub(1);
        prop_assert!(reading.events.len() >= whole);
        prop_assert_eq!(&reading.events[..], &events[..reading.events.len()]);
    }

    #[test]
    fn each_event_sorts_after_all_that_were_seen(
        seen in events(), clocks in vec(any::<i64>(), 1..10)
    ) {
        let mut log = Log::open(store_of(&seen), WRITER);
        let mut ids: Vec<Id> = Vec::new();
        for clock in clocks {
            ids.push(log.append(moment(clock), lesson("a")).id);
        }
        prop_assert!(ids.is_sorted_by(|a, b| a < b));
        let followed = seen.iter().filter(|event| event.id.tick <= 1 << 53);
        prop_assert!(followed.map(|event| event.id).max() < Some(ids[0]));
    }

    #[test]
    fn folds_do_not_depend_on_the_way_events_came(a in events(), b in events()) {
        let (one, other) = (union(&a, &b), union(&b, &a));
        prop_assert_eq!(folds::under_way(&one), folds::under_way(&other));
        prop_assert_eq!(folds::by_competency(&one), folds::by_competency(&other));
        prop_assert_eq!(folds::settings(&one), folds::settings(&other));
        for case in folds::finished_cases(&one) {
            let whole = folds::sitting(&one, case.sitting).unwrap();
            prop_assert_eq!(whole.finish, Some(case.finish));
        }
        for open in folds::under_way(&one) {
            prop_assert_eq!(folds::sitting(&one, open.id), Some(open));
        }
    }
}

proptest! {
    // Each case writes hundreds of segments: fewer of them keep the run short.
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn two_tabs_lose_nothing(
        turns in vec((any::<bool>(), any::<bool>()), 0..200), same_writer in any::<bool>()
    ) {
        // Even a copied tab, which has the writer id of the first.
        let store = MemoryStore::new();
        let mut tabs = [
            Log::open(store.clone(), Writer(1)),
            Log::open(store.clone(), Writer(if same_writer { 1 } else { 2 })),
        ];
        let mut times = 0;
        for (which, refresh) in turns {
            let tab = &mut tabs[usize::from(which)];
            if refresh {
                tab.refresh();
            }
            times += 1;
            prop_assert_eq!(tab.append(moment(times), lesson("a")).unsaved, None);
        }
        for tab in &mut tabs {
            tab.refresh();
        }
        let [a, b] = tabs;
        let again = Log::open(store, Writer(3));
        prop_assert_eq!(again.events().len(), usize::try_from(times).unwrap());
        prop_assert_eq!(a.events(), again.events());
        prop_assert_eq!(b.events(), again.events());
        prop_assert_eq!(again.reports().count(), 0);
    }

    #[test]
    fn a_full_store_loses_nothing(
        lengths in vec(0..200usize, 1..150), room in 0..20_000usize
    ) {
        let store = MemoryStore::new();
        store.limit(Some(room));
        let mut log = Log::open(store.clone(), WRITER);
        let mut waiting = 0;
        for (at, length) in lengths.iter().enumerate() {
            let appended = log.append(moment(0), lesson(&"x".repeat(*length)));
            prop_assert_eq!(log.events().len(), at + 1);
            waiting = appended.unsaved.map_or(0, |unsaved| {
                assert_eq!(unsaved.why, StoreError::Full);
                unsaved.events
            });
        }
        let stored = Log::open(store.clone(), Writer(1)).events().len();
        prop_assert_eq!(stored + waiting, lengths.len());
        store.limit(None);
        prop_assert_eq!(log.append(moment(0), lesson("room again")).unsaved, None);
        let again = Log::open(store, Writer(1));
        prop_assert_eq!(again.events(), log.events());
    }
}

#[test]
fn an_export_cut_at_any_byte_is_refused() {
    let mut log = Log::open(MemoryStore::new(), WRITER);
    for id in ["amalgam", "composite \u{1f9b7}", "line\nend 1"] {
        log.append(moment(5), lesson(id));
    }
    let file = log.export();
    for end in 0..file.len() {
        assert!(
            read_export(&file.as_bytes()[..end]).is_err(),
            "cut at {end}"
        );
    }
    assert!(read_export(file.as_bytes()).is_ok());
}

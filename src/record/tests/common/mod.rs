//! Arbitrary events for the property tests.
#![allow(dead_code, reason = "each test file uses its own part of this")]

use proptest::collection::vec;
use proptest::prelude::*;
use record::{
    CaseAnswered, CaseFinished, CaseStarted, Event, Id, LessonRead, Log, MemoryStore, Moment,
    PerCent, SettingChanged, SittingId, Verdict, What, Writer, write_export,
};

pub fn moment(utc_ms: i64) -> Moment {
    Moment {
        utc_ms,
        offset_min: 60,
    }
}

pub fn lesson(id: &str) -> What {
    What::LessonRead(LessonRead { lesson: id.into() })
}

/// Any text at all, and often the letters that break formats.
fn text() -> impl Strategy<Value = String> {
    let odd = prop_oneof![
        Just('\n'),
        Just('\r'),
        Just('\0'),
        Just('"'),
        Just('\\'),
        Just(' '),
        Just('\u{2028}'),
        Just('\u{feff}'),
        Just('\u{202e}'),
        Just('\u{fffd}'),
        Just('\u{1f9b7}'),
        Just('\u{301}'),
        any::<char>(),
    ];
    vec(odd, 0..12).prop_map(|letters| letters.into_iter().collect())
}

fn json() -> impl Strategy<Value = String> {
    let leaf = prop_oneof![
        Just("null".to_owned()),
        Just("-0.50e+3".to_owned()),
        any::<u64>().prop_map(|n| n.to_string()),
        text().prop_map(|t| serde_json::to_string(&t).unwrap()),
    ];
    leaf.prop_recursive(3, 12, 4, |inner| {
        prop_oneof![
            vec(inner.clone(), 0..4).prop_map(|items| format!("[{}]", items.join(" ,"))),
            vec((text(), inner), 0..4).prop_map(|fields| {
                let fields: Vec<String> = fields
                    .iter()
                    .map(|(key, value)| format!("{}: {value}", serde_json::to_string(key).unwrap()))
                    .collect();
                format!("{{{}}}", fields.join(","))
            }),
        ]
    })
}

fn verdict() -> impl Strategy<Value = Verdict> {
    proptest::sample::select(Verdict::ALL.to_vec())
}

/// Few sittings, so that events meet.
fn sitting() -> impl Strategy<Value = SittingId> {
    prop_oneof![3 => 0..4u64, 1 => any::<u64>()].prop_map(SittingId)
}

pub fn what() -> impl Strategy<Value = What> {
    prop_oneof![
        (sitting(), text(), any::<u64>()).prop_map(|(sitting, case, seed)| {
            What::CaseStarted(CaseStarted {
                sitting,
                case,
                seed,
            })
        }),
        (
            sitting(),
            text(),
            vec(text(), 0..4),
            verdict(),
            any::<u8>(),
            text(),
            any::<u32>(),
        )
            .prop_map(
                |(sitting, decision, answer, verdict, marks, competency, seconds)| {
                    What::CaseAnswered(CaseAnswered {
                        sitting,
                        decision,
                        answer,
                        verdict,
                        per_cent: PerCent::of(marks),
                        competency,
                        seconds,
                    })
                }
            ),
        (sitting(), any::<u8>()).prop_map(|(sitting, marks)| {
            What::CaseFinished(CaseFinished {
                sitting,
                per_cent: PerCent::of(marks),
            })
        }),
        text().prop_map(|lesson| What::LessonRead(LessonRead { lesson })),
        (text(), text())
            .prop_map(|(key, value)| What::SettingChanged(SettingChanged { key, value })),
        (
            prop_oneof![text(), Just("case-answered".to_owned())],
            json()
        )
            .prop_map(|(kind, body)| What::from_parts(&kind, &body).unwrap()),
    ]
}

pub fn event() -> impl Strategy<Value = Event> {
    let tick = prop_oneof![3 => 0..5u64, 1 => any::<u64>()];
    let writer = prop_oneof![3 => 0..3u64, 1 => any::<u64>()];
    (tick, writer, any::<i64>(), any::<i16>(), what()).prop_map(
        |(tick, writer, utc_ms, offset_min, what)| Event {
            id: Id {
                tick,
                writer: Writer(writer),
            },
            at: Moment { utc_ms, offset_min },
            what,
        },
    )
}

pub fn events() -> impl Strategy<Value = Vec<Event>> {
    vec(event(), 0..20)
}

/// A store with everything in one fresh log's segments.
pub fn store_of(events: &[Event]) -> MemoryStore {
    let store = MemoryStore::new();
    let mut log = Log::open(store.clone(), Writer(77));
    log.import(write_export(events).as_bytes()).unwrap();
    store
}

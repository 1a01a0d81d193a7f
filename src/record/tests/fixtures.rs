//! Stored forms are read for ever. The files in `fixtures/` were written once
//! by the version they name, checked against another library's CRC-32 (zlib),
//! and never change; a new version adds files of its own.

use record::{
    CaseAnswered, CaseFinished, CaseStarted, Event, Id, LessonRead, Log, MemoryStore, Moment,
    PerCent, SettingChanged, SittingId, Store, Verdict, What, Writer, folds, read_export,
};

const V1_SEGMENT: &str = include_str!("../fixtures/v1-segment.txt");
const V1_EXPORT: &[u8] = include_bytes!("../fixtures/v1-export.txt");

const WRITER: Writer = Writer(0x00f3_a1c9_52be_7d04);
const SITTING: SittingId = SittingId(0x1d2c_3b4a_5968_7786);

fn answered(decision: &str, answer: &[&str], verdict: Verdict, about: &str) -> CaseAnswered {
    CaseAnswered {
        sitting: SITTING,
        decision: decision.into(),
        answer: answer.iter().map(|&id| id.to_owned()).collect(),
        verdict,
        per_cent: PerCent::of(0),
        competency: about.into(),
        seconds: 0,
    }
}

/// What stands in the files of version 1.
fn v1_events() -> Vec<Event> {
    let whats = [
        What::SettingChanged(SettingChanged {
            key: "scheme".into(),
            value: "dark".into(),
        }),
        What::LessonRead(LessonRead {
            lesson: "deep-caries-temporary".into(),
        }),
        What::CaseStarted(CaseStarted {
            sitting: SITTING,
            case: "deep-caries".into(),
            seed: u64::MAX,
            with: None,
            card: None,
        }),
        What::CaseAnswered(CaseAnswered {
            per_cent: PerCent::of(92),
            seconds: 74,
            ..answered(
                "tray",
                &["mirror", "explorer", "odd \"\\\n\0\u{1f9b7}\u{301} id"],
                Verdict::Right,
                "set-up",
            )
        }),
        What::CaseAnswered(CaseAnswered {
            per_cent: PerCent::of(60),
            ..answered("liner", &[], Verdict::Acceptable, "pulp-protection")
        }),
        What::CaseAnswered(CaseAnswered {
            seconds: 12,
            ..answered(
                "temporary",
                &["zinc-phosphate"],
                Verdict::Wrong,
                "materials",
            )
        }),
        What::CaseAnswered(CaseAnswered {
            seconds: 5,
            ..answered("hand-over", &["over-the-face"], Verdict::Unsafe, "transfer")
        }),
        What::from_parts(
            "spore-test-logged",
            r#"{"load": 7, "passed":true,"at":1.50}"#,
        )
        .unwrap(),
        What::CaseFinished(CaseFinished {
            sitting: SITTING,
            per_cent: PerCent::of(100),
        }),
    ];
    let at = |index: u64| 1_764_055_845_000 + index * 30_000;
    (0..)
        .zip(whats)
        .map(|(index, what)| Event {
            id: Id {
                tick: at(index),
                writer: WRITER,
            },
            at: Moment {
                utc_ms: at(index).cast_signed(),
                offset_min: -210,
            },
            what,
        })
        .collect()
}

#[test]
fn a_segment_of_version_1_is_read() {
    let store = MemoryStore::new();
    store
        .put("trayward/1/00f3a1c952be7d04/1", V1_SEGMENT)
        .unwrap();
    let log = Log::open(store, Writer(1));
    assert_eq!(log.events(), v1_events());
    assert_eq!(log.reports().count(), 0);
    assert_eq!(folds::unknown_kinds(log.events()).len(), 1);
}

#[test]
fn an_export_of_version_1_is_read() {
    assert_eq!(read_export(V1_EXPORT).unwrap(), v1_events());
}

/// While version 1 is the one being written, a change of its letters is a
/// mistake: it would need a version of its own.
#[test]
fn version_1_is_still_written_letter_by_letter() {
    let mut log = Log::open(MemoryStore::new(), WRITER);
    for event in v1_events() {
        log.append(event.at, event.what);
    }
    assert_eq!(log.export().as_bytes(), V1_EXPORT);
    let key = "trayward/1/00f3a1c952be7d04/1";
    assert_eq!(log.store().get(key).unwrap().unwrap(), V1_SEGMENT);
}

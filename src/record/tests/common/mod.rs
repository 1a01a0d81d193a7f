//! Arbitrary events for the property tests.
#![allow(dead_code, reason = "each test file uses its own part of this")]

use proptest::prelude::*;
use proptest::{collection::vec, option};
use record::{
    AssignmentTaken, CaseAnswered, CaseFinished, CaseStarted, Event, FormBegun, FormFinished,
    FormFlagged, FormPaused, Given, HandedIn, Id, LessonRead, Log, MemoryStore, MixHandedOver,
    Moment, PerCent, QuestionAnswered, QuestionSetAside, SettingChanged, SittingBegun,
    SittingEnded, SittingId, SkillChecked, TaskBegun, Verdict, What, Writer, write_export,
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

/// Letters that break formats.
const ODD: [char; 12] = [
    '\n',
    '\r',
    '\0',
    '"',
    '\\',
    ' ',
    '\u{2028}',
    '\u{feff}',
    '\u{202e}',
    '\u{fffd}',
    '\u{1f9b7}',
    '\u{301}',
];

/// Any text at all, every other letter an odd one. Made from numbers, since
/// these texts are most of the work of a test run.
fn text() -> impl Strategy<Value = String> {
    vec(any::<u32>(), 0..8).prop_map(|numbers| {
        let letter = |number: u32| match char::from_u32(number % 0x22_0000) {
            Some(letter) => letter,
            None => ODD[number as usize % ODD.len()],
        };
        numbers.into_iter().map(letter).collect()
    })
}

/// JSON of many shapes on one line, also in spellings that are not ours.
fn json() -> impl Strategy<Value = String> {
    let shapes = [
        "TEXT",
        "-0.50e+3",
        "null",
        "[ NUMBER ,TEXT]",
        "{TEXT: {\"a\":[[], {}, NUMBER]} , TEXT :true}",
        "{\"sitting\":\"0000000000000001\",\"decision\":TEXT}",
    ];
    let shape = proptest::sample::select(shapes.to_vec());
    (shape, text(), any::<u64>()).prop_map(|(shape, text, number)| {
        shape
            .replace("NUMBER", &number.to_string())
            .replace("TEXT", &serde_json::to_string(&text).unwrap())
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
        (
            sitting(),
            text(),
            any::<u64>(),
            option::of(text()),
            option::of(text()),
        )
            .prop_map(|(sitting, case, seed, with, card)| {
                What::CaseStarted(CaseStarted {
                    sitting,
                    case,
                    seed,
                    with,
                    card,
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
        study(),
        class(),
        (
            prop_oneof![text(), Just("case-answered".to_owned())],
            json()
        )
            .prop_map(|(kind, body)| What::from_parts(&kind, &body).unwrap()),
    ]
}

fn given() -> impl Strategy<Value = Given> {
    prop_oneof![
        text().prop_map(Given::One),
        vec(text(), 0..4).prop_map(Given::Many),
        vec(text(), 0..4).prop_map(Given::Order),
        vec((text(), text()), 0..3).prop_map(Given::Pairs),
        text().prop_map(Given::Number),
    ]
}

/// What happens in sittings of questions and in practice forms.
fn study() -> impl Strategy<Value = What> {
    let few = || proptest::sample::select(vec!["a", "b", "c"]).prop_map(str::to_owned);
    prop_oneof![
        (sitting(), any::<u16>(), vec(few(), 0..4)).prop_map(|(sitting, minutes, questions)| {
            What::SittingBegun(SittingBegun {
                sitting,
                minutes,
                questions,
            })
        }),
        sitting().prop_map(|sitting| What::SittingEnded(SittingEnded { sitting })),
        (
            sitting(),
            few(),
            any::<u64>(),
            given(),
            verdict(),
            any::<(u8, bool, bool, u32)>(),
        )
            .prop_map(|(sitting, question, wording, answer, verdict, rest)| {
                let (marks, hint, unsure, seconds) = rest;
                What::QuestionAnswered(QuestionAnswered {
                    sitting,
                    question,
                    wording,
                    competency: "set-up".into(),
                    answer,
                    verdict,
                    per_cent: PerCent::of(marks),
                    hint,
                    unsure,
                    seconds,
                })
            }),
        (
            sitting(),
            vec(few(), 0..4),
            option::of(text()),
            option::of(any::<u16>()),
            any::<u8>()
        )
            .prop_map(|(form, questions, code, minutes, pass)| {
                What::FormBegun(FormBegun {
                    form,
                    questions,
                    code,
                    minutes,
                    pass: PerCent::of(pass),
                })
            }),
        (sitting(), few(), any::<bool>()).prop_map(|(form, question, flagged)| {
            What::FormFlagged(FormFlagged {
                form,
                question,
                flagged,
            })
        }),
        (sitting(), any::<bool>())
            .prop_map(|(form, paused)| What::FormPaused(FormPaused { form, paused })),
        sitting().prop_map(|form| What::FormFinished(FormFinished { form })),
        (few(), option::of(text())).prop_map(|(question, note)| {
            What::QuestionSetAside(QuestionSetAside { question, note })
        }),
    ]
}

/// What happens in a class and at the bench.
fn class() -> impl Strategy<Value = What> {
    prop_oneof![
        (
            sitting(),
            text(),
            any::<(u16, u8, u16)>(),
            option::of(any::<u16>()),
        )
            .prop_map(|(run, code, (seat, attempt, tasks), due)| {
                What::AssignmentTaken(AssignmentTaken {
                    run,
                    assignment: "7d0c11f2".into(),
                    code,
                    seat,
                    attempt,
                    title: "Assignment".into(),
                    due,
                    tasks,
                    about: None,
                    minutes: None,
                })
            }),
        (sitting(), any::<u16>(), sitting()).prop_map(|(run, place, sitting)| {
            What::TaskBegun(TaskBegun {
                run,
                place,
                sitting,
            })
        }),
        (sitting(), text()).prop_map(|(run, code)| What::HandedIn(HandedIn { run, code })),
        (
            text(),
            vec(text(), 0..3),
            vec(text(), 0..3),
            any::<(bool, bool)>()
        )
            .prop_map(|(procedure, done, missed, (critical, shown))| {
                What::SkillChecked(SkillChecked {
                    procedure,
                    done,
                    missed,
                    critical,
                    shown,
                })
            }),
        (sitting(), text(), verdict(), any::<u8>()).prop_map(
            |(sitting, replay, verdict, marks)| {
                What::MixHandedOver(MixHandedOver {
                    sitting,
                    material: "zinc-oxide".into(),
                    usage: "temporary".into(),
                    replay,
                    verdict,
                    per_cent: PerCent::of(marks),
                    competency: "mixing".into(),
                    hint: false,
                    seconds: 131,
                })
            }
        ),
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

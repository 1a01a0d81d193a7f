//! What the record says of sittings of questions and of practice forms.

mod common;

use common::events;
use proptest::prelude::*;
use record::folds::Evidence;
use record::{
    Event, FormBegun, FormFinished, FormFlagged, FormPaused, Given, Log, MemoryStore, Moment,
    PerCent, QuestionAnswered, QuestionSetAside, SittingBegun, SittingEnded, SittingId, Verdict,
    What, Writer, folds, read_export,
};

const STUDY_EXPORT: &[u8] = include_bytes!("../fixtures/v1-study-export.txt");

const ONE: SittingId = SittingId(1);
const FORM: SittingId = SittingId(0xf0);

fn answered(sitting: SittingId, question: &str, verdict: Verdict) -> What {
    What::QuestionAnswered(QuestionAnswered {
        sitting,
        question: question.into(),
        wording: u64::MAX,
        competency: "set-up".into(),
        answer: Given::One("mirror".into()),
        verdict,
        per_cent: PerCent::of(100),
        hint: false,
        unsure: false,
        seconds: 9,
    })
}

fn begun() -> What {
    What::FormBegun(FormBegun {
        form: FORM,
        questions: vec!["a".into(), "b".into()],
        code: None,
        minutes: Some(10),
        pass: PerCent::of(75),
    })
}

fn flagged(question: &str, flagged: bool) -> What {
    What::FormFlagged(FormFlagged {
        form: FORM,
        question: question.into(),
        flagged,
    })
}

fn paused(paused: bool) -> What {
    What::FormPaused(FormPaused { form: FORM, paused })
}

/// These happen a minute apart.
fn record(whats: Vec<What>) -> Log<MemoryStore> {
    let mut log = Log::open(MemoryStore::new(), Writer(0x57));
    for (minute, what) in (0..).zip(whats) {
        let at = Moment {
            utc_ms: 1_764_055_845_000 + minute * 60_000,
            offset_min: 60,
        };
        log.append(at, what);
    }
    log
}

fn events_of(whats: Vec<What>) -> Vec<Event> {
    record(whats).events().to_vec()
}

#[test]
fn a_sitting_is_gone_on_with_where_it_was() {
    let begun = |sitting| {
        What::SittingBegun(SittingBegun {
            sitting,
            minutes: 5,
            questions: vec!["a".into(), "b".into()],
        })
    };
    let ended = |sitting| What::SittingEnded(SittingEnded { sitting });
    let mut whats = vec![begun(ONE), answered(ONE, "a", Verdict::Wrong)];
    let events = events_of(whats.clone());
    assert_eq!(folds::study_under_way(&events), Some((ONE, 5)));
    let study = folds::study(&events, ONE).unwrap();
    assert_eq!((study.questions.len(), study.answers.len()), (2, 1));
    assert_eq!(study.ended, None);
    whats.extend([begun(SittingId(2)), ended(SittingId(2))]);
    assert_eq!(
        folds::study_under_way(&events_of(whats.clone())),
        Some((ONE, 5))
    );
    whats.push(ended(ONE));
    let events = events_of(whats);
    assert_eq!(folds::study_under_way(&events), None);
    assert!(folds::study(&events, ONE).unwrap().ended.is_some());
    assert_eq!(folds::study(&events, SittingId(3)), None);
}

#[test]
fn a_form_keeps_its_last_answers_flags_and_pauses() {
    let events = events_of(vec![
        begun(),
        answered(FORM, "a", Verdict::Wrong),
        flagged("a", true),
        flagged("b", true),
        paused(true),
        paused(true),
        paused(false),
        answered(FORM, "a", Verdict::Right),
        flagged("b", false),
    ]);
    let form = folds::form(&events, FORM).unwrap();
    assert_eq!(form.answers["a"].verdict, Verdict::Right);
    assert_eq!(form.flagged.iter().collect::<Vec<_>>(), ["a"]);
    assert_eq!((form.pauses.len(), form.is_paused()), (1, false));
    let now = events.last().unwrap().at;
    assert_eq!(form.seconds_paused(now), 120);
    assert_eq!(form.seconds_worked(now), 360);
    assert!(folds::evidence(&events).is_empty(), "it may still change");
}

#[test]
fn what_follows_the_handing_in_changes_the_form_no_more() {
    let events = events_of(vec![
        begun(),
        answered(FORM, "a", Verdict::Wrong),
        What::FormFinished(FormFinished { form: FORM }),
        flagged("a", true),
        paused(true),
    ]);
    let form = folds::form(&events, FORM).unwrap();
    assert!(form.flagged.is_empty() && !form.is_paused());
    assert_eq!(form.seconds_worked(events[4].at), 120);
    let evidence = folds::evidence(&events);
    assert_eq!(evidence.len(), 1);
    assert_eq!(evidence[0].answer.question, "a");
}

#[test]
fn a_question_set_aside_can_be_taken_back() {
    let aside = |note: Option<&str>| {
        What::QuestionSetAside(QuestionSetAside {
            question: "a".into(),
            note: note.map(str::to_owned),
        })
    };
    let events = events_of(vec![aside(Some("unclear")), aside(Some(""))]);
    assert_eq!(folds::aside(&events)["a"], "");
    let events = events_of(vec![aside(Some("unclear")), aside(None)]);
    assert!(folds::aside(&events).is_empty());
}

/// What stands in the file of version 1.
fn stored() -> Vec<What> {
    let mut full = answered(ONE, "why.amalgam.odd \"\\\n\u{1f9b7}", Verdict::Unsafe);
    if let What::QuestionAnswered(it) = &mut full {
        (it.hint, it.unsure) = (true, true);
        it.answer = Given::Pairs(vec![("l".into(), "r".into())]);
    }
    let given = |answer: Given| {
        let mut what = answered(FORM, "a", Verdict::Right);
        if let What::QuestionAnswered(it) = &mut what {
            it.answer = answer;
        }
        what
    };
    vec![
        What::SittingBegun(SittingBegun {
            sitting: ONE,
            minutes: 20,
            questions: vec!["why.amalgam".into()],
        }),
        full,
        What::SittingEnded(SittingEnded { sitting: ONE }),
        begun(),
        given(Given::Many(vec!["x".into()])),
        given(Given::Order(vec!["x".into(), "y".into()])),
        given(Given::Number("0.5".into())),
        flagged("b", true),
        paused(true),
        paused(false),
        What::FormFinished(FormFinished { form: FORM }),
        What::QuestionSetAside(QuestionSetAside {
            question: "a".into(),
            note: Some("unclear".into()),
        }),
        What::QuestionSetAside(QuestionSetAside {
            question: "a".into(),
            note: None,
        }),
    ]
}

#[test]
fn an_export_of_version_1_is_read_and_still_written_letter_by_letter() {
    let log = record(stored());
    assert_eq!(read_export(STUDY_EXPORT).unwrap(), log.events());
    assert_eq!(log.export().as_bytes(), STUDY_EXPORT);
    assert!(folds::unknown_kinds(log.events()).is_empty());
}

/// What may happen around two forms and a sitting, in any order.
fn around_forms() -> impl Strategy<Value = Vec<What>> {
    let sitting = || prop_oneof![Just(ONE), Just(FORM), Just(SittingId(3))];
    let question = || prop_oneof![Just("a"), Just("b")];
    let one = prop_oneof![
        4 => (sitting(), question()).prop_map(|(id, it)| answered(id, it, Verdict::Right)),
        1 => sitting().prop_map(|form| What::FormFinished(FormFinished { form })),
        1 => sitting().prop_map(|form| match begun() {
            What::FormBegun(it) => What::FormBegun(FormBegun { form, ..it }),
            other => other,
        }),
        1 => Just(paused(true)),
    ];
    proptest::collection::vec(one, 0..14)
}

proptest! {
    #[test]
    fn evidence_goes_on_as_if_it_were_looked_at_anew(whats in around_forms(), cut: proptest::sample::Index) {
        let events = events_of(whats);
        let (before, new) = events.split_at(cut.index(events.len() + 1));
        let found = |evidence: &Evidence, events: &[Event]| {
            let all = events.iter().enumerate();
            let found = all.filter(|(place, event)| evidence.at(*place, event).is_some());
            found.map(|(place, _)| place).collect::<Vec<_>>()
        };
        let (earlier, anew) = (Evidence::of(before), Evidence::of(&events));
        let mut evidence = earlier.clone();
        if evidence.go_on(before, new) {
            prop_assert_eq!(&evidence, &anew);
            prop_assert_eq!(found(&earlier, before), found(&anew, before));
        } else {
            prop_assert_eq!(&evidence, &earlier);
        }
    }

    #[test]
    fn folds_bear_any_record(events in events()) {
        for form in folds::forms(&events) {
            prop_assert_eq!(folds::form(&events, form.begun.form), Some(form.clone()));
        }
        if let Some((id, _)) = folds::study_under_way(&events) {
            prop_assert!(folds::study(&events, id).is_some_and(|it| it.id == id));
        }
        let answered = |event: &&Event| matches!(event.what, What::QuestionAnswered(_));
        prop_assert!(folds::evidence(&events).len() <= events.iter().filter(answered).count());
    }
}

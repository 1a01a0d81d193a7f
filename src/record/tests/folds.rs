//! What the record says, on small records written out.

mod common;

use common::{lesson, moment};
use record::folds::{
    by_competency, finished_cases, lessons_read, settings, sitting, under_way, unknown_kinds,
};
use record::{
    CaseAnswered, CaseFinished, CaseStarted, FormBegun, FormFinished, Given, Log, MemoryStore,
    MixHandedOver, PerCent, QuestionAnswered, SettingChanged, SittingId, Verdict, What, Writer,
};

const ONE: SittingId = SittingId(1);
const TWO: SittingId = SittingId(2);

fn started(sitting: SittingId, seed: u64) -> What {
    What::CaseStarted(CaseStarted {
        sitting,
        case: "deep-caries".into(),
        seed,
        with: None,
        card: None,
    })
}

fn answered(sitting: SittingId, decision: &str, verdict: Verdict) -> What {
    What::CaseAnswered(CaseAnswered {
        sitting,
        decision: decision.into(),
        answer: vec!["first".into(), "second".into()],
        verdict,
        per_cent: PerCent::of(50),
        competency: format!("about-{decision}"),
        seconds: 9,
    })
}

fn finished(sitting: SittingId, marks: u8) -> What {
    What::CaseFinished(CaseFinished {
        sitting,
        per_cent: PerCent::of(marks),
    })
}

fn set(key: &str, value: &str) -> What {
    What::SettingChanged(SettingChanged {
        key: key.into(),
        value: value.into(),
    })
}

fn log(whats: Vec<What>) -> Log<MemoryStore> {
    let mut log = Log::open(MemoryStore::new(), Writer(1));
    for (at, what) in (10..).zip(whats) {
        log.append(moment(at), what);
    }
    log
}

#[test]
fn a_case_under_way_has_all_that_is_needed_to_go_on() {
    let log = log(vec![
        started(ONE, 7),
        answered(ONE, "tray", Verdict::Right),
        started(TWO, 8),
        answered(ONE, "liner", Verdict::Wrong),
        answered(TWO, "tray", Verdict::Unsafe),
        finished(TWO, 20),
    ]);
    let reopened = Log::open(log.store().clone(), Writer(2));
    let open = under_way(reopened.events());
    assert_eq!(open.len(), 1);
    let case = &open[0];
    assert_eq!(
        (case.id, case.case.as_str(), case.seed),
        (ONE, "deep-caries", 7)
    );
    assert_eq!((case.started, case.finish), (moment(10), None));
    let decisions: Vec<&str> = case.answers.iter().map(|it| it.decision.as_str()).collect();
    assert_eq!(decisions, ["tray", "liner"]);
    assert_eq!(case.answer_to("liner").unwrap().answer, ["first", "second"]);
    assert_eq!(case.answer_to("recall"), None);

    let done = finished_cases(reopened.events());
    assert_eq!(done.len(), 1);
    assert_eq!((done[0].sitting, done[0].finish.per_cent.get()), (TWO, 20));
    assert_eq!(
        (done[0].started, done[0].finish.at),
        (moment(12), moment(15))
    );
    assert_eq!(sitting(reopened.events(), TWO).unwrap().answers.len(), 1);
    assert_eq!(sitting(reopened.events(), SittingId(3)), None);
}

#[test]
fn the_first_answer_and_the_first_end_count() {
    let log = log(vec![
        started(ONE, 7),
        answered(ONE, "liner", Verdict::Wrong),
        answered(ONE, "liner", Verdict::Right),
        answered(TWO, "liner", Verdict::Acceptable),
        finished(ONE, 30),
        finished(ONE, 90),
        started(ONE, 9),
    ]);
    let case = sitting(log.events(), ONE).unwrap();
    assert_eq!((case.seed, case.answers.len()), (7, 1));
    assert_eq!(case.answers[0].verdict, Verdict::Wrong);
    assert_eq!(case.finish.unwrap().per_cent.get(), 30);

    let tallies = by_competency(log.events());
    let tally = tallies["about-liner"];
    let counts = Verdict::ALL.map(|verdict| tally.of(verdict));
    assert_eq!(counts, [0, 1, 1, 0]);
    assert_eq!((tally.total(), tally.last), (2, moment(13)));
}

fn mixed(sitting: SittingId, verdict: Verdict) -> What {
    What::MixHandedOver(MixHandedOver {
        sitting,
        material: "zinc-phosphate".into(),
        usage: "base".into(),
        replay: "{}".into(),
        verdict,
        per_cent: PerCent::of(80),
        competency: "mixing".into(),
        hint: false,
        seconds: 120,
    })
}

fn worked(sitting: SittingId, question: &str, verdict: Verdict) -> What {
    What::QuestionAnswered(QuestionAnswered {
        sitting,
        question: question.into(),
        wording: 1,
        competency: "mixing".into(),
        answer: Given::One("5".into()),
        verdict,
        per_cent: PerCent::of(0),
        hint: false,
        unsure: false,
        seconds: 20,
    })
}

#[test]
fn mixes_and_numbers_count_beside_decisions() {
    let form = SittingId(3);
    let begun = What::FormBegun(FormBegun {
        form,
        questions: vec!["numbers.proportion.2".into()],
        code: None,
        minutes: None,
        pass: PerCent::of(75),
    });
    let mut whats = vec![
        mixed(ONE, Verdict::Acceptable),
        mixed(ONE, Verdict::Right),
        mixed(TWO, Verdict::Unsafe),
        worked(ONE, "numbers.proportion.1", Verdict::Wrong),
        worked(ONE, "numbers.proportion.1", Verdict::Right),
        worked(TWO, "proportion.alginate", Verdict::Right),
        begun,
        worked(form, "numbers.proportion.2", Verdict::Wrong),
        worked(form, "numbers.proportion.2", Verdict::Right),
    ];
    let counts = |whats: &[What]| {
        let log = log(whats.to_vec());
        let tallies = by_competency(log.events());
        let tally = tallies["mixing"];
        Verdict::ALL.map(|verdict| tally.of(verdict))
    };
    assert_eq!(counts(&whats), [0, 1, 1, 1]);
    whats.push(What::FormFinished(FormFinished { form }));
    assert_eq!(counts(&whats), [1, 1, 1, 1]);
}

#[test]
fn the_last_setting_by_event_order_stands() {
    let log = log(vec![
        set("scheme", "dark"),
        set("text", "big"),
        set("scheme", "light"),
    ]);
    let values = settings(log.events());
    assert_eq!(
        (values["scheme"].as_str(), values["text"].as_str()),
        ("light", "big")
    );
}

#[test]
fn lessons_and_unknown_kinds_are_counted() {
    let later = || What::from_parts("review-done", r#"{"grade":3}"#).unwrap();
    let log = log(vec![lesson("amalgam"), later(), lesson("amalgam"), later()]);
    assert_eq!(lessons_read(log.events())["amalgam"], moment(12));
    assert_eq!(unknown_kinds(log.events())["review-done"], 2);
}

#[test]
fn what_a_case_was_asked_for_with_and_its_card_go_along() {
    let start = CaseStarted {
        sitting: ONE,
        case: "deep-caries".into(),
        seed: 7,
        with: Some("allergy-latex".into()),
        card: Some("{}".into()),
    };
    let open = log(vec![What::CaseStarted(start.clone())]);
    let found = &under_way(open.events())[0];
    assert_eq!((&found.with, &found.card), (&start.with, &start.card));
    let done = log(vec![What::CaseStarted(start.clone()), finished(ONE, 90)]);
    assert_eq!(finished_cases(done.events())[0].with, start.with);
    let body = What::CaseStarted(start).body();
    assert!(
        body.ends_with(r#""with":"allergy-latex","card":"{}"}"#),
        "{body}"
    );
}

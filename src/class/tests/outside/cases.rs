//! Cases and trays, drawn again and graded as on the student's device.

use crate::made::assignment;
use catalogue::Catalogue;
use class::assignment::{Assignment, Seat, Set};
use class::cases::{self, CaseGrader};
use class::exchange::{
    qti::{self, Question},
    xapi,
};
use class::handin::{HandIn, Inbox, Outcome};
use class::report::{Report, Tries};
use class::task::{Answer, Draw, Grader, Order, Response, Task};
use clinic::{Clinic, case::Form, standing::Standing};
use std::{path::Path, rc::Rc};

pub fn clinic() -> Clinic {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content");
    let catalogue: Catalogue = catalogue::source::read(&content).expect("content without faults");
    Clinic::new(Rc::new(catalogue))
}

fn set(clinic: &Clinic) -> Assignment {
    let frame = clinic.catalogue().cases[0].id.0.clone();
    let case = Task::Case(Order {
        frame: Some(frame),
        ..Order::default()
    });
    Assignment {
        alike: false,
        tasks: vec![
            Set {
                task: case,
                times: 2,
            },
            Set {
                task: Task::Reading,
                times: 1,
            },
            Set {
                task: Task::Case(Order::default()),
                times: 1,
            },
        ],
        ..assignment(1)
    }
}

/// The best answers of a seat, as its device would hand them in.
fn best(clinic: &Clinic, set: &Assignment, seat: u16) -> HandIn {
    let responses = set.slots().into_iter().map(|slot| {
        let seed = set.seed(Seat(seat), slot.place);
        let decisions = match &*slot.task {
            Task::Case(order) => cases::case(clinic, order, seed).expect("a case").decisions,
            _ => clinic.tray_reading(seed).expect("a tray").decisions.into(),
        };
        decisions
            .iter()
            .map(|decision| Response {
                answer: cases::answer(decision, &decision.best_answer()),
                seconds: 9,
                hinted: false,
            })
            .collect()
    });
    HandIn {
        bank: set.bank,
        assignment: set.id(),
        seat: Seat(seat),
        attempt: 1,
        finished: 0,
        responses: responses.collect(),
    }
}

#[test]
fn best_answers_of_every_seat_are_right_when_they_are_read() {
    let clinic = clinic();
    let set = set(&clinic);
    let grader = CaseGrader::new(clinic.clone());
    let mut inbox = Inbox::new(&set, &grader);
    for seat in 1..=6 {
        let link = best(&clinic, &set, seat).link("https://practice.example.org/#/hand-in/");
        assert_eq!(inbox.read(&link), Outcome::Accepted(Seat(seat)));
    }
    let report = Report::of(&set, inbox.table(), Tries::First, &[]);
    for seat in &report.seats {
        assert_eq!(seat.all.right, seat.all.asked, "{seat:?}");
        assert!(seat.passed && seat.all.asked > 10);
    }
    assert!(report.topics.is_empty() && report.talks.is_empty());
    // Another seat was set other cases: its answers do not fit, or are not all right.
    let mut copied = best(&clinic, &set, 1);
    copied.seat = Seat(7);
    if inbox.read(&copied.letters()) == Outcome::Accepted(Seat(7)) {
        let cells = &inbox.table().rows.last().expect("a row").cells;
        assert!(cells.iter().any(|c| !c.mark.right()));
    }
}

/// The kinds of interactions: xAPI 1.0.3, part 2, 2.4.4.1 (`sequencing`).
#[test]
fn an_order_is_stated_as_a_sequence_in_the_order_that_was_given() {
    let clinic = clinic();
    // A visit in which something is mixed.
    let order = Order {
        frame: Some("signs-that-do-not-settle".into()),
        ..Order::default()
    };
    let set = Assignment {
        tasks: vec![Set {
            task: Task::Case(order),
            times: 1,
        }],
        ..assignment(1)
    };
    let grader = CaseGrader::new(clinic.clone());
    let mut inbox = Inbox::new(&set, &grader);
    inbox.read(&best(&clinic, &set, 1).letters());
    let text = xapi::statements(&set, inbox.table(), "https://practice.example.org/");
    let all: Vec<serde_json::Value> = serde_json::from_str(&text).expect("JSON");
    let slot = &set.slots()[0];
    let Task::Case(order) = &*slot.task else {
        panic!("a case comes first")
    };
    let case = cases::case(&clinic, order, set.seed(Seat(1), 0)).expect("a case");
    let mut orders = 0;
    for (decision, statement) in case.decisions.iter().zip(&all) {
        let kind = &statement["object"]["definition"]["interactionType"];
        let is_order = matches!(decision.form, Form::Order(_));
        assert_eq!(kind == "sequencing", is_order, "{}", decision.id);
        if is_order {
            orders += 1;
            let response = decision.best_answer().join("[,]");
            assert_eq!(statement["result"]["response"], response);
        }
    }
    assert!(orders > 0, "no order is asked for");
}

#[test]
fn what_cannot_have_been_answered_is_not_graded() {
    let clinic = clinic();
    let grader = CaseGrader::new(clinic);
    let task = Rc::new(Task::Reading);
    assert_eq!(grader.parts(&task, Draw::once(1)), Some(3));
    let graded = |part, places: &[u16]| {
        let id = class::task::TaskId {
            task: task.clone(),
            part,
        };
        let response = Response {
            answer: Answer::Options(places.into()),
            ..Response::default()
        };
        grader.grade(&id, Draw::once(1), &response).is_some()
    };
    assert!(graded(0, &[0]));
    assert!(!graded(0, &[999]));
    assert!(!graded(0, &[0, 0]));
    assert!(!graded(3, &[0]));
    let other = Rc::new(Task::Number("milligrams".into()));
    assert_eq!(grader.parts(&other, Draw::once(1)), None);
}

/// The decisions of a case as questions for other banks.
pub fn questions() -> Vec<Question> {
    let clinic = clinic();
    let case = cases::case(&clinic, &Order::default(), 5).expect("a case");
    let questions: Vec<Question> = case
        .decisions
        .iter()
        .filter_map(|d| Question::of(&format!("case-5.{}", d.id), d))
        .collect();
    assert_eq!(questions.len(), case.decisions.len());
    questions
}

#[test]
fn the_decisions_of_a_case_become_items_for_other_banks() {
    let questions = questions();
    crate::packages::check_items(&questions);
    assert!(qti::package("case-5", &questions).is_ok());
}

/// What a grader keeps of earlier work changes no grade: seats come in any
/// order, more of them than are kept.
#[test]
fn a_grader_that_has_graded_much_grades_as_a_fresh_one() {
    let clinic = clinic();
    let used = CaseGrader::new(clinic.with_card(None));
    let task = Rc::new(Task::Reading);
    let answers = [vec![], vec![0], vec![1, 0], vec![999], vec![0, 0]];
    for seed in (0..70).chain((0..70).rev()) {
        let fresh = CaseGrader::new(clinic.with_card(None));
        for (part, places) in (0..3).zip(answers.iter().cycle().skip(usize::from(seed % 5 == 0))) {
            let id = class::task::TaskId {
                task: task.clone(),
                part,
            };
            let response = Response {
                answer: Answer::Options(places.clone()),
                ..Response::default()
            };
            let draw = Draw::once(seed);
            let once = used.grade(&id, draw, &response);
            assert_eq!(once, fresh.grade(&id, draw, &response), "{seed} {places:?}");
            assert_eq!(once, used.grade(&id, draw, &response), "{seed} {places:?}");
        }
    }
}

#[test]
fn a_typed_number_survives_its_hand_in() {
    let clinic = clinic();
    let frame = clinic.catalogue().cases[0].id.0.clone();
    let order = Order {
        frame: Some(frame),
        ..Order::default()
    };
    let case = cases::case(&clinic, &order, 3).expect("a case");
    let mut asked = case.decisions.iter().enumerate();
    let (at, decision) = asked
        .find(|(_, it)| it.id == "cartridges")
        .expect("a number is asked");
    let Form::Number(sum) = &decision.form else {
        panic!("a number is typed")
    };
    let grader = CaseGrader::new(clinic.clone());
    let task = class::task::TaskId {
        task: Rc::new(Task::Case(order)),
        part: u16::try_from(at).expect("few decisions"),
    };
    let graded = |answer: Answer| {
        let response = Response {
            answer,
            ..Response::default()
        };
        grader
            .grade(&task, Draw::once(3), &response)
            .map(|it| it.standing)
    };
    let right = sum.problem.right() / 1000;
    for (typed, standing) in [
        (format!("{right} cartridges"), Standing::Right),
        (format!("{right},0"), Standing::Right),
        (format!("{}", right + 2), Standing::Unsafe),
        (format!("{}.25", right - 1), Standing::Wrong),
    ] {
        let taken = sum.answer(&typed).expect("it is understood");
        assert_eq!(decision.grade(&taken).standing, standing, "on the device");
        let sent = cases::answer(decision, &taken);
        assert!(matches!(sent, Answer::Number(_)), "{typed}");
        assert_eq!(cases::taken(decision, &sent), Some(taken), "{typed}");
        assert_eq!(graded(sent), Some(standing), "{typed}");
    }
    assert_eq!(cases::answer(decision, &[]), Answer::Blank);
    assert_eq!(cases::taken(decision, &Answer::Blank), None);
    assert_eq!(cases::taken(decision, &Answer::Options(vec![0])), None);
    assert_eq!(graded(Answer::Blank), Some(Standing::Wrong));
    assert_eq!(graded(Answer::Options(vec![0])), None);
    let chart = class::task::TaskId {
        part: 0,
        ..task.clone()
    };
    let response = Response {
        answer: Answer::Number(8000),
        ..Response::default()
    };
    assert_eq!(
        grader.grade(&chart, Draw::once(3), &response),
        None,
        "no number is asked there"
    );
}

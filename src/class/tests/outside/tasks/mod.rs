//! Every kind of task: drawn for a seat, answered as a student would, handed
//! in, read as letters, and graded again.

mod doing;
mod hostile;
mod reported;

use crate::cases::clinic;
use crate::made::assignment;
use class::assignment::{Assignment, Seat, Set, Slot};
use class::exchange::qti;
use class::graders::Graders;
use class::handin::HandIn;
use class::task::{Answer, Draw, Graded, Grader, Made, Task, TaskId};
use class::{forms, mixes, numbers, qr, questions};
use clinic::Clinic;
use clinic::mixing::{Action, Seconds};
use clinic::numbers::exercises::Family;
use doing::{Done, Taught, done, response};
use std::collections::HashSet;
use std::rc::Rc;

/// How many seeds each kind is tried with; fewer where the build is not optimised.
const SEEDS: u64 = if cfg!(debug_assertions) { 150 } else { 1000 };

/// And forms, which take longer to put together.
const FORM_SEEDS: u64 = if cfg!(debug_assertions) { 12 } else { 1000 };

const PREFIX: &str = "https://practice.example.org/study/#/hand-in/";

fn set(tasks: Vec<Task>, seed: u32, alike: bool) -> Assignment {
    let once = |task| Set { task, times: 1 };
    Assignment {
        seed,
        alike,
        tasks: tasks.into_iter().map(once).collect(),
        ..assignment(1)
    }
}

fn handed_in(set: &Assignment, seat: u16, done: &[Done]) -> HandIn {
    let responses = |done: &Done| done.iter().map(|(it, _)| it.clone()).collect();
    HandIn {
        bank: set.bank,
        assignment: set.id(),
        seat: Seat(seat),
        attempt: 1,
        finished: 20_499 * 24 * 60,
        responses: done.iter().map(responses).collect(),
    }
}

/// Does, hands in, reads and grades again, and compares with what the device said.
fn there_and_back(taught: &Taught, graders: &Graders<'_>, set: &Assignment, seat: u16) -> HandIn {
    let slots = set.slots();
    let one = |slot: &Slot| done(taught, &slot.task, set.draw(Seat(seat), slot));
    let done: Vec<Done> = slots.iter().map(one).collect();
    let hand_in = handed_in(set, seat, &done);
    let read = HandIn::read(&hand_in.link(PREFIX)).expect("it is read");
    assert_eq!(read, hand_in);
    for (slot, done) in slots.iter().zip(&done) {
        let draw = set.draw(Seat(seat), slot);
        let parts = graders.parts(&slot.task, draw).expect("a task");
        assert_eq!(usize::from(parts), done.len());
        for (part, (given, said)) in (0..).zip(done) {
            let task = TaskId {
                task: slot.task.clone(),
                part,
            };
            let graded: Graded = graders.grade(&task, draw, given).expect("it is graded");
            if given.answer != Answer::Blank {
                let again = (graded.standing, graded.per_cent);
                assert_eq!(again, *said, "{:?} {draw:?} {given:?}", slot.task);
            }
            let offered = u16::try_from(graded.item.offered.len()).expect("a few");
            assert!(graded.taken.iter().all(|it| *it < offered));
            let fits = |b: u8| b.is_ascii_alphanumeric() || b"-_.".contains(&b);
            assert!(graded.item.id.bytes().all(fits), "{}", graded.item.id);
        }
        assert!(graders.seconds(&slot.task, draw).expect("a task") > 0);
    }
    hand_in
}

/// Every kind with every seed, own and alike.
fn every(taught: &Taught, tasks: &[Task], seeds: u64) {
    let graders = taught.graders();
    for seed in 0..seeds {
        let task = tasks[usize::try_from(seed).unwrap_or(0) % tasks.len()].clone();
        let seat = u16::try_from(seed % 300).unwrap_or(0) + 1;
        let seed = u32::try_from(seed).unwrap_or(0);
        let set = set(vec![task], seed, seed % 4 == 0);
        there_and_back(taught, &graders, &set, seat);
    }
}

fn mixes_of(clinic: &Clinic) -> Vec<Task> {
    let mut all = Vec::new();
    for material in &clinic.catalogue().materials {
        let offer = clinic::mixing::steps_of(clinic.catalogue(), &material.id, None);
        for (usage, _) in offer.into_iter().flat_map(|it| it.uses) {
            all.push(Task::Mix {
                material: material.id.to_string(),
                usage: Some(usage),
            });
        }
    }
    all
}

fn numbers_of() -> Vec<Task> {
    let all = Family::ALL.iter();
    all.map(|it| Task::Number(it.id().to_owned())).collect()
}

fn families() -> Vec<Task> {
    let all = study::families::ALL.iter();
    all.map(|it| Task::Question(it.id.to_owned())).collect()
}

#[test]
fn cases_and_trays_are_graded_again_as_they_were() {
    let taught = Taught::new();
    every(
        &taught,
        &[Task::Case(class::task::Order::default()), Task::Reading],
        SEEDS,
    );
}

#[test]
fn mixes_are_made_again_as_they_were() {
    let taught = Taught::new();
    let all = mixes_of(&taught.clinic);
    assert!(all.len() > 8, "{}", all.len());
    every(&taught, &all, SEEDS);
}

#[test]
fn numbers_are_graded_again_as_they_were() {
    let taught = Taught::new();
    every(&taught, &numbers_of(), SEEDS);
}

#[test]
fn questions_are_graded_again_as_they_were() {
    let taught = Taught::new();
    every(&taught, &families(), SEEDS);
}

/// One of each kind.
fn one_of_each(clinic: &Clinic) -> Vec<Task> {
    vec![
        Task::Case(class::task::Order::default()),
        Task::Reading,
        mixes_of(clinic).remove(0),
        Task::Number("cartridges".into()),
        Task::Question("missing".into()),
        Task::Form {
            blueprint: forms::WHOLE.into(),
            questions: 20,
        },
    ]
}

#[test]
fn an_assignment_of_every_kind_comes_back_from_its_link() {
    let set = set(one_of_each(&clinic()), 7, true);
    assert_eq!(Assignment::read(&set.letters(), set.bank), Ok(set));
}

#[test]
fn a_task_set_several_times_never_comes_twice() {
    let taught = Taught::new();
    let set = Assignment {
        tasks: vec![
            Set {
                task: Task::Question("missing".into()),
                times: 10,
            },
            Set {
                task: Task::Number("short-bur".into()),
                times: 5,
            },
        ],
        ..set(Vec::new(), 3, false)
    };
    for seat in 1..=40 {
        let mut seen = HashSet::new();
        for slot in set.slots() {
            let draw = set.draw(Seat(seat), &slot);
            let id = match &*slot.task {
                Task::Question(family) => questions::drawn(&taught.written, family, draw)
                    .expect("a question")
                    .id
                    .to_string(),
                Task::Number(family) => {
                    let drawn = numbers::drawn(&taught.clinic, family, draw);
                    drawn.expect("an exercise").index.to_string()
                }
                _ => continue,
            };
            assert!(seen.insert(id.clone()), "seat {seat}: {id} twice");
        }
    }
}

/// Questions and numbers go to other banks, where their form is one of theirs.
#[test]
fn questions_and_numbers_become_items_for_other_banks() {
    let taught = Taught::new();
    let mut items = Vec::new();
    for (number, task) in families().iter().chain(&numbers_of()).enumerate() {
        let (id, draw) = (format!("task-{number}"), Draw::once(9));
        items.extend(match task {
            Task::Question(family) => {
                let question = questions::drawn(&taught.written, family, draw);
                qti::Question::of_question(&id, family, &question.expect("a question"))
            }
            Task::Number(family) => {
                let exercise = numbers::drawn(&taught.clinic, family, draw);
                qti::Question::of_exercise(&id, &exercise.expect("an exercise"))
            }
            _ => None,
        });
    }
    assert!(items.len() > 40, "{}", items.len());
    crate::packages::check_items(&items);
    assert!(qti::package("assignment", &items).is_ok());
}

/// A mix of another room, for another moment, of another version, or cut short
/// is not the one that was set.
#[test]
fn a_mix_that_was_not_set_does_not_fit() {
    let taught = Taught::new();
    let graders = taught.graders();
    let task = Rc::new(mixes_of(&taught.clinic).remove(0));
    let draw = Draw::once(5);
    let (given, _) = done(&taught, &task, draw).remove(0);
    let id = TaskId {
        task: task.clone(),
        part: 0,
    };
    let Answer::Mixed(made) = &given.answer else {
        panic!("a mix")
    };
    let fits = |made: Made| {
        let response = response(Answer::Mixed(made), 1, false);
        graders.grade(&id, draw, &response).is_some()
    };
    assert!(fits(made.clone()));
    let mut others = vec![made.clone(); 4];
    others[0].actions.pop();
    others[1].version += 1;
    if let Some(Action::HandOver { ready, .. }) = others[2].actions.last_mut() {
        *ready = Seconds::of(1.5);
    }
    others[3].actions.clear();
    for other in others {
        assert!(!fits(other.clone()), "{other:?}");
    }
    let elsewhere = (1..100).find(|seed| {
        let here = |seed| match &*task {
            Task::Mix { material, usage } => {
                mixes::drawn(&taught.clinic, material, usage.as_deref(), seed)
            }
            _ => None,
        };
        here(*seed).map(|it| it.room) != here(5).map(|it| it.room)
    });
    if let Some(seed) = elsewhere {
        assert!(graders.grade(&id, Draw::once(seed), &given).is_none());
    }
}

/// One after another, as it takes a while to measure all questions.
#[test]
fn forms_are_graded_again_as_they_were_and_reported() {
    let taught = Taught::with_items();
    forms_are_graded_again(&taught);
    a_hand_in_takes_few_symbols(&taught);
    reported::what_differs_by_seat_is_one_item(&taught);
}

fn forms_are_graded_again(taught: &Taught) {
    let form = |blueprint: &str| Task::Form {
        blueprint: blueprint.into(),
        questions: 10,
    };
    let blueprints = forms::blueprints(taught.clinic.catalogue());
    let all: Vec<Task> = blueprints.iter().map(|it| form(it)).collect();
    every(taught, &all, FORM_SEEDS);
}

fn a_hand_in_takes_few_symbols(taught: &Taught) {
    let graders = taught.graders();
    let set = set(one_of_each(&taught.clinic), 7, false);
    for seat in 1..=20 {
        let hand_in = there_and_back(taught, &graders, &set, seat);
        let bytes = hand_in.bytes();
        let symbols = qr::split(PREFIX, &bytes).expect("symbols");
        println!(
            "seat {seat}: {} bytes, {} symbols",
            bytes.len(),
            symbols.len()
        );
        assert!(symbols.len() <= 4, "{} symbols", symbols.len());
    }
}

//! Every kind of task: drawn for a seat, answered as a student would, handed
//! in, read as letters, and graded again.

use crate::cases::clinic;
use crate::made::assignment;
use class::assignment::{Assignment, Seat, Set, Slot};
use class::exchange::qti;
use class::graders::Graders;
use class::handin::{HandIn, Inbox, Outcome, Table};
use class::questions::Questions;
use class::report::{Report, Tries};
use class::task::{Answer, Draw, Graded, Grader, Made, Response, Task, TaskId, Way};
use class::{cases, forms, mixes, numbers, qr, questions};
use clinic::Clinic;
use clinic::case::{Decision, Form as DecisionForm, Seed};
use clinic::mixing::{Action, Millis, Mix, Recipe, Seconds, Stroke, Units, Vigour};
use clinic::numbers::exercises::{Answer as Wanted, Exercise, Family, grade};
use clinic::standing::Standing;
use std::collections::HashSet;
use std::rc::Rc;
use study::item::{Bank as Items, Blueprint};
use study::question::{Answer as Given, Bank, Form, Question, measured};

/// How many seeds each kind is tried with; fewer where the build is not optimised.
const SEEDS: u64 = if cfg!(debug_assertions) { 150 } else { 1000 };

/// And forms, which take longer to put together.
const FORM_SEEDS: u64 = if cfg!(debug_assertions) { 12 } else { 1000 };

const PREFIX: &str = "https://practice.example.org/study/#/hand-in/";

/// What is taught, with all questions.
struct Taught {
    clinic: Clinic,
    written: Bank,
    items: Items,
}

impl Taught {
    /// With the questions as they are written.
    fn new() -> Self {
        let clinic = clinic();
        Self {
            written: Bank::new(&clinic),
            items: Items::default(),
            clinic,
        }
    }

    /// And as measurement sees them, which forms are put together from.
    fn with_items() -> Self {
        let taught = Self::new();
        let all = taught.written.ids().iter();
        let all = all.filter_map(|id| Some(measured(&taught.written.write(id, 0)?)));
        let blueprint = Blueprint::of(&taught.clinic.catalogue().competencies);
        let (items, _) = Items::new(blueprint, all);
        Self { items, ..taught }
    }

    fn questions(&self) -> Questions<'_> {
        Questions {
            written: &self.written,
            items: &self.items,
        }
    }

    fn graders(&self) -> Graders<'_> {
        Graders::new(&self.clinic, Some(self.questions()))
    }
}

/// What a device says of an answer when it is given: standing and marks.
type Said = (Standing, u8);

/// What a task's responses are, with what the student's device said of each.
type Done = Vec<(Response, Said)>;

fn response(answer: Answer, seconds: u32, hinted: bool) -> Response {
    Response {
        answer,
        seconds,
        hinted,
    }
}

/// A decision answered by chance: well, or with whatever is taken.
fn decided(decision: &Decision, chance: &mut Seed) -> (Response, Said) {
    let taken: Vec<String> = if chance.below(2) == 0 {
        decision.best_answer()
    } else {
        let mut all: Vec<String> = decision.choices.iter().map(|it| it.id.clone()).collect();
        chance.shuffle(&mut all);
        let most = match decision.form {
            DecisionForm::One => 1,
            DecisionForm::Order(_) => all.len(),
            _ => 1 + chance.below(all.len().max(1)),
        };
        all.truncate(most);
        all
    };
    let grade = decision.grade(&taken);
    let answer = cases::answer(decision, &taken);
    (
        response(answer, 20, false),
        (grade.standing, grade.per_cent),
    )
}

/// A mix made by a hand that is not always steady.
fn mixed(taught: &Taught, drawn: &mixes::Drawn, chance: &mut Seed) -> (Response, Said) {
    let offer = &drawn.offer;
    let catalogue = taught.clinic.catalogue();
    let recipe = Recipe::new(catalogue, &offer.material, Some(&offer.usage)).expect("a recipe");
    let mut mix = Mix::of(recipe, drawn.room);
    let act = |mix: &mut Mix, action| mix.act(action).expect("it can be done");
    let lot = [0.8, 1.0, 1.0, 1.0, 1.25][chance.below(5)];
    let powder = Units::of(offer.powder.usual.get() * lot);
    // Begun so that it is ready in time, more or less.
    let before = drawn.wanted.ready.get() - f64::from(offer.mix.middle());
    let before = before + [-30.0, 0.0, 0.0, 0.0, 40.0][chance.below(5)];
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    act(
        &mut mix,
        Action::Wait(Millis((before.max(1.0) * 1000.0) as u32)),
    );
    act(&mut mix, Action::DispensePowder(powder));
    act(&mut mix, Action::DispenseLiquid(offer.liquid.usual));
    let portions = u32::try_from(offer.portions.len()).unwrap_or(1).max(1);
    let each = offer.mix.middle() * 1000 / portions;
    for share in &offer.portions {
        act(&mut mix, Action::BringIn(*share));
        let mut left = each;
        while left > 0 {
            // A screen sees a hand in frames of sixteen or seventeen milliseconds.
            let lasts = left.min(16 + u32::try_from(chance.below(700)).unwrap_or(0));
            let vigour = [Vigour::FIRM, Vigour::FIRM, Vigour::GENTLE, Vigour::HARD];
            let stroke = Stroke {
                vigour: vigour[chance.below(4)],
                area: offer.area,
            };
            act(
                &mut mix,
                Action::Spatulate {
                    stroke,
                    lasts: Millis(lasts),
                },
            );
            left -= lasts;
        }
    }
    act(&mut mix, Action::Test);
    let calm = chance.below(3) == 0;
    let ready = if calm {
        mix.clock()
    } else {
        drawn.wanted.ready
    };
    act(
        &mut mix,
        Action::HandOver {
            ready,
            placing: drawn.wanted.placing,
        },
    );
    let verdict = mix.verdict().expect("it was handed over");
    let said = (verdict.standing, verdict.marks);
    let made = Made::of(mix.replay());
    (response(Answer::Mixed(made), 120, true), said)
}

/// A number typed right, as a common slip, or anyhow.
fn typed(exercise: &Exercise, chance: &mut Seed) -> (Response, Said) {
    let right = || match &exercise.answer {
        Wanted::Number { value, .. } => value.text(6),
        Wanted::Between { from, .. } => from.text(6),
        other => {
            let words = other.words();
            words.split(" (").next().unwrap_or_default().to_owned()
        }
    };
    let text = match &exercise.answer {
        Wanted::Choice { options, .. } => options[chance.below(options.len())].clone(),
        _ if chance.below(2) == 0 => right(),
        _ => format!("{}", chance.below(300)),
    };
    // What is not understood is no answer, on the student's device either.
    let Ok(grade) = grade(exercise, &text) else {
        return (Response::default(), (Standing::Wrong, 0));
    };
    let said = if grade.right {
        (Standing::Right, 100)
    } else {
        (Standing::Wrong, 0)
    };
    (response(numbers::answer(exercise, &text), 45, false), said)
}

/// A question answered well, or by chance.
fn asked(question: &Question, chance: &mut Seed) -> (Response, Said) {
    let given = if chance.below(2) == 0 {
        question.best()
    } else {
        let mut keys: Vec<String> = match &question.form {
            Form::Order { pieces, .. } => pieces.iter().map(|it| it.key.clone()).collect(),
            form => form.choices().iter().map(|it| it.key.clone()).collect(),
        };
        chance.shuffle(&mut keys);
        match &question.form {
            Form::One(_) | Form::Name(_) | Form::Slip(_) => Given::One(keys.remove(0)),
            Form::All(_) | Form::Place(_) => {
                keys.truncate(1 + chance.below(keys.len()));
                Given::Many(keys)
            }
            Form::Order { .. } => Given::Order(keys),
            Form::Match { left, right, .. } => {
                let pair = |piece: &study::question::Piece| {
                    let said = &right[chance.below(right.len())];
                    (piece.key.clone(), said.key.clone())
                };
                Given::Pairs(left.iter().map(pair).collect())
            }
            Form::Number { .. } => {
                let number = i32::try_from(chance.below(90_000)).unwrap_or(0);
                Given::Number(catalogue::quantity::Milli(number))
            }
        }
    };
    let verdict = question.grade(&given);
    let standing = match (verdict.right, verdict.harm) {
        (true, _) => Standing::Right,
        (false, true) => Standing::Unsafe,
        (false, false) => Standing::Wrong,
    };
    let answer = questions::answer(question, &given);
    (response(answer, 25, true), (standing, verdict.per_cent))
}

/// What a seat's device makes of one task.
fn done(taught: &Taught, task: &Task, draw: Draw) -> Done {
    let mut chance = Seed::new(draw.seed ^ 0x5eed);
    let decisions = |all: &[Decision], chance: &mut Seed| {
        all.iter().map(|it| decided(it, chance)).collect::<Done>()
    };
    match task {
        Task::Case(order) => {
            let case = cases::case(&taught.clinic, order, draw.seed).expect("a case");
            decisions(&case.decisions, &mut chance)
        }
        Task::Reading => {
            let tray = taught.clinic.tray_reading(draw.seed).expect("a tray");
            decisions(&tray.decisions, &mut chance)
        }
        Task::Mix { material, usage } => {
            let drawn = mixes::drawn(&taught.clinic, material, usage.as_deref(), draw.seed);
            vec![mixed(taught, &drawn.expect("a mix"), &mut chance)]
        }
        Task::Number(family) => {
            let exercise = numbers::drawn(&taught.clinic, family, draw).expect("an exercise");
            vec![typed(&exercise, &mut chance)]
        }
        Task::Question(family) => {
            let question = questions::drawn(&taught.written, family, draw).expect("a question");
            vec![asked(&question, &mut chance)]
        }
        Task::Form {
            blueprint,
            questions,
        } => {
            let bank = forms::bank(&taught.items, blueprint).expect("a blueprint");
            let ids = forms::drawn(&bank, *questions, draw.seed).expect("a form");
            let code = forms::code(draw.seed);
            let one = |id: &String| {
                let question = forms::write(&taught.written, &code, id).expect("a question");
                asked(&question, &mut chance)
            };
            ids.iter().map(one).collect()
        }
    }
}

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

/// Where all draw alike, the options of the question are those of the report.
#[test]
fn where_all_draw_alike_the_options_are_compared() {
    let taught = Taught::new();
    let graders = taught.graders();
    let set = set(vec![Task::Question("missing".into())], 7, true);
    let slots = set.slots();
    let question = questions::drawn(&taught.written, "missing", set.draw(Seat(1), &slots[0]));
    let question = question.expect("a question");
    let mut inbox = Inbox::new(&set, &graders);
    for seat in 1..=12 {
        let hand_in = there_and_back(&taught, &graders, &set, seat);
        assert_eq!(
            inbox.read(&hand_in.letters()),
            Outcome::Accepted(Seat(seat))
        );
    }
    let report = Report::of(&set, inbox.table(), Tries::First, &[]);
    let [item] = &report.items[..] else {
        panic!("{} items", report.items.len())
    };
    assert_eq!(*item.id, *question.id.to_string());
    let labels: HashSet<&str> = item.options.iter().map(|it| &*it.label).collect();
    for choice in question.form.choices() {
        assert!(labels.contains(choice.text.as_str()), "{}", choice.text);
    }
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
    what_differs_by_seat_is_one_item(&taught);
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

/// The report of a class: seats draw different questions, and the item is one.
fn what_differs_by_seat_is_one_item(taught: &Taught) {
    let graders = taught.graders();
    let set = set(one_of_each(&taught.clinic)[2..].to_vec(), 7, false);
    let mut inbox = Inbox::new(&set, &graders);
    for seat in 1..=30 {
        let hand_in = there_and_back(taught, &graders, &set, seat);
        assert_eq!(
            inbox.read(&hand_in.letters()),
            Outcome::Accepted(Seat(seat))
        );
    }
    let table: &Table = inbox.table();
    let report = Report::of(&set, table, Tries::First, &[]);
    for place in 0..3 {
        let own: Vec<_> = report.items.iter().filter(|it| it.place == place).collect();
        let [item] = &own[..] else {
            panic!("task {place} has {} items", own.len())
        };
        assert!(item.common && item.asked == 30, "{}", item.id);
        let right = item.options.iter().find(|it| &*it.id == "right");
        let right = right.expect("somebody is right");
        assert!(right.count >= 1 && right.count <= item.right, "{item:?}");
        let taken: u32 = item.options.iter().map(|it| it.count).sum();
        assert!(taken >= 30 - item.blank, "{item:?}");
    }
    for item in report.items.iter().filter(|it| it.place == 3) {
        assert!(item.asked <= 30);
    }
    let own = table.columns.iter().filter(|it| it.place == 0);
    assert!(own.clone().all(|it| it.way == Way::Outcome) && own.count() == 1);
}

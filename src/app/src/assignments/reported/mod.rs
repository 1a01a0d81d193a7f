//! A school's system that the page runs in: what it kept is gone on with, and
//! it is told how a run at an assignment stands, after every answer, for as
//! long as the page is open.

mod replayed;
mod resumed;
mod system;

pub use resumed::{awaits_questions, resume};

use super::{graders, run::hand_in};
use crate::{browser::clock, log::OpenLog};
use class::{
    assignment::{Assignment, Seat},
    cases,
    exchange::scorm::{Interaction, Kept, MOST_SUSPENDED, Session, Status},
    graders::Graders,
    handin::{HandIn, Mark},
    task::{Answer, Grader, Task, TaskId},
};
use clinic::{Clinic, case::Decision};
use leptos::prelude::*;
use record::{
    Event, SittingId,
    folds::{self, Assigned},
};
use std::{
    cell::{Cell, RefCell},
    rc::Rc,
};
use system::{System, system};

thread_local! {
    /// Whether the system is being told already.
    static TOLD: Cell<bool> = const { Cell::new(false) };
}

/// Tells the system from now on, where there is one.
pub fn tell(log: OpenLog, id: String, assignment: Assignment, clinic: Clinic) {
    let Some(system) = system().filter(|_| !TOLD.replace(true)) else {
        return;
    };
    let teller = Teller::new(system, assignment, clinic);
    // Answers are given on other screens, so what follows them outlives this
    // one. A new root takes the place of the current owner, which is put back.
    let here = Owner::current();
    let owner = Owner::new_root(None);
    owner.with(|| {
        let run = log.memo(move |events| {
            let mut all = folds::assignments(events).into_iter();
            let run = all.find(|it| it.taken.assignment == id)?;
            Some((run, events.len()))
        });
        Effect::new(move |_| {
            if let Some((assigned, _)) = run.get() {
                log.look(|events| teller.tell(events, &assigned));
            }
        });
    });
    std::mem::forget(owner);
    if let Some(here) = here {
        here.set();
    }
}

/// The decisions of a task; none where it has none, or cannot be drawn.
fn decisions(clinic: &Clinic, task: &Task, seed: u64) -> Option<Vec<Decision>> {
    match task {
        Task::Case(order) => Some(cases::case(clinic, order, seed)?.decisions),
        Task::Reading => Some(clinic.tray_reading(seed)?.decisions.into()),
        _ => None,
    }
}

/// How much of a run is answered on this device.
fn hand_in_now(log: OpenLog, run: &Assigned, assignment: &Assignment, clinic: &Clinic) -> usize {
    let made = log.look(|events| hand_in(events, run, assignment, clinic));
    resumed::answered(&made)
}

/// What the system keeps of a run.
fn kept(assigned: &Assigned, made: HandIn) -> Kept {
    let tasks = assigned.tasks.iter().filter(|(_, task)| task.finished);
    Kept::new(made, tasks.map(|(place, _)| *place))
}

struct Teller {
    system: Rc<System>,
    assignment: Assignment,
    clinic: Clinic,
    /// They know again what they graded after the answer before.
    graders: Graders<'static>,
    told: RefCell<Told>,
}

/// What the system was told.
struct Told {
    /// How many interactions it holds.
    interactions: usize,
    /// The answers that it was told of, by run, task and part.
    answers: Vec<(SittingId, u16, u16)>,
    /// The answers that it had before this visit, by seat and try, task and part.
    before: Vec<(u16, u8, u16, u16)>,
    /// Whether it has the assignment as passed.
    passed: bool,
}

/// The answers of a hand-in that were told when it was suspended.
fn told_before(hand_in: &HandIn) -> Vec<(u16, u8, u16, u16)> {
    let mut told = Vec::new();
    for (task, given) in (0..).zip(&hand_in.responses) {
        for (part, response) in (0..).zip(given) {
            if response.answer != Answer::Blank {
                told.push((hand_in.seat.0, hand_in.attempt, task, part));
            }
        }
    }
    told
}

impl Teller {
    fn new(system: Rc<System>, assignment: Assignment, clinic: Clinic) -> Self {
        let suspended = resumed::suspended(&assignment);
        let told = Told {
            interactions: system.interactions,
            answers: Vec::new(),
            before: suspended.map_or_else(Vec::new, |it| told_before(&it.hand_in)),
            passed: system.passed,
        };
        Self {
            system,
            assignment,
            graders: graders(&clinic),
            clinic,
            told: RefCell::new(told),
        }
    }

    fn tell(&self, events: &[Event], assigned: &Assigned) {
        let made = hand_in(events, assigned, &self.assignment, &self.clinic);
        let Some((right, asked, interactions)) = self.graded(assigned.taken.run, &made) else {
            return;
        };
        let enough = usize::try_from(right).unwrap_or(0)
            >= self.assignment.cut(usize::try_from(asked).unwrap_or(0));
        let status = match (assigned.complete(), enough) {
            (false, _) => Status::Incomplete,
            (true, true) => Status::Passed,
            (true, false) => Status::Failed,
        };
        let mut told = self.told.borrow_mut();
        let new = interactions.len();
        let session = Session {
            status,
            passed_before: told.passed,
            right,
            asked,
            seconds: self.system.seconds(),
            // What is longer than the system keeps is not kept in part.
            suspended: Some(kept(assigned, made).letters())
                .filter(|it| it.len() <= MOST_SUSPENDED)
                .unwrap_or_default(),
            told: told.interactions,
            interactions,
        };
        told.interactions += new;
        told.passed |= status == Status::Passed;
        let Ok(values) = session.values() else { return };
        for (name, value) in values {
            self.system.lms.set(&name, &value);
        }
        self.system.lms.commit();
    }

    /// How many are right, of how many, and the answers that are new.
    fn graded(&self, run: SittingId, made: &HandIn) -> Option<(u32, u32, Vec<Interaction>)> {
        let (mut right, mut asked, mut new) = (0, 0, Vec::new());
        let mut told = self.told.borrow_mut();
        for slot in self.assignment.slots() {
            let draw = self.assignment.draw(Seat(made.seat.0), &slot);
            let given = made.responses.get(usize::from(slot.place))?;
            for part in 0..self.graders.parts(&slot.task, draw)? {
                let task = TaskId {
                    task: slot.task.clone(),
                    part,
                };
                let response = given.get(usize::from(part)).cloned().unwrap_or_default();
                let graded = self.graders.grade(&task, draw, &response)?;
                asked += 1;
                right += u32::from(Mark::Judged(graded.standing).right());
                let at = (run, slot.place, part);
                let before = (made.seat.0, made.attempt, slot.place, part);
                let known = told.answers.contains(&at) || told.before.contains(&before);
                if known {
                    continue;
                }
                if let Some(it) = Interaction::of(slot.place, &response, &graded, time_of_day()) {
                    told.answers.push(at);
                    new.push(it);
                }
            }
        }
        Some((right, asked, new))
    }
}

/// The time of day, in seconds from midnight.
fn time_of_day() -> u32 {
    let now = clock::now();
    let local = now.utc_ms / 1000 + i64::from(now.offset_min) * 60;
    u32::try_from(local.rem_euclid(86_400)).unwrap_or(0)
}

//! Telling a school's system how a run at an assignment stands, after every
//! answer, for as long as the page is open.

use super::run::hand_in;
use crate::{
    browser::{clock, lms::Lms},
    log::OpenLog,
};
use class::{
    assignment::{Assignment, Seat},
    cases::CaseGrader,
    exchange::scorm::{Interaction, Kind, MOST_SUSPENDED, Session, Status},
    handin::HandIn,
    task::{Answer, Grader, Response, TaskId},
};
use clinic::{Clinic, standing::Standing};
use leptos::prelude::*;
use record::{
    Event,
    folds::{self, Assigned},
};
use std::cell::{Cell, RefCell};

/// The options that have a letter in the form of the system.
const LETTERED: u16 = 36;

/// The options whose letters fit an answer.
const MOST_TAKEN: usize = 100;

thread_local! {
    /// Whether the system is told already: it is begun once.
    static TOLD: Cell<bool> = const { Cell::new(false) };
}

/// Tells the system from now on, where there is one.
pub fn tell(log: OpenLog, id: String, assignment: Assignment, clinic: Clinic) {
    if TOLD.get() {
        return;
    }
    let Some(lms) = Lms::find().filter(Lms::begin) else {
        return;
    };
    TOLD.set(true);
    lms.clone().finish_on_leaving();
    let teller = Teller {
        lms,
        assignment,
        grader: CaseGrader::new(clinic.with_card(clinic.card().cloned())),
        clinic,
        begun: clock::now().utc_ms,
        told: RefCell::new(Vec::new()),
    };
    // Answers are given on other screens, so what follows them outlives this one.
    let owner = Owner::new_root(None);
    owner.with(|| {
        let hand_in = log.memo(move |events| {
            let all = folds::assignments(events).into_iter();
            all.into_iter()
                .find(|it| it.taken.assignment == id)
                .map(|it| (it, events.len()))
        });
        Effect::new(move |_| {
            if let Some((assigned, _)) = hand_in.get() {
                log.look(|events| teller.tell(events, &assigned));
            }
        });
    });
    std::mem::forget(owner);
}

struct Teller {
    lms: Lms,
    assignment: Assignment,
    clinic: Clinic,
    grader: CaseGrader,
    begun: i64,
    /// The items that the system was told of, by task and part.
    told: RefCell<Vec<(u16, u16)>>,
}

impl Teller {
    fn tell(&self, events: &[Event], assigned: &Assigned) {
        let made = hand_in(events, assigned, &self.assignment, &self.clinic);
        let told = self.told.borrow().len();
        let Some((right, asked, interactions)) = self.graded(&made) else {
            return;
        };
        let enough = usize::try_from(right).unwrap_or(0)
            >= self.assignment.cut(usize::try_from(asked).unwrap_or(0));
        let status = match (assigned.complete(), enough) {
            (false, _) => Status::Incomplete,
            (true, true) => Status::Passed,
            (true, false) => Status::Failed,
        };
        let letters = made.letters();
        let session = Session {
            status,
            right,
            asked,
            seconds: u64::try_from((clock::now().utc_ms - self.begun) / 1000).unwrap_or(0),
            suspended: Some(letters)
                .filter(|it| it.len() <= MOST_SUSPENDED)
                .unwrap_or_default(),
            told,
            interactions,
        };
        // What the form has no room for is left out rather than all of it.
        let Ok(values) = session.values() else { return };
        for (name, value) in values {
            self.lms.set(&name, &value);
        }
        self.lms.commit();
    }

    /// How many are right, of how many, and the answers that are new.
    fn graded(&self, made: &HandIn) -> Option<(u32, u32, Vec<Interaction>)> {
        let (mut right, mut asked, mut new) = (0, 0, Vec::new());
        let mut told = self.told.borrow_mut();
        for slot in self.assignment.slots() {
            let seed = self.assignment.seed(Seat(made.seat.0), slot.place);
            let given = made.responses.get(usize::from(slot.place))?;
            for part in 0..self.grader.parts(&slot.task, seed)? {
                let task = TaskId {
                    task: slot.task.clone(),
                    part,
                };
                let response = given.get(usize::from(part)).cloned().unwrap_or_default();
                let graded = self.grader.grade(&task, seed, &response)?;
                let fits = matches!(graded.standing, Standing::Right | Standing::Acceptable);
                asked += 1;
                right += u32::from(fits);
                let at = (slot.place, part);
                if response.answer != Answer::Blank && !told.contains(&at) {
                    told.push(at);
                    let id = format!("task-{}.{}", slot.place + 1, graded.item.id);
                    new.push(interaction(id, &response, fits));
                }
            }
        }
        Some((right, asked, new))
    }
}

fn interaction(id: String, response: &Response, right: bool) -> Interaction {
    let now = clock::now();
    let local = now.utc_ms / 1000 + i64::from(now.offset_min) * 60;
    let (kind, taken, number) = match &response.answer {
        Answer::Number(number) => (Kind::Numeric, Vec::new(), Some(*number)),
        Answer::Options(taken) => (Kind::Choice, taken.clone(), None),
        Answer::Blank => (Kind::Choice, Vec::new(), None),
    };
    // A large tray has more options than the form has letters.
    let fits = taken.len() <= MOST_TAKEN && taken.iter().all(|place| *place < LETTERED);
    Interaction {
        id,
        kind,
        taken: if fits { taken } else { Vec::new() },
        number,
        right,
        at: u32::try_from(local.rem_euclid(86_400)).unwrap_or(0),
        seconds: response.seconds,
    }
}

//! A run at an assignment: taking it up, beginning its tasks, the hand-in.

use super::{clinic_with, words};
use crate::{browser::clock, log::OpenLog, place::Place};
use class::{
    assignment::{Assignment, Seat, Slot},
    cases,
    handin::HandIn,
    task::{Answer, Response, Task},
};
use clinic::{
    Clinic,
    case::{Decision, tray_reading::CASE},
};
use record::{
    AssignmentTaken, CaseStarted, Event, SittingId, TaskBegun, What,
    folds::{self, Assigned},
};

/// Takes an assignment up at a seat.
pub fn take_up(log: OpenLog, assignment: &Assignment, seat: Seat, attempt: u8) {
    let run = log.new_sitting();
    let tasks = u16::try_from(assignment.slots().len()).unwrap_or(u16::MAX);
    log.append(What::AssignmentTaken(AssignmentTaken {
        run,
        assignment: words::id(assignment),
        code: assignment.letters(),
        seat: seat.0,
        attempt,
        title: assignment.name(),
        due: assignment.due.map(|day| day.0),
        tasks,
    }));
}

/// Goes on with a task, or begins it; gives where it is done.
///
/// # Errors
/// A sentence where the task cannot be done on this page.
pub fn go_on(
    log: OpenLog,
    assigned: &Assigned,
    assignment: &Assignment,
    slot: &Slot,
) -> Result<Place, String> {
    if let Some(begun) = assigned.tasks.get(&slot.place) {
        let sitting = log.look(|events| folds::sitting(events, begun.sitting));
        let gone = "What was begun is not in the record of this device any more.";
        let sitting = sitting.ok_or(gone)?;
        let with = sitting.with.as_deref();
        return Ok(Place::of_sitting(&sitting.case, sitting.seed, with));
    }
    let seed = assignment.seed(Seat(assigned.taken.seat), slot.place);
    let sitting = log.new_sitting();
    let started = match &*slot.task {
        Task::Case(order) => {
            let clinic = clinic_with(assignment.card.as_deref())?;
            let case = cases::case(&clinic, order, seed)
                .ok_or("No patient fits what this task asks for. Tell whoever set it.")?;
            CaseStarted {
                sitting,
                case: case.frame.to_string(),
                seed: case.seed,
                with: case.with.as_ref().map(ToString::to_string),
                card: assignment.card.clone(),
            }
        }
        Task::Reading => CaseStarted {
            sitting,
            case: CASE.into(),
            seed,
            with: None,
            card: None,
        },
        _ => {
            return Err(
                "This page cannot play this kind of task. Reload it to get the newest version."
                    .into(),
            );
        }
    };
    let place = Place::of_sitting(&started.case, started.seed, started.with.as_deref());
    log.append(What::CaseStarted(started));
    log.append(What::TaskBegun(TaskBegun {
        run: assigned.taken.run,
        place: slot.place,
        sitting,
    }));
    Ok(place)
}

/// The hand-in of a run as it stands, with the reasoning that the assignment
/// asks for: what is not answered is left open.
pub fn hand_in(
    events: &[Event],
    assigned: &Assigned,
    assignment: &Assignment,
    clinic: &Clinic,
) -> HandIn {
    let slots = assignment.slots();
    let responses = slots.iter().map(|slot| {
        let begun = assigned.tasks.get(&slot.place);
        let seed = assignment.seed(Seat(assigned.taken.seat), slot.place);
        begun.map_or_else(Vec::new, |begun| match &*slot.task {
            Task::Case(order) => cases::case(clinic, order, seed).map_or_else(Vec::new, |case| {
                given(events, begun.sitting, &case.decisions)
            }),
            Task::Reading => clinic
                .tray_reading(seed)
                .map_or_else(Vec::new, |it| given(events, begun.sitting, &it.decisions)),
            _ => Vec::new(),
        })
    });
    let responses = responses.collect();
    let now = clock::now();
    let minutes = now.utc_ms / 60_000 + i64::from(now.offset_min);
    HandIn {
        bank: assignment.bank,
        assignment: assignment.id(),
        seat: Seat(assigned.taken.seat),
        attempt: assigned.taken.attempt,
        finished: u32::try_from(minutes).unwrap_or(0),
        responses,
    }
}

fn given(events: &[Event], sitting: SittingId, decisions: &[Decision]) -> Vec<Response> {
    let Some(sitting) = folds::sitting(events, sitting) else {
        return Vec::new();
    };
    let response = |decision: &Decision| match sitting.answer_to(&decision.id) {
        Some(answer) => Response {
            answer: cases::answer(decision, &answer.answer),
            seconds: answer.seconds,
            hinted: false,
        },
        None => Response {
            answer: Answer::Blank,
            ..Response::default()
        },
    };
    decisions.iter().map(response).collect()
}

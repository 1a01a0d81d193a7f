//! A run at an assignment: taking it up, beginning its tasks, the hand-in.

use super::{clinic_with, given, graders, words};
use crate::{
    browser::clock,
    log::OpenLog,
    packs,
    place::{ClassPlace, FormSide, Place},
    questions,
};
use class::{
    assignment::{Assignment, Seat, Slot},
    cases, forms,
    handin::HandIn,
    task::{Grader, Task},
};
use clinic::{Clinic, case::tray_reading::CASE};
use record::{
    AssignmentTaken, CaseStarted, Event, FormBegun, PerCent, TaskBegun, What, folds,
    folds::Assigned,
};

/// Takes an assignment up at a seat.
pub fn take_up(log: OpenLog, assignment: &Assignment, seat: Seat, attempt: u8) {
    let run = log.new_sitting();
    let tasks = u16::try_from(assignment.slots().len()).unwrap_or(u16::MAX);
    log.append(What::AssignmentTaken(AssignmentTaken {
        run,
        assignment: words::id(assignment),
        code: packs::code(assignment),
        seat: seat.0,
        attempt,
        title: assignment.name(),
        due: assignment.due.map(|day| day.0),
        tasks,
        about: Some(words::summary(&assignment.tasks)),
        minutes: minutes(assignment),
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
    let (seat, id) = (Seat(assigned.taken.seat), assigned.taken.assignment.clone());
    let here = Place::Class(ClassPlace::Task(id, slot.place));
    if let Some(begun) = assigned.tasks.get(&slot.place) {
        return match &*slot.task {
            Task::Case(_) | Task::Reading => {
                let sitting = log.look(|events| folds::sitting(events, begun.sitting));
                let gone = "What was begun is not in the record of this device any more.";
                let sitting = sitting.ok_or(gone)?;
                let with = sitting.with.as_deref();
                Ok(Place::of_sitting(&sitting.case, sitting.seed, with))
            }
            Task::Form { .. } => Ok(Place::Form(begun.sitting, FormSide::Whole)),
            Task::Mix { .. } | Task::Number(_) | Task::Question(_) => Ok(here),
        };
    }
    let draw = assignment.draw(seat, slot);
    let sitting = log.new_sitting();
    let place = match &*slot.task {
        Task::Case(order) => {
            let clinic = clinic_with(assignment.card.as_deref())?;
            let case = cases::case(&clinic, order, draw.seed)
                .ok_or("No patient fits what this task asks for. Tell whoever set it.")?;
            start_case(
                log,
                CaseStarted {
                    sitting,
                    case: case.frame.to_string(),
                    seed: case.seed,
                    with: case.with.as_ref().map(ToString::to_string),
                    card: assignment.card.clone(),
                },
            )
        }
        Task::Reading => start_case(
            log,
            CaseStarted {
                sitting,
                case: CASE.into(),
                seed: draw.seed,
                with: None,
                card: None,
            },
        ),
        Task::Form {
            blueprint,
            questions,
        } => {
            log.append(What::FormBegun(FormBegun {
                form: sitting,
                questions: form_drawn(blueprint, *questions, draw.seed)?,
                code: Some(forms::code(draw.seed)),
                minutes: None,
                pass: PerCent::of(assignment.pass_mark),
            }));
            Place::Form(sitting, FormSide::Question(1))
        }
        Task::Mix { .. } | Task::Number(_) | Task::Question(_) => here,
    };
    log.append(What::TaskBegun(TaskBegun {
        run: assigned.taken.run,
        place: slot.place,
        sitting,
    }));
    Ok(place)
}

/// The ids of the questions of a form.
///
/// # Errors
/// A sentence where the form cannot be drawn, or not yet.
pub fn form_drawn(blueprint: &str, questions: u16, seed: u64) -> Result<Vec<String>, String> {
    let all =
        questions::at_hand().ok_or("The questions are being made ready. Try again in a moment.")?;
    let bank = forms::bank(all.items(), blueprint)
        .ok_or("This form asks for what is not taught here. Tell whoever set it.")?;
    forms::drawn(&bank, questions, seed)
}

fn start_case(log: OpenLog, started: CaseStarted) -> Place {
    let place = Place::of_sitting(&started.case, started.seed, started.with.as_deref());
    log.append(What::CaseStarted(started));
    place
}

/// How many minutes an assignment takes an unhurried student, from the tasks of
/// the seat that looks at what was set; none where a task cannot be told yet.
pub fn minutes(assignment: &Assignment) -> Option<u16> {
    let clinic = clinic_with(assignment.card.as_deref()).ok()?;
    let graders = graders(&clinic);
    let mut seconds = 0_u32;
    for slot in assignment.slots().iter().filter(|slot| slot.nth == 0) {
        let draw = assignment.draw(Seat(0), slot);
        let sets = assignment.tasks.iter();
        let mut sets = sets.filter(|set| set.task == *slot.task);
        let times = u32::from(sets.next().map_or(1, |set| set.times));
        // Of what is set several times one stands for all.
        seconds = seconds.saturating_add(graders.seconds(&slot.task, draw)?.saturating_mul(times));
    }
    u16::try_from(seconds.div_ceil(60)).ok()
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
        let draw = assignment.draw(Seat(assigned.taken.seat), slot);
        begun.map_or_else(Vec::new, |begun| {
            given::responses(events, begun.sitting, &slot.task, draw, clinic)
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

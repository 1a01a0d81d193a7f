//! Going on with a run that the school's system has kept: within it the page
//! may store nothing of its own, and another computer may be in use.

use super::{
    replayed::{close, put_back},
    system::system,
};
use crate::{
    assignments::run::{go_on, take_up},
    log::OpenLog,
};
use class::{assignment::Assignment, exchange::scorm::Kept, handin::HandIn, task::Answer};
use clinic::Clinic;
use record::folds::{self, Assigned};

/// What the system kept of an assignment, where it kept any of it.
pub fn suspended(assignment: &Assignment) -> Option<Kept> {
    let kept = Kept::read(system()?.suspended.as_deref()?).ok()?;
    let of = &kept.hand_in;
    (of.bank == assignment.bank && of.assignment == assignment.id()).then_some(kept)
}

/// Whether what the system kept of an assignment can be taken up only once all
/// questions are at hand.
pub fn awaits_questions(assignment: &Assignment) -> bool {
    assignment.needs_questions() && suspended(assignment).is_some()
}

/// Takes up what the system kept, unless this device's own record has as much
/// of it; says whether it did.
pub fn resume(log: OpenLog, assignment: &Assignment, clinic: &Clinic) -> bool {
    let Some(Kept {
        hand_in: kept,
        closed,
    }) = suspended(assignment)
    else {
        return false;
    };
    let id = crate::assignments::id(assignment);
    if let Some(here) = latest(log, &id)
        && here.taken.seat == kept.seat.0
        && here.taken.attempt >= kept.attempt
        && super::hand_in_now(log, &here, assignment, clinic) >= answered(&kept)
    {
        return false;
    }
    take_up(log, assignment, kept.seat, kept.attempt);
    for (slot, given) in assignment.slots().iter().zip(&kept.responses) {
        let is_closed = closed.contains(&slot.place);
        let begun = is_closed || given.iter().any(|it| it.answer != Answer::Blank);
        let Some(assigned) = latest(log, &id).filter(|_| begun) else {
            continue;
        };
        // A task that cannot be played here stays as if it was not begun.
        if go_on(log, &assigned, assignment, slot).is_err() {
            continue;
        }
        let sitting = latest(log, &id).and_then(|it| Some(it.tasks.get(&slot.place)?.sitting));
        if let Some(sitting) = sitting {
            put_back(log, clinic, (assignment, kept.seat), slot, sitting, given);
            if is_closed {
                close(log, &slot.task, sitting);
            }
        }
    }
    true
}

/// How many responses of a hand-in are answers.
pub fn answered(hand_in: &HandIn) -> usize {
    let all = hand_in.responses.iter().flatten();
    all.filter(|it| it.answer != Answer::Blank).count()
}

fn latest(log: OpenLog, id: &str) -> Option<Assigned> {
    log.look(|events| {
        let mut all = folds::assignments(events).into_iter();
        all.find(|it| it.taken.assignment == id)
    })
}

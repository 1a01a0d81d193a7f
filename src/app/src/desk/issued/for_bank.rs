//! What of an assignment goes into another question bank.

use crate::{
    assignments::{self, clinic_with, form_drawn},
    questions::{Questions, at_hand},
};
use class::{
    assignment::{Assignment, Seat},
    cases,
    exchange::qti,
    forms, numbers, questions as asked,
    task::Task,
};

/// The questions that seat 0 draws, as far as they have a form there.
pub fn questions(assignment: &Assignment) -> Result<Vec<qti::Question>, String> {
    let clinic = clinic_with(assignment.card.as_deref())?;
    let mut all = Vec::new();
    for slot in assignment.slots() {
        let draw = assignment.draw(Seat(0), &slot);
        let task = format!("task-{}", slot.place + 1);
        let title = assignments::task(&slot.task);
        let decisions = match &*slot.task {
            Task::Case(order) => cases::case(&clinic, order, draw.seed).map(|case| case.decisions),
            Task::Reading => clinic.tray_reading(draw.seed).map(|it| it.decisions.into()),
            Task::Number(family) => {
                let drawn = numbers::drawn(&clinic, family, draw);
                all.extend(drawn.and_then(|it| qti::Question::of_exercise(&task, &it)));
                None
            }
            Task::Question(family) => {
                let written = at_hand().map(Questions::bank);
                let drawn = written.and_then(|all| asked::drawn(all, family, draw));
                all.extend(drawn.and_then(|it| qti::Question::of_question(&task, &title, &it)));
                None
            }
            Task::Form {
                blueprint,
                questions,
            } => {
                all.extend(of_form(blueprint, *questions, draw.seed, &task, &title));
                None
            }
            Task::Mix { .. } => None,
        };
        for decision in decisions.unwrap_or_default() {
            let id = format!("{task}-{}", decision.id);
            all.extend(qti::Question::of(&id, &decision));
        }
    }
    Ok(all)
}

/// The questions of a form.
fn of_form(
    blueprint: &str,
    questions: u16,
    seed: u64,
    task: &str,
    title: &str,
) -> Vec<qti::Question> {
    let ids = form_drawn(blueprint, questions, seed).unwrap_or_default();
    let (Some(all), code) = (at_hand(), forms::code(seed)) else {
        return Vec::new();
    };
    let one = |id: &String| {
        let question = forms::write(all.bank(), &code, id)?;
        qti::Question::of_question(&format!("{task}-{id}"), title, &question)
    };
    ids.iter().filter_map(one).collect()
}

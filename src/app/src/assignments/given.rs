//! What was answered to a task, from the record: the responses of a hand-in,
//! and no marks.

use crate::questions::{self, answer};
use class::{
    cases, forms, numbers, questions as asked,
    task::{Answer, Draw, Made, Response, Task},
};
use clinic::{Clinic, case::Decision};
use record::{
    Event, Given, QuestionAnswered, SittingId, What,
    folds::{self, Sitting},
};
use study::question::Question;

/// The responses to a task that was begun, part by part, with the reasoning
/// that the assignment asks for. What is not answered is left open; so are
/// questions as long as they are not ready.
pub fn responses(
    events: &[Event],
    sitting: SittingId,
    task: &Task,
    draw: Draw,
    clinic: &Clinic,
) -> Vec<Response> {
    match task {
        Task::Case(order) => cases::case(clinic, order, draw.seed)
            .map_or_else(Vec::new, |case| decided(events, sitting, &case.decisions)),
        Task::Reading => clinic
            .tray_reading(draw.seed)
            .map_or_else(Vec::new, |it| decided(events, sitting, &it.decisions)),
        Task::Mix { .. } => mixed(events, sitting).into_iter().collect(),
        Task::Number(family) => numbers::drawn(clinic, family, draw)
            .and_then(|exercise| {
                let given = answered(events, sitting)?;
                let Given::One(typed) = &given.answer else {
                    return None;
                };
                Some(response(numbers::answer(&exercise, typed), given))
            })
            .into_iter()
            .collect(),
        Task::Question(family) => questions::at_hand()
            .and_then(|all| {
                let question = asked::drawn(all.bank(), family, draw)?;
                question_answered(&question, answered(events, sitting)?)
            })
            .into_iter()
            .collect(),
        Task::Form { .. } => form(events, sitting).unwrap_or_default(),
    }
}

fn response(answer: Answer, given: &QuestionAnswered) -> Response {
    Response {
        answer,
        seconds: given.seconds,
        hinted: given.hint,
    }
}

fn decided(events: &[Event], sitting: SittingId, decisions: &[Decision]) -> Vec<Response> {
    let Some(sitting) = folds::sitting(events, sitting) else {
        return Vec::new();
    };
    decisions.iter().map(|it| decision(&sitting, it)).collect()
}

fn decision(sitting: &Sitting, decision: &Decision) -> Response {
    match sitting.answer_to(&decision.id) {
        Some(given) => Response {
            answer: cases::answer(decision, &given.answer),
            seconds: given.seconds,
            hinted: false,
        },
        None => Response::default(),
    }
}

fn mixed(events: &[Event], sitting: SittingId) -> Option<Response> {
    let mut mixes = folds::mixes(events).into_iter();
    let mix = mixes.find(|it| it.mix.sitting == sitting)?.mix;
    let replay = serde_json::from_str(&mix.replay).ok()?;
    Some(Response {
        answer: Answer::Mixed(Made::of(replay)),
        seconds: mix.seconds,
        hinted: mix.hint,
    })
}

/// The first answer that was given in a sitting of one question.
fn answered(events: &[Event], sitting: SittingId) -> Option<&QuestionAnswered> {
    events.iter().find_map(|event| match &event.what {
        What::QuestionAnswered(it) if it.sitting == sitting => Some(it),
        _ => None,
    })
}

fn question_answered(question: &Question, given: &QuestionAnswered) -> Option<Response> {
    let answer = asked::answer(question, &answer(&given.answer)?);
    Some(response(answer, given))
}

fn form(events: &[Event], sitting: SittingId) -> Option<Vec<Response>> {
    let all = questions::at_hand()?;
    let form = folds::form(events, sitting)?;
    let code = form.begun.code.as_deref()?;
    let one = |id: &String| {
        let given = form.answers.get(id)?;
        question_answered(&forms::write(all.bank(), code, id)?, given)
    };
    let ids = form.begun.questions.iter();
    Some(ids.map(|id| one(id).unwrap_or_default()).collect())
}

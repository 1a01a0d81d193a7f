//! What a hand-in says of a task, put back into the record: judged again, as it
//! was when it was given.

use crate::{
    bench::{handed_over, worked_out},
    cases::answered,
    log::OpenLog,
    questions::{self, judged},
};
use class::{
    assignment::{Assignment, Seat, Slot},
    cases, forms, mixes, numbers, questions as asked,
    task::{Answer, Response, Task},
};
use clinic::{
    Clinic,
    case::{Decision, overall},
};
use record::{
    CaseFinished, FormFinished, PerCent, QuestionAnswered, SittingEnded, SittingId, What, folds,
};
use study::question::Question;

/// Puts back what was answered to a task that is begun in a sitting. Answers
/// that this page cannot read again are left out.
pub fn put_back(
    log: OpenLog,
    clinic: &Clinic,
    (assignment, seat): (&Assignment, Seat),
    slot: &Slot,
    sitting: SittingId,
    given: &[Response],
) {
    let draw = assignment.draw(seat, slot);
    let first = given.first();
    match &*slot.task {
        Task::Case(_) | Task::Reading => {
            let asked = super::decisions(clinic, &slot.task, draw.seed);
            decided(log, sitting, &asked.unwrap_or_default(), given);
        }
        Task::Mix { material, usage } => {
            let drawn = mixes::drawn(clinic, material, usage.as_deref(), draw.seed);
            if let (Some(drawn), Some(response)) = (drawn, first) {
                mixed(log, clinic, &drawn, sitting, response);
            }
        }
        Task::Number(family) => {
            let drawn = numbers::drawn(clinic, family, draw);
            if let (Some(drawn), Some(response)) = (drawn, first)
                && let Some(typed) = numbers::given(&drawn, &response.answer)
                && let Ok((_, answered)) =
                    worked_out(&drawn, drawn.index, typed, sitting, response.seconds)
            {
                log.append(What::QuestionAnswered(answered));
                log.append(What::SittingEnded(SittingEnded { sitting }));
            }
        }
        Task::Question(family) => {
            let drawn = questions::at_hand().and_then(|it| asked::drawn(it.bank(), family, draw));
            if let (Some(drawn), Some(response)) = (drawn, first)
                && answer_again(log, &drawn, draw.seed, sitting, response)
            {
                log.append(What::SittingEnded(SittingEnded { sitting }));
            }
        }
        Task::Form { .. } => form(log, sitting, given),
    }
}

fn decided(log: OpenLog, sitting: SittingId, asked: &[Decision], given: &[Response]) {
    let mut marks = Vec::new();
    for (decision, response) in asked.iter().zip(given) {
        let Some(answer) = cases::taken(decision, &response.answer) else {
            continue;
        };
        marks.push(decision.grade(&answer).per_cent);
        let answered = answered(sitting, decision, answer, response.seconds);
        log.append(What::CaseAnswered(answered));
    }
    if marks.len() == asked.len() {
        log.append(What::CaseFinished(CaseFinished {
            sitting,
            per_cent: PerCent::of(overall(&marks)),
        }));
    }
}

fn mixed(
    log: OpenLog,
    clinic: &Clinic,
    drawn: &mixes::Drawn,
    sitting: SittingId,
    response: &Response,
) {
    let Answer::Mixed(made) = &response.answer else {
        return;
    };
    if let Some(judged) = drawn.verdict(clinic, made) {
        let replay = made.replay(drawn.offer.material.as_str(), &drawn.offer.usage);
        let (hint, seconds) = (response.hinted, response.seconds);
        let handed = handed_over(sitting, replay, &judged, hint, seconds);
        log.append(What::MixHandedOver(handed));
    }
}

/// Says whether there was an answer.
fn answer_again(
    log: OpenLog,
    question: &Question,
    wording: u64,
    sitting: SittingId,
    response: &Response,
) -> bool {
    let Some(answer) = asked::given(question, &response.answer) else {
        return false;
    };
    log.append(What::QuestionAnswered(QuestionAnswered {
        hint: response.hinted,
        ..judged(question, wording, answer, sitting, response.seconds)
    }));
    true
}

/// Hands a task in again that was handed in with something left open: only a
/// practice form can be.
pub fn close(log: OpenLog, task: &Task, sitting: SittingId) {
    let is_open =
        log.look(|events| folds::form(events, sitting).is_some_and(|it| it.finished.is_none()));
    if matches!(task, Task::Form { .. }) && is_open {
        log.append(What::FormFinished(FormFinished { form: sitting }));
    }
}

/// A form whose questions are all answered was handed in; one with a question
/// left open may be gone on with.
fn form(log: OpenLog, sitting: SittingId, given: &[Response]) {
    let begun = log.look(|events| folds::form(events, sitting).map(|form| form.begun));
    let (Some(all), Some(begun)) = (questions::at_hand(), begun) else {
        return;
    };
    let Some(code) = begun.code.as_deref() else {
        return;
    };
    let mut done = 0;
    for (id, response) in begun.questions.iter().zip(given) {
        let wording = forms::wording(code, id);
        let question = forms::write(all.bank(), code, id);
        let answered =
            question.is_some_and(|it| answer_again(log, &it, wording, sitting, response));
        done += usize::from(answered);
    }
    if done == begun.questions.len() {
        log.append(What::FormFinished(FormFinished { form: sitting }));
    }
}

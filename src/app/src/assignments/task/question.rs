//! A question that an assignment asks: it is answered once, and then explained.

use crate::{
    browser::{clock, focus, scroll, storage::BrowserStore},
    log::{OpenLog, log},
    parts::{announce::announcer, answer::AnswerButton, assigned::BackToAssignment},
    questions::{
        Clue, Draft, Kept, Questions, answer,
        ask::{Ask, Asked, stem},
        hint, judged, ruled_out, told,
    },
};
use class::{questions as asked, task::Draw};
use leptos::prelude::*;
use record::{QuestionAnswered, SittingEnded, SittingId, Store, What, folds};
use std::sync::Arc;
use study::question::{Answer, Question, VANISHED};

/// A pause at the door must not make an answer slow: no question takes longer.
const LONGEST: u32 = 600;

/// The question, or what was answered to it.
#[component]
pub fn QuestionTask(
    /// All questions.
    questions: Questions,
    /// The family it is of.
    family: String,
    /// By what the seat draws it.
    draw: Draw,
    /// The run of work that it is done in.
    sitting: SittingId,
    /// Whether a hint may be looked at.
    hints: bool,
) -> impl IntoView {
    let Some(question) = asked::drawn(questions.bank(), &family, draw) else {
        return view! { <p class="lead">{VANISHED}</p> }.into_any();
    };
    let question = Arc::new(question);
    let log = log();
    let given = log.memo(move |events| {
        let mut all = folds::evidence(events).into_iter();
        let found = all.find(|it| it.answer.sitting == sitting)?;
        Some(found.answer.answer.clone())
    });
    let scene = move || {
        let question = question.clone();
        match given.get().as_ref().and_then(answer) {
            None => view! { <Asking question draw sitting hints log /> }.into_any(),
            Some(answer) => view! { <Told question answer sitting /> }.into_any(),
        }
    };
    scene.into_any()
}

/// The question, which waits for its answer.
#[component]
fn Asking(
    question: Arc<Question>,
    draw: Draw,
    sitting: SittingId,
    hints: bool,
    log: OpenLog,
) -> impl IntoView {
    let kept = BrowserStore.get(&Kept::key(sitting)).ok().flatten();
    let kept = kept.and_then(|text| Kept::read(&text)).unwrap_or_default();
    let draft = RwSignal::new(kept.draft);
    let (before, since) = (kept.seconds, clock::now().utc_ms);
    let seconds = move || {
        let here = (clock::now().utc_ms - since).max(0) / 1000;
        before.saturating_add(u32::try_from(here).unwrap_or(0))
    };
    let keep = move |draft: Draft| {
        let seconds = seconds();
        let kept = Kept {
            at: 0,
            seconds,
            draft,
        };
        // Where the storage is full or forbidden the page has said so already.
        let _ = BrowserStore.put(&Kept::key(sitting), &kept.write());
    };
    Effect::new(move |_| keep(draft.get()));
    let clue = StoredValue::new(hint(&question).filter(|_| hints));
    let out = ruled_out(draft, clue);
    let asked = Asked::new(question.clone(), draft);
    let heading = stem(&question, "Question".into());
    let ready = Signal::derive(move || asked.is_ready());
    let give = move || {
        let draft = draft.get_untracked();
        let Some(answer) = draft.answer(&question.form) else {
            return;
        };
        let seconds = seconds().min(LONGEST);
        log.append(What::QuestionAnswered(QuestionAnswered {
            hint: draft.hint,
            ..judged(&question, draw.seed, answer, sitting, seconds)
        }));
        log.append(What::SittingEnded(SittingEnded { sitting }));
    };
    view! {
        {heading}
        <Ask asked out />
        <Clue draft clue />
        <AnswerButton ready give />
    }
}

/// What was answered, explained.
#[component]
fn Told(question: Arc<Question>, answer: Answer, sitting: SittingId) -> impl IntoView {
    let verdict = question.grade(&answer);
    announcer().say(verdict.says.clone());
    scroll::to_top();
    focus::first("#verdict");
    view! {
        <p class="question question-past">{question.stem.clone()}</p>
        {told::judged(&verdict)}
        <BackToAssignment sitting=Some(sitting) />
        {told::explained(&question, Some(&answer))}
    }
}

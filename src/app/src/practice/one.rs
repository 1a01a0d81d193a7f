//! One question of a form: to be answered, or looked back on.

use super::{
    run::Run,
    whole::{PauseButton, TimeLeft},
};
use crate::{
    browser::clock,
    parts::page::Page,
    questions::{
        Kept, SetAside,
        ask::{Ask, Asked, stem},
        told,
    },
};
use leptos::prelude::*;
use study::question::{VANISHED, Verdict};

/// A question that waits for its answer. An answer is given on leaving it, and
/// can be changed until the form is handed in.
#[component]
pub fn Asking(
    /// The form.
    run: Run,
    /// Which question.
    at: usize,
) -> impl IntoView {
    let kept = run.take_up(at);
    let draft = RwSignal::new(kept.draft);
    let (before, since) = (kept.seconds, clock::now().utc_ms);
    let seconds = move || {
        let here = (clock::now().utc_ms - since).max(0) / 1000;
        before.saturating_add(u32::try_from(here).unwrap_or(0))
    };
    let keep = move || {
        run.keep(&Kept {
            at,
            seconds: seconds(),
            draft: draft.get_untracked(),
        });
    };
    Effect::new(move |_| {
        draft.track();
        keep();
    });
    let give = move || {
        run.give(at, &draft.get_untracked(), seconds());
        // Given: what is kept now is the answer itself, with no time on it.
        run.keep(&Kept {
            at,
            seconds: 0,
            draft: draft.get_untracked(),
        });
    };
    let count = run.now().map_or(0, |form| form.begun.questions.len());
    document().set_title(&format!("Question {} · Trayward", at + 1));
    let body = match run.write(at) {
        Some(question) => {
            let asked = Asked::new(question.clone(), draft);
            view! {
                {stem(&question, format!("{} of {count}", at + 1))}
                <Ask asked out=Signal::stored(None::<String>) />
            }
            .into_any()
        }
        None => view! {
            <h1 class="question" tabindex="-1">"Question " {at + 1}</h1>
            <p class="lead" data-test="vanished">{VANISHED}</p>
        }
        .into_any(),
    };
    let flagged = move || run.is_flagged(at);
    let goes = move |to: usize| {
        move |_| {
            give();
            run.go(run.place(to));
        }
    };
    view! {
        <article class="page case">
            <header class="case-head">
                <a
                    class="page-up"
                    href=run.whole().fragment()
                    data-test="to-whole"
                    on:click=move |_| give()
                >
                    "The whole form"
                </a>
                <TimeLeft run />
            </header>
            {body}
            <label class="q-unsure">
                <input
                    type="checkbox"
                    data-test="flag"
                    prop:checked=flagged
                    on:change=move |event| run.flag(at, event_target_checked(&event))
                />
                <span>"Flag to return to"</span>
            </label>
            <div class="case-go q-turn">
                {(at > 0).then(|| view! {
                    <button type="button" class="button button-quiet" data-test="previous" on:click=goes(at.saturating_sub(1))>
                        "Back"
                    </button>
                })}
                <button type="button" class="button" data-test="next" on:click=goes(at + 1)>
                    {if at + 1 < count { "Next" } else { "To the whole form" }}
                </button>
            </div>
            <div class="actions q-leave" on:click=move |_| give()>
                <PauseButton run />
            </div>
        </article>
    }
}

/// A question of a form that was handed in.
#[component]
pub fn Looking(
    /// The form.
    run: Run,
    /// Which question.
    at: usize,
) -> impl IntoView {
    let title = format!("Question {}", at + 1);
    let answer = run.answer(at);
    let body = match run.write(at) {
        Some(question) => {
            let verdict = answer.as_ref().map_or_else(blank, |it| question.grade(it));
            view! {
                <p class="question question-past">{question.stem.clone()}</p>
                {told::judged(&verdict)}
                {told::explained(&question, answer.as_ref())}
            }
            .into_any()
        }
        None => view! { <p class="lead" data-test="vanished">{VANISHED}</p> }.into_any(),
    };
    let count = run.now().map_or(0, |form| form.begun.questions.len());
    view! {
        <Page title over="The result" up=run.whole().fragment()>
            {body}
            <div class="actions">
                {(at > 0).then(|| view! {
                    <a class="button button-quiet" href=run.place(at.saturating_sub(1)).fragment()>"Back"</a>
                })}
                {(at + 1 < count).then(|| view! {
                    <a class="button button-quiet" href=run.place(at + 1).fragment()>"Next"</a>
                })}
            </div>
            <SetAside question=run.question_id(at) />
        </Page>
    }
}

/// How a question left blank is judged.
fn blank() -> Verdict {
    Verdict {
        per_cent: 0,
        right: false,
        harm: false,
        wrong: Vec::new(),
        missed: Vec::new(),
        says: "Left blank.".into(),
    }
}

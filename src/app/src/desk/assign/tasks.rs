//! The tasks: what is in, and putting one more in.

use super::{add::Add, draft::Draft};
use crate::{assignments, parts::announce::announcer, questions::Ready};
use leptos::prelude::*;

/// The tasks.
#[component]
pub fn Tasks(
    /// What is being chosen.
    draft: Draft,
) -> impl IntoView {
    view! {
        <section class="dk-tasks">
            <h2>"What is to be done"</h2>
            <List draft />
            <Expected draft />
            <Add draft />
        </section>
    }
}

/// What is in.
#[component]
fn List(draft: Draft) -> impl IntoView {
    let announcer = announcer();
    let words = draft.memo(|it| assignments::tasks(&it.tasks));
    let take_out = move |at: usize, name: String| {
        draft.change(|draft| {
            draft.tasks.remove(at);
        });
        announcer.say(format!("Taken out: {name}."));
    };
    let row = move |(at, says): (usize, String)| {
        let (name, hook) = (says.clone(), format!("take-out-{at}"));
        let label = format!("Take out: {says}");
        view! {
            <li class="dk-task">
                <span>{says}</span>
                <button
                    type="button"
                    class="button button-quiet"
                    aria-label=label
                    data-test=hook
                    on:click=move |_| take_out(at, name.clone())
                >
                    "Take out"
                </button>
            </li>
        }
    };
    move || {
        let words = words.get();
        if words.is_empty() {
            view! { <p class="hint" data-test="no-tasks">"Nothing is in yet."</p> }.into_any()
        } else {
            let rows = words.into_iter().enumerate().map(row).collect_view();
            view! { <ol class="dk-task-list" data-test="tasks">{rows}</ol> }.into_any()
        }
    }
}

/// How long all of it takes, once it can be told.
#[component]
fn Expected(draft: Draft) -> impl IntoView {
    let known = draft.memo(|it| (!it.tasks.is_empty(), it.needs_questions()));
    let says = move || {
        let all = draft.get();
        assignments::minutes(&all).map(|minutes| {
            let time = assignments::expected(minutes);
            view! {
                <p class="hint" data-test="time-expected">"All of it takes an unhurried student " {time} "."</p>
            }
        })
    };
    let tasks = draft.memo(|it| {
        it.tasks.len()
            + it.tasks
                .iter()
                .map(|it| usize::from(it.times))
                .sum::<usize>()
    });
    move || {
        tasks.track();
        match known.get() {
            (false, _) => ().into_any(),
            (true, false) => says().into_any(),
            (true, true) => view! { <Ready show=move |_| says() /> }.into_any(),
        }
    }
}

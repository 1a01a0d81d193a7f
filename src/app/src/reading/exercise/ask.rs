//! One question about a drawn tray.

use super::sitting::Sitting;
use crate::{
    cases::laid_drawing,
    parts::{answer::AnswerButton, drawing::ItemDrawing},
    taught::catalogue,
};
use clinic::case::{Choice, Decision};
use leptos::prelude::*;

/// The question with its options. What does not belong is chosen on the tray.
#[component]
pub fn Ask(
    /// The sitting.
    sitting: Sitting,
    /// Which question.
    at: usize,
) -> impl IntoView {
    let exercise = sitting.exercise();
    let decision = exercise.decisions[at].clone();
    let taken = RwSignal::new(None::<String>);
    let count = exercise.decisions.len();
    let on_tray = decision.id == "stray";
    let body = if on_tray {
        view! { <OnTray decision=decision.clone() taken /> }.into_any()
    } else {
        view! {
            {tray(&exercise.decisions[1])}
            <Options decision=decision.clone() taken />
        }
        .into_any()
    };
    let ready = Signal::derive(move || taken.with(Option::is_some));
    let give = move || {
        if let Some(answer) = taken.get_untracked() {
            sitting.give(at, answer);
        }
    };
    view! {
        <div data-test=format!("ask-{}", decision.id)>
            <h2 class="question" tabindex="-1">
                <span class="stage-label">{at + 1} " of " {count} " · " {decision.name.clone()}</span>
                {decision.question.clone()}
            </h2>
            {body}
            <AnswerButton ready give />
        </div>
    }
}

/// The tray to look at.
pub fn tray(stray: &Decision) -> impl IntoView + use<> {
    let thing = |choice: &Choice| {
        view! {
            <li class="tray-thing">
                {laid_drawing(&choice.shows)} <span class="laid-name">{choice.label.clone()}</span>
            </li>
        }
    };
    view! {
        <div class="tray">
            <ul class="tray-things" data-test="drawn-tray">
                {stray.choices.iter().map(thing).collect_view()}
            </ul>
        </div>
    }
}

/// The things on the tray as what can be chosen.
#[component]
fn OnTray(decision: Decision, taken: RwSignal<Option<String>>) -> impl IntoView {
    let thing = |choice: &Choice| {
        view! {
            <label class="tray-thing tray-choice">
                {radio(choice, taken)} {laid_drawing(&choice.shows)}
                <span class="laid-name">{choice.label.clone()}</span>
            </label>
        }
    };
    view! {
        <fieldset class="tray">
            <legend class="unseen">"One thing on the tray"</legend>
            <div class="tray-things">{decision.choices.iter().map(thing).collect_view()}</div>
        </fieldset>
    }
}

/// Options as rows.
#[component]
fn Options(decision: Decision, taken: RwSignal<Option<String>>) -> impl IntoView {
    let option = |choice: &Choice| {
        let item = choice.shows.first().and_then(|id| catalogue().item(id));
        view! {
            <label class="option">
                {radio(choice, taken)} <span class="option-words">{choice.label.clone()}</span>
                {item.map(|item| view! { <span class="option-drawing"><ItemDrawing item /></span> })}
            </label>
        }
    };
    view! {
        <fieldset class="options">
            <legend class="unseen">"One of these"</legend>
            {decision.choices.iter().map(option).collect_view()}
        </fieldset>
    }
}

fn radio(choice: &Choice, taken: RwSignal<Option<String>>) -> impl IntoView + use<> {
    let (id, own) = (choice.id.clone(), choice.id.clone());
    view! {
        <input
            type="radio"
            name="answer"
            data-test=format!("choice-{}", choice.id)
            prop:checked=move || taken.with(|taken| taken.as_ref() == Some(&own))
            on:change=move |_| taken.set(Some(id.clone()))
        />
    }
}

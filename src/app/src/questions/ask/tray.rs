//! Things at hand, laid on the tray by tapping them.

use super::Asked;
use crate::{
    parts::{announce::announcer, drawing::ItemDrawing},
    taught::catalogue,
};
use leptos::prelude::*;
use study::question::Choice;

/// The things at hand, and what lies on the tray.
#[component]
pub fn Tray(
    /// The question.
    asked: Asked,
) -> impl IntoView {
    let question = asked.question();
    let things: Vec<_> = question
        .form
        .choices()
        .iter()
        .map(|choice| thing(asked, choice))
        .collect();
    let on_tray = move || {
        let question = asked.question();
        let keys = asked.draft.read().keys.clone();
        let named = |key: &String| {
            let mut choices = question.form.choices().iter();
            choices.find(|c| c.key == *key).map(|c| c.text.clone())
        };
        let names: Vec<String> = keys.iter().filter_map(named).collect();
        if names.is_empty() {
            "Nothing lies on the tray yet.".to_string()
        } else {
            format!("On the tray: {}.", names.join(", "))
        }
    };
    view! {
        <ul class="at-hand">{things}</ul>
        <p class="q-on-tray" data-test="on-tray">{on_tray}</p>
    }
}

fn thing(asked: Asked, choice: &Choice) -> impl IntoView + use<> {
    let key = StoredValue::new(choice.key.clone());
    let laid = move || {
        let draft = asked.draft.read();
        key.with_value(|key| draft.keys.contains(key))
    };
    let (announcer, name) = (announcer(), choice.text.clone());
    let turn = move |_| {
        asked
            .draft
            .update(|draft| key.with_value(|key| draft.turn(key)));
        let now = asked
            .draft
            .with_untracked(|draft| key.with_value(|key| draft.keys.contains(key)));
        announcer.say(format!(
            "{}: {name}",
            if now { "Laid" } else { "Taken off" }
        ));
    };
    let item = choice.item.as_ref().and_then(|id| catalogue().item(id));
    view! {
        <li>
            <button
                type="button"
                class=move || if laid() { "thing thing-laid" } else { "thing" }
                aria-pressed=move || if laid() { "true" } else { "false" }
                data-test=format!("choice-{}", choice.key)
                on:click=turn
            >
                <span class="thing-drawing">{item.map(|item| view! { <ItemDrawing item /> })}</span>
                <span class="thing-name">{choice.text.clone()}</span>
                <span class="thing-place" aria-hidden="true">{move || laid().then_some("✓")}</span>
            </button>
        </li>
    }
}

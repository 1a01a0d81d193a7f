//! Choices as rows to tap: one of them, or all that are so.

use super::Asked;
use crate::{parts::drawing::ItemDrawing, taught::catalogue};
use leptos::prelude::*;
use study::question::{Choice, Form};

/// The rows.
#[component]
pub fn Choices(
    /// The question.
    asked: Asked,
    /// The key of a choice that a hint has ruled out.
    out: Signal<Option<String>>,
) -> impl IntoView {
    let question = asked.question();
    let several = matches!(question.form, Form::All(_));
    let rows: Vec<_> = question
        .form
        .choices()
        .iter()
        .map(|choice| row(asked, choice, several, out))
        .collect();
    let legend = question.form.asks();
    view! {
        <fieldset class="options">
            <legend class="unseen">{legend}</legend>
            {rows}
        </fieldset>
    }
}

fn row(
    asked: Asked,
    choice: &Choice,
    several: bool,
    out: Signal<Option<String>>,
) -> impl IntoView + use<> {
    let key = StoredValue::new(choice.key.clone());
    let taken = move || {
        let draft = asked.draft.read();
        key.with_value(|key| draft.keys.contains(key))
    };
    let is_out = move || key.with_value(|key| out.with(|out| out.as_ref() == Some(key)));
    let turn = move |_| {
        asked.draft.update(|draft| {
            if !several {
                draft.keys.clear();
            }
            key.with_value(|key| draft.turn(key));
        });
    };
    let item = choice.item.as_ref().and_then(|id| catalogue().item(id));
    view! {
        <label class=move || if is_out() { "option q-out" } else { "option" }>
            <input
                type=if several { "checkbox" } else { "radio" }
                name="answer"
                data-test=format!("choice-{}", choice.key)
                disabled=is_out
                prop:checked=taken
                on:change=turn
            />
            <span class="option-words">
                {choice.text.clone()}
                {move || is_out().then(|| view! { <span class="option-what">"Not this one"</span> })}
            </span>
            {item.map(|item| view! { <span class="option-drawing"><ItemDrawing item /></span> })}
        </label>
    }
}

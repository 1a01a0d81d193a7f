//! A number is typed.

use super::Asked;
use crate::questions::draft;
use leptos::prelude::*;
use study::question::Form;

/// The field with its unit.
#[component]
pub fn Number(
    /// The question.
    asked: Asked,
) -> impl IntoView {
    let unit = match &asked.question().form {
        Form::Number { unit, .. } => unit.clone(),
        _ => String::new(),
    };
    let typed = move || asked.draft.read().typed.clone();
    let wrong = move || {
        let typed = typed();
        !typed.trim().is_empty() && draft::number(&typed).is_none()
    };
    view! {
        <label class="q-number">
            <span class="unseen">"Your number"</span>
            <input
                type="text"
                inputmode="decimal"
                autocomplete="off"
                data-test="typed"
                aria-describedby="typed-note"
                prop:value=typed
                on:input=move |event| {
                    let typed = event_target_value(&event);
                    asked.draft.update(|draft| draft.typed = typed);
                }
            />
            <span>{unit}</span>
        </label>
        <p class="q-note" id="typed-note" aria-live="polite">
            {move || wrong().then_some("That is no number. Type one like 12 or 0.5, at most three decimals.")}
        </p>
    }
}

//! A box for a number or a sign that is typed, with its unit beside it.

use leptos::prelude::*;

/// The most letters that can be typed: a hand-in has room for them, in any script.
const MOST: usize = class::handin::MOST_TYPED / 4;

/// The box. What is asked carries the id `stem`, and what is wrong with an
/// entry `why-answer`; both describe the box.
#[component]
pub fn Typed(
    /// What stands in it.
    #[prop(into)]
    typed: Signal<String>,
    /// The unit, where there is one.
    unit: Option<&'static str>,
    /// What is done with what is typed.
    change: impl Fn(String) + 'static,
) -> impl IntoView {
    view! {
        <label class="num-label" for="answer">"Your answer"</label>
        <span class="num-typed">
            <input
                id="answer"
                class="num-input"
                type="text"
                autocomplete="off"
                autocapitalize="off"
                spellcheck="false"
                maxlength=MOST
                aria-describedby="stem why-answer"
                data-test="typed"
                prop:value=typed
                on:input=move |event| change(event_target_value(&event))
            />
            {unit.map(|unit| view! { <span class="num-unit">{unit}</span> })}
        </span>
    }
}

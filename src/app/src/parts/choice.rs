//! One of a few: a row of radio buttons drawn as a divided bar.

use leptos::prelude::*;

/// An option of a choice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choosable {
    /// What it stands for.
    pub value: String,
    /// What it says.
    pub label: String,
}

impl Choosable {
    /// An option.
    pub fn new(value: impl Into<String>, label: impl Into<String>) -> Self {
        Self {
            value: value.into(),
            label: label.into(),
        }
    }
}

/// A choice of one among a few.
#[component]
pub fn Choice(
    /// What is chosen; also the name of the group, so it is unique on a screen.
    #[prop(into)]
    legend: String,
    /// The options.
    options: Vec<Choosable>,
    /// The value that is chosen.
    #[prop(into)]
    chosen: Signal<String>,
    /// Told the value the reader takes.
    #[prop(into)]
    choose: Callback<String>,
    /// A stable hook for tests; each option has it with its value behind a hyphen.
    test: &'static str,
) -> impl IntoView {
    let name = legend.clone();
    let option = move |Choosable { value, label }| {
        let (hook, mine, taken) = (format!("{test}-{value}"), value.clone(), value.clone());
        view! {
            <label class="choice-option">
                <input
                    type="radio"
                    name=name.clone()
                    value=value
                    data-test=hook
                    prop:checked=move || chosen.with(|chosen| *chosen == mine)
                    on:change=move |_| choose.run(taken.clone())
                />
                <span>{label}</span>
            </label>
        }
    };
    view! {
        <fieldset class="choice">
            <legend>{legend}</legend>
            <div class="choice-options">{options.into_iter().map(option).collect_view()}</div>
        </fieldset>
    }
}

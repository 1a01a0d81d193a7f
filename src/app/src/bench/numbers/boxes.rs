//! The boxes of a tool: what is typed with its unit, what is chosen, and what
//! is wrong with an entry, beside the entry.

use clinic::numbers::tools::{Ask, Fault, Input};
use leptos::prelude::*;

/// What stands in the boxes, by their ids.
pub type Entered = RwSignal<Vec<(String, String)>>;

/// What stands in one box.
pub fn entry(entered: &[(String, String)], id: &str) -> String {
    let mut all = entered.iter();
    all.find(|(each, _)| each == id)
        .map_or_else(String::new, |(_, text)| text.clone())
}

fn enter(entered: Entered, id: &'static str, text: String) {
    entered.update(|all| match all.iter_mut().find(|(each, _)| each == id) {
        Some((_, typed)) => *typed = text,
        None => all.push((id.into(), text)),
    });
}

/// What stands in the boxes at first: of each choice the first.
pub fn at_first(inputs: &[Input]) -> Vec<(String, String)> {
    let first = |input: &Input| match &input.ask {
        Ask::Choice(options) => {
            let (id, _) = options.first()?;
            Some((input.id.to_string(), id.clone()))
        }
        Ask::Typed { .. } => None,
    };
    inputs.iter().filter_map(first).collect()
}

/// One box.
#[component]
pub fn Box(
    /// What it asks for.
    input: Input,
    /// What stands in all of them.
    entered: Entered,
    /// What is wrong with what stands in them.
    #[prop(into)]
    faults: Signal<Vec<Fault>>,
) -> impl IntoView {
    let id = input.id;
    let field = format!("box-{id}");
    let why_id = format!("why-{id}");
    let why = Memo::new(move |_| {
        faults.with(|faults| {
            let mut mine = faults.iter();
            mine.find(|fault| fault.input == id)
                .map(|fault| fault.why.to_string())
        })
    });
    let optional = input.optional.then_some(" (may stay empty)");
    let described = why_id.clone();
    let described = move || why.with(|why| why.as_ref().map(|_| described.clone()));
    let invalid = move || why.with(|why| why.as_ref().map(|_| "true"));
    let takes = match input.ask {
        Ask::Choice(options) => {
            let option = move |(value, label): (String, String)| {
                let own = value.clone();
                view! {
                    <option value=value selected=move || entered.with(|all| entry(all, id) == own)>
                        {label}
                    </option>
                }
            };
            view! {
                <select
                    id=field.clone()
                    class="num-select"
                    data-test=field.clone()
                    on:change=move |event| enter(entered, id, event_target_value(&event))
                >
                    {options.into_iter().map(option).collect_view()}
                </select>
            }
            .into_any()
        }
        Ask::Typed {
            unit,
            range,
            example,
        } => {
            let hint = match (range.is_empty(), example.is_empty()) {
                (true, true) => String::new(),
                (true, false) => format!("Such as {example}"),
                (false, true) => format!("From {range}"),
                (false, false) => format!("Such as {example}; from {range}"),
            };
            view! {
                <span class="num-typed">
                    <input
                        id=field.clone()
                        class="num-input"
                        type="text"
                        inputmode="text"
                        autocomplete="off"
                        autocapitalize="off"
                        spellcheck="false"
                        data-test=field.clone()
                        aria-invalid=invalid
                        aria-describedby=described
                        prop:value=move || entered.with(|all| entry(all, id))
                        on:input=move |event| enter(entered, id, event_target_value(&event))
                    />
                    {(!unit.is_empty()).then(|| view! { <span class="num-unit">{unit}</span> })}
                </span>
                <span class="hint num-hint">{hint}</span>
            }
            .into_any()
        }
    };
    view! {
        <div class="num-box">
            <label class="num-label" for=field>{input.label} {optional}</label>
            {takes}
            <p class="num-why" id=why_id.clone() data-test=why_id>{why}</p>
        </div>
    }
}

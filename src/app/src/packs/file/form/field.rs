//! One field: a text, a number, yes or no, one of a few words.

use super::{Form, hook, words};
use catalogue::source::edit::{Node, Step, Value, set};
use leptos::prelude::*;

/// From how many characters on a text has a field of several lines.
const LONG: usize = 48;

/// A field for what is neither a list nor a table. `name` is the name it has in
/// the text, or that of the list it is an entry of.
pub fn field(form: Form, node: &Node, path: &[Step], name: &str, label: String) -> AnyView {
    let way = StoredValue::new(path.to_vec());
    let test = format!("field-{}", hook(path));
    let put = move |value: Value| {
        form.change(false, |text| way.with_value(|way| set(text, way, &value)));
    };
    match &node.value {
        Value::Flag(flag) => {
            let flag = *flag;
            view! {
                <label class="pk-flag">
                    <input
                        type="checkbox"
                        prop:checked=flag
                        data-test=test
                        on:change=move |event| put(Value::Flag(event_target_checked(&event)))
                    />
                    <span>{label}</span>
                </label>
            }
            .into_any()
        }
        Value::Number(number) => {
            let number = number.clone();
            let change = move |event: web_sys::Event| {
                put(Value::Number(event_target_value(&event).trim().to_owned()));
            };
            view! {
                <label class="field pk-number">
                    <span>{label}</span>
                    <input type="text" inputmode="decimal" value=number data-test=test on:change=change />
                </label>
            }
            .into_any()
        }
        Value::Text(said) => text(said, name, label, test, put),
        Value::List(..) | Value::Table(..) => ().into_any(),
    }
}

fn text(
    said: &str,
    name: &str,
    label: String,
    test: String,
    put: impl Fn(Value) + Copy + 'static,
) -> AnyView {
    let said = said.to_owned();
    let change = move |event: web_sys::Event| put(Value::Text(event_target_value(&event)));
    if let Some(options) = words::one_of(name) {
        let known = options.contains(&said.as_str());
        let own = (!known).then(|| view! { <option selected>{said.clone()}</option> });
        let options = options.iter().map(|word| {
            let chosen = *word == said;
            view! { <option selected=chosen>{*word}</option> }
        });
        return view! {
            <label class="field">
                <span>{label}</span>
                <select data-test=test on:change=change>{own} {options.collect_view()}</select>
            </label>
        }
        .into_any();
    }
    let list = words::choices(name);
    if list.is_none() && said.chars().count() > LONG {
        return view! {
            <label class="field pk-long">
                <span>{label}</span>
                <textarea rows="3" data-test=test on:change=change>
                    {said}
                </textarea>
            </label>
        }
        .into_any();
    }
    view! {
        <label class="field pk-long">
            <span>{label}</span>
            <input
                type="text"
                autocomplete="off"
                list=list
                value=said
                data-test=test
                on:change=change
            />
        </label>
    }
    .into_any()
}

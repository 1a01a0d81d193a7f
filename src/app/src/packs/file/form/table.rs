//! A table: its fields, its lists, and what can be added to it.

use super::{Form, field::field, hook, list::list, on, words};
use crate::parts::fold::Fold;
use catalogue::source::edit::{Layout, Node, Step, Value, put_field, remove};
use leptos::prelude::*;

/// The parts of a table. `siblings` are tables of the same kind, whose fields can
/// be added to it.
pub fn table(form: Form, node: &Node, path: &[Step], siblings: &[&Node]) -> AnyView {
    let Value::Table(fields, _) = &node.value else {
        return ().into_any();
    };
    let name = last(path);
    let keyed = words::keyed(name);
    let parts: Vec<AnyView> = fields
        .iter()
        .map(|(key, inner)| {
            let way = on(path, Step::Field(key.clone()));
            part(form, key, inner, &way, keyed, name)
        })
        .collect();
    let more = if keyed {
        add_keyed(form, path, name)
    } else {
        add_field(form, fields, path, siblings)
    };
    view! { <div class="pk-table">{parts} {more}</div> }.into_any()
}

/// One field of a table, with the way to take it out where it may be missing.
fn part(form: Form, key: &str, inner: &Node, way: &[Step], keyed: bool, within: &str) -> AnyView {
    let label = if keyed {
        words::named(key)
    } else {
        words::label(key)
    };
    let keyed_table = words::keyed(key);
    match &inner.value {
        Value::List(..) => list(form, inner, way, key, label),
        Value::Table(..) => {
            let inner = table(form, inner, way, &[]);
            view! { <Fold title=label open=keyed_table>{inner}</Fold> }.into_any()
        }
        _ if keyed => {
            let out = way.to_vec();
            let says = format!("Take out {label}");
            let name = if within == "findings" { "" } else { "reason" };
            view! {
                <div class="pk-entry">
                    {field(form, inner, way, name, label)}
                    <button
                        type="button"
                        class="button button-quiet"
                        aria-label=says
                        data-test=format!("take-{}", hook(way))
                        on:click=move |_| form.change(true, |text| remove(text, &out))
                    >
                        "Take out"
                    </button>
                </div>
            }
            .into_any()
        }
        _ => field(form, inner, way, key, label),
    }
}

fn last(path: &[Step]) -> &str {
    path.iter()
        .rev()
        .find_map(|step| match step {
            Step::Field(name) => Some(name.as_str()),
            Step::Entry(_) => None,
        })
        .unwrap_or_default()
}

/// One more id with what is said of it.
fn add_keyed(form: Form, path: &[Step], name: &str) -> AnyView {
    let way = StoredValue::new(path.to_vec());
    let typed = RwSignal::new(String::new());
    let test = hook(path);
    let list = words::choices(name);
    let says = if name == "findings" {
        "yes"
    } else {
        "to be said"
    };
    let add = move |_| {
        let id = typed.get_untracked().trim().to_owned();
        if !id.is_empty() {
            let value = Value::Text(says.to_owned());
            form.change(true, |text| {
                way.with_value(|way| put_field(text, way, &id, &value))
            });
        }
    };
    let label = if name == "findings" {
        "Another finding"
    } else {
        "Another item"
    };
    view! {
        <div class="pk-entry pk-add">
            <label class="field pk-long">
                <span>{label}</span>
                <input
                    type="text"
                    autocomplete="off"
                    list=list
                    data-test=format!("more-{test}")
                    on:input=move |event| typed.set(event_target_value(&event))
                />
            </label>
            <button type="button" class="button button-quiet" data-test=format!("add-{test}") on:click=add>
                "Add"
            </button>
        </div>
    }
    .into_any()
}

/// A field that tables of the same kind have and this one has not.
fn add_field(form: Form, fields: &[(String, Node)], path: &[Step], siblings: &[&Node]) -> AnyView {
    let mut missing: Vec<(String, Value)> = Vec::new();
    for sibling in siblings {
        let Value::Table(others, _) = &sibling.value else {
            continue;
        };
        for (key, node) in others {
            let known = |(have, _): &(String, Node)| have == key;
            let simple = !matches!(
                node.value,
                Value::List(_, true) | Value::Table(_, Layout::Head)
            );
            if simple && !fields.iter().any(known) && !missing.iter().any(|(m, _)| m == key) {
                missing.push((key.clone(), node.value.clone()));
            }
        }
    }
    if missing.is_empty() {
        return ().into_any();
    }
    let way = StoredValue::new(path.to_vec());
    let test = format!("field-to-{}", hook(path));
    let options: Vec<_> = missing
        .iter()
        .map(|(key, _)| view! { <option value=key.clone()>{words::label(key)}</option> })
        .collect();
    let missing = StoredValue::new(missing);
    let add = move |event: web_sys::Event| {
        let key = event_target_value(&event);
        let value = missing.with_value(|all| all.iter().find(|(k, _)| *k == key).cloned());
        if let Some((key, value)) = value {
            form.change(true, |text| {
                way.with_value(|way| put_field(text, way, &key, &value))
            });
        }
    };
    view! {
        <label class="field">
            <span>"Add a field"</span>
            <select data-test=test on:change=add>
                <option value="" selected>"Choose…"</option>
                {options}
            </select>
        </label>
    }
    .into_any()
}

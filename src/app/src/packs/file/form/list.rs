//! A list: its entries, each with the ways to move it, take it out, and have one
//! more like it.

use super::{Form, field::field, hook, on, table::table};
use crate::parts::{capital::capital, fold::Fold};
use catalogue::source::edit::{Node, Step, Value, add_copy, move_entry, remove, set};
use leptos::prelude::*;

/// A list with its entries.
pub fn list(form: Form, node: &Node, path: &[Step], name: &str, label: String) -> AnyView {
    let Value::List(entries, heads) = &node.value else {
        return ().into_any();
    };
    let siblings: Vec<&Node> = entries.iter().collect();
    let count = entries.len();
    // Two numbers are a span: it has no other length.
    let span = count == 2
        && entries
            .iter()
            .all(|it| matches!(it.value, Value::Number(_)));
    let parts: Vec<AnyView> = entries
        .iter()
        .enumerate()
        .map(|(at, entry)| {
            let way = on(path, Step::Entry(at));
            let called = format!("{label} {}", at + 1);
            let inner = match &entry.value {
                Value::Table(..) => {
                    let title = title(entry, at);
                    let inner = table(form, entry, &way, &siblings);
                    let test = format!("entry-{}", hook(&way));
                    view! {
                        <div class="pk-fold" data-test=test>
                            <Fold title open=count == 1>{inner}</Fold>
                        </div>
                    }
                    .into_any()
                }
                Value::List(..) => list(form, entry, &way, name, called.clone()),
                _ => field(form, entry, &way, name, called.clone()),
            };
            let ways = (!span).then(|| ways(form, path, at, count, &called));
            view! { <li class="pk-entry">{inner} {ways}</li> }.into_any()
        })
        .collect();
    let more = (!span).then(|| more(form, path, count, &label));
    let class = if *heads {
        "pk-list pk-list-large"
    } else {
        "pk-list"
    };
    view! {
        <fieldset class=class data-test=format!("list-{}", hook(path))>
            <legend>{label.clone()}</legend>
            <ol class=if span { "pk-span" } else { "" }>{parts}</ol>
            {more}
        </fieldset>
    }
    .into_any()
}

/// What an entry is called: its name, its id, or what it begins with.
fn title(entry: &Node, at: usize) -> String {
    let known = ["name", "title", "id", "slip", "say", "way", "because"];
    let said = known.iter().find_map(|name| entry.text(name));
    let first = match &entry.value {
        Value::Table(fields, _) => fields.first().map(|(name, _)| name.as_str()),
        _ => None,
    };
    let said = said.or(first).unwrap_or_default();
    let mut short: String = said.chars().take(60).collect();
    if said.chars().nth(60).is_some() {
        short.push('…');
    }
    format!("{}. {}", at + 1, capital(&short))
}

/// The buttons of an entry.
fn ways(form: Form, list: &[Step], at: usize, count: usize, called: &str) -> AnyView {
    let way = StoredValue::new(list.to_vec());
    let test = hook(&on(list, Step::Entry(at)));
    let shift = move |back: bool| {
        form.change(true, |text| {
            way.with_value(|way| move_entry(text, way, at, back))
        });
    };
    let out = move |_| {
        let entry = way.with_value(|way| on(way, Step::Entry(at)));
        form.change(true, |text| remove(text, &entry));
    };
    view! {
        <div class="pk-ways">
            <button
                type="button"
                class="button button-quiet"
                aria-label=format!("{called}: move up")
                data-test=format!("up-{test}")
                disabled=at == 0
                on:click=move |_| shift(true)
            >
                "↑"
            </button>
            <button
                type="button"
                class="button button-quiet"
                aria-label=format!("{called}: move down")
                data-test=format!("down-{test}")
                disabled=at + 1 == count
                on:click=move |_| shift(false)
            >
                "↓"
            </button>
            <button
                type="button"
                class="button button-quiet"
                aria-label=format!("{called}: take out")
                data-test=format!("out-{test}")
                on:click=out
            >
                "Take out"
            </button>
        </div>
    }
    .into_any()
}

/// One more entry, like the last one.
fn more(form: Form, list: &[Step], count: usize, label: &str) -> AnyView {
    let way = StoredValue::new(list.to_vec());
    let add = move |_| {
        form.change(true, |text| {
            way.with_value(|way| match count.checked_sub(1) {
                Some(last) => add_copy(text, way, last),
                None => set(text, way, &Value::List(vec![empty()], false)),
            })
        });
    };
    view! {
        <button
            type="button"
            class="button button-quiet"
            aria-label=format!("{label}: one more")
            data-test=format!("one-more-{}", hook(list))
            on:click=add
        >
            "One more"
        </button>
    }
    .into_any()
}

fn empty() -> Node {
    Node {
        value: Value::Text(String::new()),
        span: 0..0,
        key: 0..0,
    }
}

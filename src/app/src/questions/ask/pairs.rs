//! Each on the left is matched with one on the right, chosen from a list.

use super::{Asked, piece};
use leptos::prelude::*;
use study::question::{Form, Piece};

/// The left side, each with the list of the right side.
#[component]
pub fn Pairs(
    /// The question.
    asked: Asked,
) -> impl IntoView {
    let question = asked.question();
    let Form::Match { left, right, .. } = &question.form else {
        return ().into_any();
    };
    let rows: Vec<_> = left
        .iter()
        .enumerate()
        .map(|(at, own)| row(asked, at + 1, own, right))
        .collect();
    view! { <ol class="q-pairs">{rows}</ol> }.into_any()
}

fn row(asked: Asked, number: usize, own: &Piece, right: &[Piece]) -> impl IntoView + use<> {
    let key = StoredValue::new(own.key.clone());
    let chosen = move || {
        let draft = asked.draft.read();
        let pair = draft
            .pairs
            .iter()
            .find(|(left, _)| key.with_value(|key| key == left));
        pair.map(|(_, right)| right.clone()).unwrap_or_default()
    };
    let options: Vec<_> = right
        .iter()
        .map(|piece| {
            let mine = piece.key.clone();
            view! {
                <option value=piece.key.clone() prop:selected=move || chosen() == mine>
                    {piece.text.clone()}
                </option>
            }
        })
        .collect();
    let choose = move |event| {
        let right = event_target_value(&event);
        asked
            .draft
            .update(|draft| key.with_value(|key| draft.pair(key, &right)));
    };
    let label = if own.text.is_empty() {
        format!("Number {number}")
    } else {
        own.text.clone()
    };
    view! {
        <li class="q-pair">
            <span class="q-pair-own">
                <span class="q-pair-number" aria-hidden="true">{number}</span>
                {piece(own)}
            </span>
            <select
                class="q-select"
                aria-label=label
                data-test=format!("pair-{}", own.key)
                on:change=choose
            >
                <option value="" prop:selected=move || chosen().is_empty()>"Choose"</option>
                {options}
            </select>
        </li>
    }
}

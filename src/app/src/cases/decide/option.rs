//! One option as a row to tap: a radio button or a checkbox with its words and,
//! where it is a thing, its drawing.

use crate::{parts::drawing::ItemDrawing, taught::catalogue};
use catalogue::ids::ItemId;
use clinic::case::Choice;
use leptos::prelude::*;

/// How many options can be taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// One.
    Radio,
    /// Any number.
    Checkbox,
}

/// The row of an option.
pub fn option<F: Fn(bool) + 'static>(
    kind: Kind,
    choice: &Choice,
    taken: Memo<Vec<String>>,
    turn: F,
) -> impl IntoView + use<F> {
    let id = choice.id.clone();
    let kind = match kind {
        Kind::Radio => "radio",
        Kind::Checkbox => "checkbox",
    };
    view! {
        <label class="option">
            <input
                type=kind
                name="answer"
                data-test=format!("choice-{}", choice.id)
                prop:checked=move || taken.with(|taken| taken.contains(&id))
                on:change=move |event| turn(event_target_checked(&event))
            />
            <span class="option-words">{words(&choice.label)}</span>
            {drawing(&choice.shows)}
        </label>
    }
}

/// What an option says. A line of a chart is parted into what was looked at
/// and what was found.
pub fn words(label: &str) -> impl IntoView + use<> {
    match label.split_once(": ") {
        Some((what, found)) if !what.contains(['.', ',']) => view! {
            <span class="option-what">{what.to_string()}<span class="unseen">": "</span></span>
            {found.to_string()}
        }
        .into_any(),
        _ => label.to_string().into_any(),
    }
}

/// The drawing of what an option shows.
pub fn drawing(shows: &[ItemId]) -> impl IntoView + use<> {
    let item = shows.first().and_then(|id| catalogue().item(id));
    item.map(|item| view! { <span class="option-drawing"><ItemDrawing item /></span> })
}

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
            <span class="option-words">{words(choice)}</span>
            {drawing(&choice.shows)}
        </label>
    }
}

/// What an option says. A line of a chart is parted into what was looked at
/// and what was found.
pub fn words(choice: &Choice) -> impl IntoView + use<> {
    let finding = catalogue().finding(&choice.id.as_str().into());
    let line = finding.and_then(|finding| {
        let rest = choice.label.strip_prefix(&*finding.name)?;
        Some((finding.name.as_str(), rest.strip_prefix(": ")?.to_string()))
    });
    match line {
        Some((what, found)) => view! {
            <span class="option-what">{what}<span class="unseen">": "</span></span>
            {found}
        }
        .into_any(),
        None => choice.label.clone().into_any(),
    }
}

/// The drawing of what an option shows; of a set, the first few.
pub fn drawing(shows: &[ItemId]) -> impl IntoView + use<> {
    let items = shows.iter().filter_map(|id| catalogue().item(id)).take(3);
    let drawn: Vec<_> = items.map(|item| view! { <ItemDrawing item /> }).collect();
    (!drawn.is_empty()).then(|| view! { <span class="option-drawing">{drawn}</span> })
}

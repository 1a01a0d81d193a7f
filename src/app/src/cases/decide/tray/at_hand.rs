//! What can be laid, in the order of the catalogue: families side by side, so
//! that lookalikes stand together and the order of use is not given away.

use super::laying::Laying;
use crate::{
    cases::play::Asked,
    items,
    parts::{drawing::ItemDrawing, fold::Fold, item_link},
    taught::catalogue,
};
use clinic::case::Choice;
use leptos::prelude::*;

/// The things at hand, with a search over them.
#[component]
pub fn AtHand(
    /// The tray that is laid.
    laying: Laying,
) -> impl IntoView {
    let sought = RwSignal::new(String::new());
    let asked = laying.asked();
    let (sets, single): (Vec<&Choice>, Vec<&Choice>) = in_order(&asked)
        .into_iter()
        .partition(|c| c.shows.len() > 1);
    let tiles = |choices: Vec<&Choice>| {
        let tile = |choice: &Choice| view! { <Tile laying choice=choice.clone() sought /> };
        choices.into_iter().map(tile).collect_view()
    };
    let some = (!sets.is_empty()).then(|| {
        view! {
            <h2 class="stage-label">"Laid as one"</h2>
            <ul class="at-hand">{tiles(sets)}</ul>
        }
    });
    view! {
        <label class="search">
            <span class="unseen">"Find a thing at hand"</span>
            <input
                type="search"
                placeholder="Find a thing at hand"
                autocomplete="off"
                data-test="find"
                on:input=move |event| sought.set(event_target_value(&event))
            />
        </label>
        <ul class="at-hand">{tiles(single)}</ul>
        {some}
    }
}

/// One thing at hand, or a set.
#[component]
fn Tile(laying: Laying, choice: Choice, sought: RwSignal<String>) -> impl IntoView {
    let id = StoredValue::new(choice.id.clone());
    let place = move || laying.place(&id.read_value());
    let set = choice.shows.len() > 1;
    let label = choice.label.clone();
    let drawings = choice.shows.iter().filter_map(|id| catalogue().item(id));
    let drawings = drawings.take(3).map(|item| view! { <ItemDrawing item /> });
    view! {
        <li hidden={
            let choice = choice.clone();
            move || !sought.with(|sought| found(&choice, sought))
        }>
            <button
                type="button"
                class=move || if place().is_some() { "thing thing-laid" } else { "thing" }
                data-test=format!("lay-{}", choice.id)
                on:click=move |_| laying.lay(&id.read_value())
            >
                <span class=if set { "thing-drawing thing-stack" } else { "thing-drawing" }>
                    {drawings.collect_view()}
                </span>
                <span class="thing-name">{label}</span>
                <span class="thing-place">
                    {move || place().map(|place| view! { <span class="unseen">", laid: "</span> {place} })}
                </span>
            </button>
            {set.then(|| inside(&choice))}
        </li>
    }
}

fn inside(choice: &Choice) -> impl IntoView + use<> {
    let names = choice.shows.iter().map(item_link::name);
    let names = names.map(|name| view! { <li>{name}</li> }).collect_view();
    view! { <Fold title="What is in it"><ul class="inside">{names}</ul></Fold> }
}

/// Whether a search finds a choice: in its name, or in what it shows.
fn found(choice: &Choice, sought: &str) -> bool {
    let sought = sought.to_lowercase();
    choice.label.to_lowercase().contains(sought.trim())
        || choice
            .shows
            .iter()
            .filter_map(|id| catalogue().item(id))
            .any(|item| items::matches(item, &sought))
}

/// The choices in the order in which the catalogue has what they show.
fn in_order(asked: &Asked) -> Vec<&Choice> {
    let mut choices: Vec<&Choice> = asked.choices.iter().collect();
    choices.sort_by_cached_key(|choice| {
        let first = choice.shows.first();
        let place = catalogue()
            .items()
            .position(|item| Some(item.id()) == first);
        (place, choice.label.clone())
    });
    choices
}

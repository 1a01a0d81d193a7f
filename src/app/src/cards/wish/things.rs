//! The things that a wish is about, chosen one after another.

use super::draft::{Draft, Kind};
use crate::{
    parts::{announce::announcer, drawing::ItemDrawing, item_link::name, item_picker::ItemPicker},
    taught::catalogue,
};
use catalogue::{Item, ids::ItemId};
use leptos::prelude::*;

/// The slots for things, and a picker for the first that is empty.
#[component]
pub fn Things(
    /// The wish.
    draft: RwSignal<Draft>,
) -> impl IntoView {
    let kind = Memo::new(move |_| draft.with(|draft| draft.kind));
    move || {
        let kind = kind.get()?;
        let slots = kind.things().iter().enumerate();
        let slots = slots.map(|(at, &label)| view! { <Slot draft kind label at /> });
        Some(slots.collect_view())
    }
}

/// One thing: chosen, to be chosen now, or to be chosen later.
#[component]
fn Slot(draft: RwSignal<Draft>, kind: Kind, label: &'static str, at: usize) -> impl IntoView {
    let announcer = announcer();
    let chosen = Memo::new(move |_| draft.with(|draft| draft.things.get(at).cloned()));
    let now = Memo::new(move |_| draft.with(|draft| draft.things.len() == at));
    let again = move |_| draft.update(|draft| draft.things.truncate(at));
    let take = move |id: ItemId| {
        announcer.say(format!("{label}: {}.", name(&id)));
        draft.update(|draft| {
            draft.things.truncate(at);
            draft.things.push(id);
            draft.role = only_role(draft);
        });
    };
    let offered = Callback::new(move |id: ItemId| offered(kind, &id));
    let taken = Signal::derive(move || draft.with(|draft| draft.things.clone()));
    let shown = move || match (chosen.get(), now.get()) {
        (Some(id), _) => {
            let item = catalogue().item(&id);
            view! {
                <div class="slot-thing">
                    <span class="slot-drawing">{item.map(|item| view! { <ItemDrawing item /> })}</span>
                    <span class="slot-name" data-test=format!("slot-{at}")>{name(&id)}</span>
                    <button type="button" class="button button-quiet" data-test=format!("again-{at}") on:click=again>
                        "Another"
                    </button>
                </div>
            }
            .into_any()
        }
        (None, true) => {
            view! { <ItemPicker label="Find it by name" offered taken take /> }.into_any()
        }
        (None, false) => view! { <p class="hint">"Comes next."</p> }.into_any(),
    };
    view! {
        <section class="slot">
            <h2 class="stage-label">{label}</h2>
            {shown}
        </section>
    }
}

/// The role of the chosen material, where it has only one.
fn only_role(draft: &Draft) -> Option<catalogue::items::Role> {
    let material = catalogue().material(draft.things.first()?)?;
    match material.roles[..] {
        [only] => Some(only),
        _ => None,
    }
}

/// Which things a kind of wish can be about.
fn offered(kind: Kind, id: &ItemId) -> bool {
    match kind {
        Kind::Prefer => catalogue()
            .material(id)
            .is_some_and(|it| !it.roles.is_empty()),
        Kind::HandOver => handed_over(id).is_some(),
        _ => catalogue().item(id).map(Item::place) == Some(catalogue::items::Place::Tray),
    }
}

/// How a thing is handed over by the standard, where some step does so.
pub fn handed_over(id: &ItemId) -> Option<&'static str> {
    let steps = catalogue().procedures.iter().flat_map(|it| &it.steps);
    let mut hand_overs = steps.filter_map(|step| step.hand_over.as_ref());
    hand_overs
        .find(|it| it.item == *id)
        .map(|it| it.how.as_str())
}

//! Choosing a thing: by its name, or family by family, from drawings.

use super::{drawing::ItemDrawing, search::Search};
use crate::{items::matches, taught::catalogue};
use catalogue::{Item, ids::ItemId};
use leptos::{ev, prelude::*};

/// The most things that a search shows at once.
const MOST: usize = 30;

/// Which things can be chosen.
pub type Offered = Callback<ItemId, bool>;

/// A search over drawings. Without a search, families are folded.
#[component]
pub fn ItemPicker(
    /// What it asks for.
    label: &'static str,
    /// Which things are offered; all of them if nothing is said.
    #[prop(optional)]
    offered: Option<Offered>,
    /// What is taken already, and marked.
    #[prop(into)]
    taken: Signal<Vec<ItemId>>,
    /// Told the thing that is tapped.
    #[prop(into)]
    take: Callback<ItemId>,
) -> impl IntoView {
    let all: Vec<Item<'static>> = catalogue()
        .items()
        .filter(|item| offered.is_none_or(|offered| offered.run(item.id().clone())))
        .collect();
    let all = StoredValue::new(all);
    let sought = RwSignal::new(String::new());
    let hits = Memo::new(move |_| {
        let sought = sought.get();
        let hit = |item: &&Item<'static>| matches(**item, &sought);
        all.with_value(|all| {
            let ids = all.iter().filter(hit).map(|item| item.id().clone());
            ids.collect::<Vec<_>>()
        })
    });
    let found = Signal::derive(move || hits.with(Vec::len));
    let tiles = move |items: Vec<Item<'static>>| {
        let tile = |item| view! { <Tile item taken take /> };
        view! { <ul class="at-hand">{items.into_iter().map(tile).collect_view()}</ul> }
    };
    let list = move || {
        if sought.with(|sought| sought.trim().is_empty()) {
            let family = move |(name, items)| view! { <Family name items taken take /> };
            return all
                .with_value(|all| families(all))
                .into_iter()
                .map(family)
                .collect_view()
                .into_any();
        }
        let ids = hits.get();
        let more = ids.len().saturating_sub(MOST);
        let items = ids.iter().take(MOST).filter_map(|id| catalogue().item(id));
        let more = (more > 0)
            .then(|| view! { <p class="hint">{more} " more. Type another letter or two."</p> });
        view! { {tiles(items.collect())} {more} }.into_any()
    };
    view! {
        <div class="picker">
            <Search label sought found test="pick-search" />
            {list}
        </div>
    }
}

/// A folded family. Its drawings are made when it is first opened.
#[component]
fn Family(
    name: &'static str,
    items: Vec<Item<'static>>,
    taken: Signal<Vec<ItemId>>,
    take: Callback<ItemId>,
) -> impl IntoView {
    let opened = RwSignal::new(false);
    let count = items.len();
    let items = StoredValue::new(items);
    let tiles = move || {
        opened.get().then(|| {
            let tile = |item| view! { <Tile item taken take /> };
            let tiles = items.get_value().into_iter().map(tile).collect_view();
            view! { <ul class="at-hand">{tiles}</ul> }
        })
    };
    view! {
        <details class="fold picker-family" on:toggle=move |_: ev::Event| opened.set(true)>
            <summary>{name} " " <span class="picker-count">{count}</span></summary>
            {tiles}
        </details>
    }
}

/// One thing to tap.
#[component]
fn Tile(item: Item<'static>, taken: Signal<Vec<ItemId>>, take: Callback<ItemId>) -> impl IntoView {
    let id = item.id();
    let lies = move || taken.with(|taken| taken.contains(id));
    view! {
        <li>
            <button
                type="button"
                class=move || if lies() { "thing thing-laid" } else { "thing" }
                aria-pressed=move || if lies() { "true" } else { "false" }
                data-test=format!("pick-{id}")
                on:click=move |_| take.run(id.clone())
            >
                <span class="thing-drawing"><ItemDrawing item /></span>
                <span class="thing-name">{item.name()}</span>
            </button>
        </li>
    }
}

/// Things by family, in the order of the catalogue.
fn families(items: &[Item<'static>]) -> Vec<(&'static str, Vec<Item<'static>>)> {
    let mut families: Vec<(&str, Vec<Item>)> = Vec::new();
    for item in items {
        match families.iter_mut().find(|(name, _)| *name == item.family()) {
            Some((_, members)) => members.push(*item),
            None => families.push((item.family(), vec![*item])),
        }
    }
    families
}

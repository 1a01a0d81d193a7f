//! All instruments and materials, family by family.

use crate::{
    parts::{
        drawing::ItemDrawing,
        gradually::in_turn,
        page::Page,
        search::{self, Search},
    },
    place::Place,
    taught::catalogue,
};
use catalogue::Item;
use leptos::prelude::*;

/// The list with its search.
#[component]
pub fn ItemsScreen() -> impl IntoView {
    let catalogue = catalogue();
    let sought = RwSignal::new(String::new());
    let families = in_turn(families(), 1, move |(name, members)| {
        view! { <Family name members sought /> }
    });
    let found = Memo::new(move |_| {
        let sought = sought.get();
        catalogue
            .items()
            .filter(|item| matches(*item, &sought))
            .count()
    });
    view! {
        <Page title="Instruments and materials" over="Procedures" up=Place::Procedures.fragment()>
            <Search label="Find by name, family or other name" sought found everything=true test="item-search" />
            {families}
        </Page>
    }
}

/// One family; what does not match the search is hidden.
#[component]
fn Family(
    name: &'static str,
    members: Vec<Item<'static>>,
    sought: RwSignal<String>,
) -> impl IntoView {
    let shown = move |item: Item<'static>| sought.with(|sought| matches(item, sought));
    let all = members.clone();
    let empty = move || !all.iter().any(|item| shown(*item));
    let row = move |item: Item<'static>| {
        view! {
            <li hidden=move || !shown(item)>
                <a
                    class="item-row"
                    href=Place::Item(item.id().clone()).fragment()
                    data-test=format!("item-{}", item.id())
                >
                    <ItemDrawing item />
                    <span>{item.name()}</span>
                </a>
            </li>
        }
    };
    view! {
        <section class="group" hidden=empty>
            <h2 class="stage-label">{name}</h2>
            <ul class="item-rows">{members.into_iter().map(row).collect_view()}</ul>
        </section>
    }
}

/// Families in the order of the catalogue, with their members.
fn families() -> Vec<(&'static str, Vec<Item<'static>>)> {
    let mut families: Vec<(&str, Vec<Item>)> = Vec::new();
    for item in catalogue().items() {
        match families.iter_mut().find(|(name, _)| *name == item.family()) {
            Some((_, members)) => members.push(item),
            None => families.push((item.family(), vec![item])),
        }
    }
    families
}

/// Whether an item is found by what is sought: in its names or its family's.
pub fn matches(item: Item<'_>, sought: &str) -> bool {
    let names = [item.name(), item.family()].into_iter();
    search::matches(names.chain(item.also().iter().map(String::as_str)), sought)
}

//! The drawings of one family, large.

use super::{families, slug};
use crate::{
    browser::address::Address,
    parts::{
        capital::capital,
        choice::{Choice, Choosable},
        drawing::{ItemDrawing, Labels, Scale, WorkingEnd},
        icon::{Icon, icon},
        page::Page,
    },
    place::{Drawn, Place},
    shell::NotHere,
    taught::catalogue,
};
use catalogue::Item;
use leptos::prelude::*;

/// The plates of a family.
#[component]
pub fn PlatesScreen(
    /// The family, as the address names it.
    family: String,
    /// Where the reader is, with whether names are hidden.
    place: Signal<Place>,
) -> impl IntoView {
    let all = families(catalogue());
    let Some(at) = all.iter().position(|each| slug(each.name) == family) else {
        return view! { <NotHere what="family of drawings" /> }.into_any();
    };
    let address: Address = expect_context();
    let hidden = Memo::new(move |_| matches!(place.get(), Place::Plates(_, true)));
    let choose = {
        let family = family.clone();
        move |value: String| address.amend(Place::Plates(family.clone(), value == "hidden"))
    };
    let beside = |at: Option<usize>, words: &'static str| {
        let name = all.get(at?)?.name;
        let to = move || Place::Plates(slug(name), hidden.get()).fragment();
        Some(view! { <a class="button button-quiet" href=to>{words} {name}</a> })
    };
    let (before, after) = (
        beside(at.checked_sub(1), "Before: "),
        beside(Some(at + 1), "Next: "),
    );
    let items = all[at].items.clone();
    let plates = move || {
        let hidden = hidden.get();
        let plates = items
            .iter()
            .map(|item| view! { <Plate item=*item hidden /> });
        plates.collect_view()
    };
    let options = vec![
        Choosable::new("shown", "Shown"),
        Choosable::new("hidden", "Hidden"),
    ];
    let chosen = Signal::derive(move || if hidden.get() { "hidden" } else { "shown" }.to_string());
    view! {
        <Page title=capital(all[at].name) over="Plates" up=Place::AllPlates.fragment()>
            <Choice legend="Names" options chosen choose test="names" />
            <ul class="plates" data-test="plates">{plates}</ul>
            <div class="actions">
                {before}
                {after}
                <a
                    class="button button-quiet"
                    href=Place::LifeSize(Drawn::Family(family)).fragment()
                    data-test="life-size"
                >
                    {icon(Icon::Print)} "At life size, to print"
                </a>
            </div>
        </Page>
    }
    .into_any()
}

/// One drawing with its working end. A hidden name comes out on a tap.
#[component]
fn Plate(item: Item<'static>, hidden: bool) -> impl IntoView {
    let labels = if hidden {
        Labels::Hidden
    } else {
        Labels::Shown
    };
    let known = RwSignal::new(!hidden);
    let name = move || {
        if known.get() {
            let to = Place::Item(item.id().clone()).fragment();
            view! { <a class="plate-name" href=to>{item.name()}</a> }.into_any()
        } else {
            view! {
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="show-name"
                    on:click=move |_| known.set(true)
                >
                    "Show the name"
                </button>
            }
            .into_any()
        }
    };
    view! {
        <li class="plate-one">
            <div class="plate-drawing"><ItemDrawing item scale=Scale::Own labels /></div>
            <WorkingEnd item labels />
            <p class="plate-caption" aria-live="polite">{name}</p>
        </li>
    }
}

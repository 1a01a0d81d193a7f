//! All drawings, small, family by family.

use super::{Family, families, slug};
use crate::{
    parts::{
        capital::capital,
        drawing::ItemDrawing,
        gradually::in_turn,
        icon::{Icon, icon},
        page::Page,
    },
    place::Place,
    taught::catalogue,
};
use leptos::prelude::*;

/// The page of all plates.
#[component]
pub fn AllPlatesScreen() -> impl IntoView {
    let families = families(catalogue());
    view! {
        <Page title="Plates" over="Procedures" up=Place::Procedures.fragment()>
            <p class="hint">"Open a family to see its drawings large, with the working ends, and to hide their names."</p>
            <ul class="plate-families">{in_turn(families, 2, family)}</ul>
        </Page>
    }
}

fn family(family: Family) -> impl IntoView {
    let to = Place::Plates(slug(family.name), false).fragment();
    let count = family.items.len();
    let drawings: Vec<_> = family
        .items
        .into_iter()
        .map(|item| view! { <span class="plate-small"><ItemDrawing item /></span> })
        .collect();
    view! {
        <li>
            <a class="plate-family" href=to data-test=format!("family-{}", slug(family.name))>
                <span class="plate-family-name">
                    <strong>{capital(family.name)}</strong>
                    <span class="picker-count">{count}</span>
                    {icon(Icon::Onwards)}
                </span>
                <span class="plate-strip">{drawings}</span>
            </a>
        </li>
    }
}

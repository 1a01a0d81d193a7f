//! Addresses that lead nowhere: what is wrong, and where one can go.

use crate::{
    parts::{
        icon::{Icon, icon},
        page::Page,
    },
    place::{Place, Section},
};
use leptos::prelude::*;

/// For an address that names no place.
#[component]
pub fn Elsewhere() -> impl IntoView {
    view! {
        <Page title="There is no such page">
            <p data-test="not-here">
                "The address may be mistyped, or from another version. From here you can go to:"
            </p>
            <Ways />
        </Page>
    }
}

/// For an address that names something the catalogue does not have.
#[component]
pub fn NotHere(
    /// What kind of thing it names.
    what: &'static str,
) -> impl IntoView {
    view! {
        <Page title=format!("There is no such {what}")>
            <p data-test="not-here">
                "The address names a " {what} " that this catalogue does not have. From here you can go to:"
            </p>
            <Ways />
        </Page>
    }
}

#[component]
fn Ways() -> impl IntoView {
    let places = Section::ALL.map(|section| (section.label(), section.place()));
    let more = [
        ("Instruments and materials", Place::Items),
        ("About", Place::About),
    ];
    let way = |(label, place): (&'static str, Place)| {
        view! {
            <li>
                <a class="row" href=place.fragment()>
                    <span class="row-name">{label}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    view! { <ul class="rows">{places.into_iter().chain(more).map(way).collect_view()}</ul> }
}

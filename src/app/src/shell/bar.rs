//! The bar with the five places: below on a phone, at the side on a desk.

use crate::{
    parts::icon::{Icon, icon},
    place::{Place, Section},
};
use leptos::prelude::*;

/// The bar.
#[component]
pub fn Bar(
    /// Where the reader is.
    place: Signal<Place>,
) -> impl IntoView {
    let here = Memo::new(move |_| place.with(Place::section));
    let link = move |section: Section| {
        let current = move || (here.get() == Some(section)).then_some("page");
        view! {
            <li>
                <a
                    href=section.place().fragment()
                    aria-current=current
                    data-test=format!("bar-{}", section.label().to_lowercase())
                >
                    {icon(drawn(section))}
                    <span>{section.label()}</span>
                </a>
            </li>
        }
    };
    view! {
        <nav class="bar-nav" aria-label="Places">
            <ul>{Section::ALL.map(link).collect_view()}</ul>
        </nav>
    }
}

fn drawn(section: Section) -> Icon {
    match section {
        Section::Today => Icon::Today,
        Section::Procedures => Icon::Procedures,
        Section::Cases => Icon::Cases,
        Section::Bench => Icon::Bench,
        Section::Record => Icon::Record,
    }
}

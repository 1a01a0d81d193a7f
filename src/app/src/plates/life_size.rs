//! Drawings at life size, to be printed: a millimetre of the thing is one on
//! paper, and a bar of known length shows whether the printer kept to it.

use super::{families, slug};
use crate::{
    browser::printer,
    parts::{
        capital::capital,
        drawing::{self, Labels, life_size_svg},
        icon::{Icon, icon},
        page::Page,
    },
    place::{Drawn, Place},
    shell::NotHere,
    taught::catalogue,
};
use catalogue::Item;
use leptos::prelude::*;

/// The page that is printed.
#[component]
pub fn LifeSizeScreen(
    /// What is drawn.
    drawn: Drawn,
) -> impl IntoView {
    let found = match &drawn {
        Drawn::Item(id) => catalogue().item(id).map(|item| (item.name(), vec![item])),
        Drawn::Family(family) => families(catalogue())
            .into_iter()
            .find(|each| slug(each.name) == *family)
            .map(|each| (each.name, each.items)),
    };
    let Some((name, items)) = found else {
        return view! { <NotHere what="drawing" /> }.into_any();
    };
    let up = match drawn {
        Drawn::Item(id) => Place::Item(id),
        Drawn::Family(family) => Place::Plates(family, false),
    };
    view! {
        <Page title=format!("{}, life size", capital(name)) over=capital(name) up=up.fragment()>
            <div class="print-choices">
                <p class="hint">
                    "Print at 100 %, not fitted to the page, and lay a ruler on the bar. A screen shows the size only roughly."
                </p>
                <button type="button" class="button" data-test="print" on:click=move |_| printer::print()>
                    {icon(Icon::Print)} "Print"
                </button>
            </div>
            <div class="life-size" data-test="life-size-sheet">
                <CheckBar />
                {items.into_iter().map(figure).collect_view()}
            </div>
        </Page>
    }
    .into_any()
}

fn figure(item: Item<'static>) -> impl IntoView {
    drawing::whole(item, Labels::Shown).map(|plate| {
        view! {
            <figure class="life-size-one">
                {life_size_svg(&plate)}
                <figcaption>{item.name()}</figcaption>
            </figure>
        }
    })
}

/// A bar of 50 mm with a mark every 10 mm.
#[component]
fn CheckBar() -> impl IntoView {
    view! {
        <figure class="check-bar">
            <svg
                class="d-plate d-life"
                width="52mm"
                height="6mm"
                viewBox="0 0 52 6"
                role="img"
                aria-label="A bar of 50 millimetres"
                data-test="check-bar"
            >
                <path class="d-line" d="M1 3h50M1 1v4M11 1v4M21 1v4M31 1v4M41 1v4M51 1v4" />
            </svg>
            <figcaption>"This bar is 50 mm long on a true print."</figcaption>
        </figure>
    }
}

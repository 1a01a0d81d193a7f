//! What is easily taken for a thing, in one picture with it.

use crate::{
    parts::{
        drawing::{Labels, close_up, pair_svg, whole},
        item_link::ItemLink,
    },
    taught::catalogue,
};
use catalogue::{Item, items::Lookalike};
use leptos::prelude::*;

/// The lookalikes of an item, each with what tells the two apart.
#[component]
pub fn Lookalikes(
    /// The item.
    item: Item<'static>,
) -> impl IntoView {
    let one = move |alike: &'static Lookalike| {
        let other = catalogue().item(&alike.item)?;
        let pair = |above: Option<_>, below: Option<_>| {
            above
                .zip(below)
                .map(|(above, below)| pair_svg(&above, &below))
        };
        let wholes = pair(whole(item, Labels::Shown), whole(other, Labels::Shown));
        let ends = pair(
            close_up(item, Labels::Shown),
            close_up(other, Labels::Shown),
        );
        Some(view! {
            <li>
                <figure class="pair">
                    <div class="pair-pictures">{wholes} {ends}</div>
                    <figcaption>
                        "Above: " {item.name()} ". Below: " <ItemLink item=other /> "."
                    </figcaption>
                </figure>
                <p>{alike.tell.as_str()}</p>
            </li>
        })
    };
    (!item.lookalikes().is_empty()).then(|| {
        view! {
            <section class="plate" data-test="lookalikes">
                <h2 class="stage-label">"Easily taken for"</h2>
                <ul class="alikes">{item.lookalikes().iter().filter_map(one).collect_view()}</ul>
            </section>
        }
    })
}

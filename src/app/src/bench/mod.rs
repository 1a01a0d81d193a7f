//! The bench: where mixing and arithmetic will be practised.

use crate::{
    parts::{
        icon::{Icon, icon},
        page::Page,
    },
    place::Place,
    taught::catalogue,
};
use leptos::prelude::*;

/// What the bench will hold, and what there is of it already.
#[component]
pub fn BenchScreen() -> impl IntoView {
    let mixed: Vec<_> = catalogue()
        .materials
        .iter()
        .filter(|material| material.mixing.is_some())
        .map(|material| {
            let to = Place::Item(material.id.clone()).fragment();
            view! {
                <li>
                    <a class="row" href=to>
                        <span class="row-name">{material.name.as_str()}</span>
                        <span class="row-note">{material.form.as_str()}</span>
                        {icon(Icon::Onwards)}
                    </a>
                </li>
            }
        })
        .collect();
    view! {
        <Page title="Bench">
            <p class="lead">
                "The bench is not set up yet. Here you will mix by hand against the clock and work the numbers: powder to liquid, working time, cartridges and doses, tooth numbers."
            </p>
            {(!mixed.is_empty())
                .then(|| {
                    view! {
                        <section class="group">
                            <h2 class="stage-label">"To read until then: how these are mixed"</h2>
                            <ul class="rows">{mixed}</ul>
                        </section>
                    }
                })}
        </Page>
    }
}

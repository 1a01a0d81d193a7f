//! Record: what the student has done and can take along.

mod competencies;
mod done;
mod keeping;
mod settings;

use crate::{
    parts::{
        icon::{Icon, icon},
        page::Page,
    },
    place::Place,
};
use leptos::prelude::*;

/// The screen.
#[component]
pub fn RecordScreen() -> impl IntoView {
    view! {
        <Page title="Record">
            <competencies::Competencies />
            <done::Done />
            <keeping::Keeping />
            <settings::Settings />
            <section class="group">
                <h2 class="stage-label">"Trayward"</h2>
                <ul class="rows">
                    <li>
                        <a class="row" href=Place::About.fragment() data-test="about">
                            <span class="row-name">"About, safety and sources"</span>
                            {icon(Icon::Onwards)}
                        </a>
                    </li>
                </ul>
            </section>
        </Page>
    }
}

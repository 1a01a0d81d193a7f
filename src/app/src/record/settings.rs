//! Settings of the page.

use crate::{
    browser::colours::Theme,
    cards::applied,
    log::log,
    parts::{
        choice::{Choice, Choosable},
        icon::{Icon, icon},
    },
    place::Place,
};
use leptos::prelude::*;

/// The section.
#[component]
pub fn Settings() -> impl IntoView {
    let log = log();
    let card = applied().in_use();
    let in_use = move || match card.get() {
        Some(card) => format!("In use: {}", card.name),
        None => "None in use: the standard set-ups hold".into(),
    };
    let theme = log.theme();
    let options = Theme::ALL.map(|each| Choosable::new(each.value(), each.label()));
    view! {
        <section class="settings">
            <h2>"Settings"</h2>
            <Choice
                legend="Colours"
                options=options.into()
                chosen=Signal::derive(move || theme.get().value().to_string())
                choose=move |value: String| log.set_theme(Theme::from_value(Some(&value)))
                test="theme"
            />
            <ul class="rows">
                <li>
                    <a class="row" href=Place::Cards.fragment() data-test="preference-cards">
                        <span class="row-name">"Preference cards and local protocol"</span>
                        <span class="row-note">{in_use}</span>
                        {icon(Icon::Onwards)}
                    </a>
                </li>
            </ul>
        </section>
    }
}

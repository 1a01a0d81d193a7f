//! Settings of the page.

use crate::{
    browser::colours::Theme,
    log::log,
    parts::choice::{Choice, Choosable},
};
use leptos::prelude::*;

/// The section.
#[component]
pub fn Settings() -> impl IntoView {
    let log = log();
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
        </section>
    }
}

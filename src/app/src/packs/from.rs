//! The line that says from which pack a thing comes.

use super::in_use::in_use;
use leptos::prelude::*;

/// Says from which pack a thing comes; nothing where it is built in.
#[component]
pub fn FromPack(
    /// The name of its kind: `procedure`, `lesson`, `instrument`, `material`, `case`, `card`.
    kind: &'static str,
    /// Its id.
    #[prop(into)]
    id: String,
) -> impl IntoView {
    in_use().origin(kind, &id).map(|origin| {
        view! {
            <p class="from-pack" data-test="from-pack">
                "From the pack “" {origin.title} "”, version " {origin.version}
            </p>
        }
    })
}

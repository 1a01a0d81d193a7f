//! What lies on the tray that is read.

use crate::{cases::laid_drawing, parts::item_link::name};
use catalogue::ids::ItemId;
use leptos::prelude::*;

/// The tray. A thing is taken off by tapping it.
#[component]
pub fn Laid(
    /// What lies there, in the order in which it was laid.
    laid: Memo<Vec<ItemId>>,
    /// Told the thing that is tapped.
    take_off: Callback<ItemId>,
) -> impl IntoView {
    let thing = move |id: ItemId| {
        let label = name(&id);
        let hook = format!("laid-{id}");
        let drawn = laid_drawing(std::slice::from_ref(&id));
        view! {
            <li class="laid-thing">
                <button
                    type="button"
                    class="laid-button"
                    data-test=hook
                    on:click=move |_| take_off.run(id.clone())
                >
                    <span class="unseen">"Take off: "</span>
                    {drawn}
                    <span class="laid-name">{label}</span>
                </button>
            </li>
        }
    };
    view! {
        <div class="tray tray-laid">
            <p class="tray-empty" hidden=move || laid.with(|laid| !laid.is_empty())>
                "The tray is empty. Lay anything."
            </p>
            <ul class="laid" aria-label="On the tray">
                <For each=move || laid.get() key=Clone::clone children=thing />
            </ul>
        </div>
    }
}

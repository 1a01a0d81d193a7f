//! What can be done with the thing that is chosen on the tray. The bar keeps
//! its place: without a choice it says how many things lie there.

use super::laying::Laying;
use crate::parts::icon::{Icon, icon};
use leptos::prelude::*;

/// The bar under the tray.
#[component]
pub fn Moves(
    /// The tray that is laid.
    laying: Laying,
) -> impl IntoView {
    let chosen = Memo::new(move |_| laying.chosen());
    let state = move || match (chosen.get(), laying.count()) {
        (Some(id), _) => laying.name(&id),
        (None, 0) => "Nothing laid".into(),
        (None, 1) => "1 laid. Tap it to take it back.".into(),
        (None, count) => format!("{count} laid. Tap one to move it."),
    };
    let off = move || chosen.with(Option::is_none);
    view! {
        <div class="moves">
            <p class="moves-state" data-test="laid-count">{state}</p>
            <div class="moves-buttons" role="group" aria-label="Move what is chosen">
                {button("move-left", "Move left", Icon::Back, off, move || laying.shift(false))}
                {button("take-back", "Take back", Icon::Wrong, off, move || laying.take_back())}
                {button("move-right", "Move right", Icon::Onwards, off, move || laying.shift(true))}
            </div>
        </div>
    }
}

fn button(
    hook: &'static str,
    name: &'static str,
    drawn: Icon,
    off: impl Fn() -> bool + Copy + Send + Sync + 'static,
    act: impl Fn() + 'static,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="button button-quiet"
            aria-label=name
            title=name
            data-test=hook
            disabled=off
            on:click=move |_| act()
        >
            {icon(drawn)}
        </button>
    }
}

//! The tray itself, with what lies on it from left to right.

use super::laying::Laying;
use crate::{
    browser::scroll,
    cases::{
        decide::drag::{Axis, Drag},
        upright,
    },
};
use leptos::{ev::PointerEvent, html, prelude::*};

/// The drawn tray.
#[component]
pub fn Laid(
    /// The tray that is laid.
    laying: Laying,
) -> impl IntoView {
    let drag = Drag::new(Axis::Along);
    let list = NodeRef::<html::Ol>::new();
    Effect::new(move |before: Option<usize>| {
        let now = laying.count();
        if let Some(list) = list.get()
            && before.is_some_and(|before| now > before)
        {
            scroll::into_box((*list).clone().into(), "li:last-child".into());
        }
        now
    });
    let over = move |event: PointerEvent| {
        let order = laying.taken.get_untracked();
        if let Some((id, to)) = drag.over(&event, &order) {
            laying.move_to(&id, to);
        }
    };
    view! {
        <div class="tray tray-laid">
            <p class="tray-empty" hidden=move || laying.count() != 0>
                "The tray is empty. Tap a thing below to lay it."
            </p>
            <ol
                class="laid"
                aria-label="On the tray, in order of use"
                node_ref=list
                on:pointerdown=move |event| drag.down(&event)
                on:pointermove=over
                on:pointerup=move |_| drag.up()
                on:pointercancel=move |_| drag.up()
            >
                <For each=move || laying.taken.get() key=Clone::clone let:id>
                    <Thing laying drag id />
                </For>
            </ol>
        </div>
    }
}

/// One thing on the tray. A mouse drags it at once; a finger scrolls past it
/// until it is chosen.
#[component]
fn Thing(laying: Laying, drag: Drag, id: String) -> impl IntoView {
    let id = StoredValue::new(id);
    let chosen = move || laying.chosen() == Some(id.get_value());
    let class = move || match (chosen(), drag.is_dragged(&id.read_value())) {
        (_, true) => "laid-thing laid-dragged",
        (true, _) => "laid-thing laid-chosen",
        _ => "laid-thing",
    };
    let shows = laying
        .asked()
        .choice(&id.read_value())
        .map_or_else(Vec::new, |choice| choice.shows.clone());
    view! {
        <li class=class data-id=id.get_value()>
            <button
                type="button"
                class="laid-button"
                aria-pressed=move || if chosen() { "true" } else { "false" }
                data-grip=""
                data-test=format!("laid-{}", id.read_value())
                on:click=move |_| laying.choose(&id.read_value())
            >
                <span class="laid-place">
                    {move || laying.place(&id.read_value())}<span class="unseen">": "</span>
                </span>
                {upright::laid(&shows)}
                <span class="laid-name">{laying.name(&id.read_value())}</span>
            </button>
        </li>
    }
}

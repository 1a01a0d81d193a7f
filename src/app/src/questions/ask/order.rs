//! Pieces put in order: by buttons, or by dragging.

use super::{Asked, piece};
use crate::{
    browser::focus,
    cases::{Axis, Drag, moved, ordinal},
    parts::{
        announce::announcer,
        icon::{Icon, icon},
    },
};
use leptos::prelude::*;
use study::question::{Form, Piece};

/// A list with a way up and a way down for each piece, and a grip to drag by.
#[component]
pub fn Order(
    /// The question.
    asked: Asked,
) -> impl IntoView {
    let order = Memo::new(move |_| {
        let question = asked.question();
        asked.draft.with(|draft| draft.order(&question.form))
    });
    let drag = Drag::new(Axis::Down);
    let over = move |event| {
        let now = order.get_untracked();
        if let Some((key, to)) = drag.over(&event, &now) {
            take(asked, moved(&now, &key, to));
        }
    };
    view! {
        <p class="how-to">"First at the top. Use the arrows, or drag by the ridges."</p>
        <ol
            class="order"
            on:pointerdown=move |event| drag.down(&event)
            on:pointermove=over
            on:pointerup=move |_| drag.up()
            on:pointercancel=move |_| drag.up()
        >
            <For each=move || order.get() key=Clone::clone let:key>
                {entry(asked, order, drag, &key)}
            </For>
        </ol>
    }
}

fn take(asked: Asked, keys: Vec<String>) {
    asked.draft.update(|draft| draft.keys = keys);
}

fn entry(asked: Asked, order: Memo<Vec<String>>, drag: Drag, key: &str) -> AnyView {
    let question = asked.question();
    let Form::Order { pieces, .. } = &question.form else {
        return ().into_any();
    };
    let Some(own) = pieces.iter().find(|piece| piece.key == *key) else {
        return ().into_any();
    };
    let dragged = key.to_string();
    let class = move || {
        if drag.is_dragged(&dragged) {
            "order-entry order-dragged"
        } else {
            "order-entry"
        }
    };
    view! {
        <li class=class data-id=key.to_string() data-test=format!("order-{key}")>
            <span class="order-grip" data-grip="">{icon(Icon::Grip)}</span>
            <span class="order-words">{piece(own)}</span>
            <span class="order-moves">
                {step(asked, order, own, Way::Up)}
                {step(asked, order, own, Way::Down)}
            </span>
        </li>
    }
    .into_any()
}

/// Which way a piece goes.
#[derive(Clone, Copy)]
enum Way {
    Up,
    Down,
}

fn step(asked: Asked, order: Memo<Vec<String>>, own: &Piece, way: Way) -> impl IntoView + use<> {
    let (word, drawn) = match way {
        Way::Up => ("up", Icon::Up),
        Way::Down => ("down", Icon::Down),
    };
    let hook = format!("{word}-{}", own.key);
    let announcer = announcer();
    let (key, said, back) = (own.key.clone(), own.text.clone(), hook.clone());
    let go = move |_| {
        let now = order.get_untracked();
        let Some(from) = now.iter().position(|each| *each == key) else {
            return;
        };
        let to = match way {
            Way::Up => from.saturating_sub(1),
            Way::Down => (from + 1).min(now.len() - 1),
        };
        take(asked, moved(&now, &key, to));
        announcer.say(format!("{}: {said}", ordinal(to + 1)));
        // The row moved in the page, and focus was lost with it.
        focus::first(format!("[data-test=\"{back}\"]"));
    };
    view! {
        <button
            type="button"
            class="button button-quiet"
            aria-label=format!("Move {word}: {}", own.text)
            data-test=hook
            on:click=go
        >
            {icon(drawn)}
        </button>
    }
}

//! All options are put in order.

use super::{
    drag::{Axis, Drag},
    place::{moved, ordinal},
};
use crate::{
    browser::focus,
    cases::play::{Asked, Play},
    parts::{
        announce::announcer,
        answer::AnswerButton,
        icon::{Icon, icon},
    },
};
use leptos::prelude::*;

/// A list with a way up and a way down for each entry, and a grip to drag by.
#[component]
pub fn DecideOrder(
    /// The sitting.
    play: Play,
    /// Which decision.
    at: usize,
) -> impl IntoView {
    let asked = StoredValue::new(play.asked(at));
    let taken = play.taken(at);
    let drag = Drag::new(Axis::Down);
    let over = move |event| {
        let order = taken.get_untracked();
        if let Some((id, to)) = drag.over(&event, &order) {
            play.take(at, moved(&order, &id, to));
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
            <For each=move || taken.get() key=Clone::clone let:id>
                {asked.with_value(|asked| entry(play, asked, taken, drag, &id))}
            </For>
        </ol>
        <AnswerButton ready=true give=move || play.give(at) />
    }
}

fn entry(play: Play, asked: &Asked, taken: Memo<Vec<String>>, drag: Drag, id: &str) -> AnyView {
    let label = asked
        .choice(id)
        .map_or_else(String::new, |c| c.label.clone());
    let dragged = id.to_string();
    let class = move || {
        if drag.is_dragged(&dragged) {
            "order-entry order-dragged"
        } else {
            "order-entry"
        }
    };
    let at = asked.at;
    view! {
        <li class=class data-id=id.to_string() data-test=format!("order-{id}")>
            <span class="order-grip" data-grip="">{icon(Icon::Grip)}</span>
            <span class="order-words">{label.clone()}</span>
            <span class="order-moves">
                {step(play, at, taken, id, &label, Way::Up)}
                {step(play, at, taken, id, &label, Way::Down)}
            </span>
        </li>
    }
    .into_any()
}

/// Which way an entry goes.
#[derive(Clone, Copy)]
enum Way {
    Up,
    Down,
}

fn step(
    play: Play,
    at: usize,
    taken: Memo<Vec<String>>,
    id: &str,
    label: &str,
    way: Way,
) -> impl IntoView + use<> {
    let (word, drawn) = match way {
        Way::Up => ("up", Icon::Up),
        Way::Down => ("down", Icon::Down),
    };
    let hook = format!("{word}-{id}");
    let announcer = announcer();
    let (id, said, back) = (id.to_string(), label.to_string(), hook.clone());
    let go = move |_| {
        let order = taken.get_untracked();
        let Some(from) = order.iter().position(|each| *each == id) else {
            return;
        };
        let to = match way {
            Way::Up => from.saturating_sub(1),
            Way::Down => (from + 1).min(order.len() - 1),
        };
        play.take(at, moved(&order, &id, to));
        announcer.say(format!("{}: {said}", ordinal(to + 1)));
        // The row moved in the page, and focus was lost with it.
        focus::first(format!("[data-test=\"{back}\"]"));
    };
    view! {
        <button
            type="button"
            class="button button-quiet"
            aria-label=format!("Move {word}: {label}")
            data-test=hook
            on:click=go
        >
            {icon(drawn)}
        </button>
    }
}

//! The tray on the card: every thing drawn and numbered in order of use.

use crate::{
    parts::{drawing::ItemDrawing, item_link},
    taught::catalogue,
};
use catalogue::items;
use clinic::tray::{Need, Stage, TrayItem};
use leptos::prelude::*;

/// The drawn tray, stage by stage.
#[component]
pub fn Laid(
    /// The stages in order of use.
    stages: Vec<Stage>,
) -> impl IntoView {
    let mut number = 0;
    let stages: Vec<_> = stages
        .into_iter()
        .map(|stage| {
            let (laid, elsewhere): (Vec<TrayItem>, Vec<TrayItem>) = stage
                .items
                .into_iter()
                .partition(|each| each.place == items::Place::Tray);
            let things: Vec<_> = laid
                .into_iter()
                .map(|each| {
                    number += 1;
                    thing(number, &each)
                })
                .collect();
            let waiting: Vec<String> = elsewhere.iter().map(waits).collect();
            let waiting = (!waiting.is_empty())
                .then(|| view! { <p class="tc-waits">"Besides: " {waiting.join(", ")}</p> });
            view! {
                <section class="tc-stage">
                    <h3>{stage.title}</h3>
                    <ul class="tc-things">{things}</ul>
                    {waiting}
                </section>
            }
        })
        .collect();
    view! { <div class="tc-tray">{stages}</div> }
}

fn thing(number: usize, each: &TrayItem) -> impl IntoView + use<> {
    let item = catalogue().item(&each.item);
    let called = each.need == Need::IfCalled;
    view! {
        <li class=if called { "tc-thing tc-called" } else { "tc-thing" }>
            <span class="tc-drawing">{item.map(|item| view! { <ItemDrawing item /> })}</span>
            <span class="tc-name">
                <b>{number} " "</b>
                {item_link::name(&each.item)}
                {called.then_some(" (if called for)")}
            </span>
        </li>
    }
}

/// What is not laid: by name, with where it is.
fn waits(each: &TrayItem) -> String {
    let at = match each.place {
        items::Place::Worn => "worn",
        items::Place::Tray | items::Place::Unit => "at the unit",
    };
    let called = if each.need == Need::IfCalled {
        ", if called for"
    } else {
        ""
    };
    format!("{} ({at}{called})", item_link::name(&each.item))
}

//! The time line in words: every step and every mix with its moment.

use super::{
    Line,
    minutes::{at, lasting},
};
use crate::parts::{item_link::name, steps::actor};
use clinic::timing::{Slot, Window};
use leptos::prelude::*;

/// The table.
#[component]
pub fn Table(
    /// The time line.
    line: Line,
) -> impl IntoView {
    let mut mixes = line.time.windows.clone();
    mixes.sort_by_key(first);
    mixes.reverse();
    let mut rows = Vec::new();
    let mut stage = String::new();
    for (number, slot) in line.time.flow.iter().enumerate() {
        // A mix stands after the step during which it is started.
        while mixes
            .last()
            .is_some_and(|it| first(it) < i64::from(slot.from))
        {
            rows.extend(mixes.pop().map(|it| mix(&it).into_any()));
        }
        if slot.stage != stage {
            stage.clone_from(&slot.stage);
            rows.push(heading(&stage).into_any());
        }
        rows.push(step(slot, number + 1, line.critical(slot.place)).into_any());
    }
    rows.extend(mixes.iter().rev().map(|it| mix(it).into_any()));
    view! {
        <section class="group">
            <h2 class="stage-label">"Minute by minute"</h2>
            <table class="time-table" data-test="time-table">
                <thead>
                    <tr>
                        <th scope="col">"From"</th>
                        <th scope="col">"What is done"</th>
                        <th scope="col">"Takes"</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </section>
    }
}

/// The first moment at which a mix can be started.
fn first(window: &Window) -> i64 {
    window.earliest.min(window.latest)
}

fn heading(stage: &str) -> impl IntoView + use<> {
    view! {
        <tr class="time-stage">
            <th scope="colgroup" colspan="3">{stage.to_owned()}</th>
        </tr>
    }
}

fn step(slot: &Slot, number: usize, critical: bool) -> impl IntoView + use<> {
    let mark = critical.then(|| view! { <span class="mark mark-critical">"critical"</span> });
    view! {
        <tr data-test=format!("slot-{number}")>
            <td>{at(slot.from.into())}</td>
            <td>
                <span class="time-who">{number} ". " {actor(slot.who)} " " {mark}</span>
                {slot.does.clone()}
            </td>
            <td>{lasting(slot.to - slot.from)}</td>
        </tr>
    }
}

fn mix(window: &Window) -> impl IntoView + use<> {
    let until = (first(window) < window.latest)
        .then(|| format!(", at the latest at {}", at(window.latest)));
    view! {
        <tr class="time-mix">
            <td>{at(first(window))}</td>
            <td>
                <span class="time-who">"Assistant, beside the flow"</span>
                "Start to mix: " {name(&window.material)} {until}
                ". Ready at " {at(window.ready.into())} "."
            </td>
            <td>{lasting(window.mix.middle())}</td>
        </tr>
    }
}

//! The time line in words: every step and every mix with its moment.

use super::{
    Line,
    minutes::{at, lasting},
};
use crate::parts::{gradually::in_turn, item_link::name, steps::actor};
use clinic::timing::{Slot, Window};
use leptos::prelude::*;

/// The table.
#[component]
pub fn Table(
    /// The time line.
    line: Line,
) -> impl IntoView {
    let rows = rows(&line);
    let stretches: Vec<_> = rows.chunks(A_STRETCH).map(<[Row]>::to_vec).collect();
    let draw = |rows: Vec<Row>| rows.iter().map(Row::draw).collect::<Vec<_>>();
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
                <tbody>{in_turn(stretches, 1, draw)}</tbody>
            </table>
        </section>
    }
}

/// How many rows are drawn together.
const A_STRETCH: usize = 12;

/// A row of the table.
#[derive(Clone)]
enum Row {
    /// The title of a stage.
    Stage(String),
    /// A step with its number, and whether failing it fails the skill.
    Step(Slot, usize, bool),
    /// A mix that is started.
    Mix(Window),
}

/// The rows in their order: a mix stands after the step during which it is started.
fn rows(line: &Line) -> Vec<Row> {
    let mut mixes = line.time.windows.clone();
    mixes.sort_by_key(first);
    mixes.reverse();
    let mut rows = Vec::new();
    let mut stage = "";
    for (number, slot) in line.time.flow.iter().enumerate() {
        while mixes
            .last()
            .is_some_and(|it| first(it) < i64::from(slot.from))
        {
            rows.extend(mixes.pop().map(Row::Mix));
        }
        if slot.stage != stage {
            stage = &slot.stage;
            rows.push(Row::Stage(stage.to_owned()));
        }
        rows.push(Row::Step(
            slot.clone(),
            number + 1,
            line.critical(slot.place),
        ));
    }
    rows.extend(mixes.into_iter().rev().map(Row::Mix));
    rows
}

impl Row {
    fn draw(&self) -> AnyView {
        match self {
            Self::Stage(title) => heading(title).into_any(),
            Self::Step(slot, number, critical) => step(slot, *number, *critical).into_any(),
            Self::Mix(window) => mix(window).into_any(),
        }
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

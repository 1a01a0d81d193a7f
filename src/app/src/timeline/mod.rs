//! The time line of a procedure: what the dentist and the assistant do, minute
//! by minute, and when a mix has to be started.
//!
//! - `overview`: both lanes of the whole visit, drawn
//! - `close_up`: the minutes round one mix
//! - `table`: the same in words
//! - `minutes`: seconds as they are said and drawn

mod close_up;
mod lanes;
mod minutes;
mod overview;
mod table;

use crate::{
    cards::WithCard,
    parts::gradually::{InTurn, take_turns},
    place::{Supposed, View},
    procedures::{Chips, supposed_patient},
    taught::clinic,
};
use catalogue::procedures::Procedure;
use clinic::{timing::Timeline, tray::PlacedStep};
use close_up::CloseUp;
use leptos::prelude::*;
use overview::Overview;
use table::Table;

/// A time line with the steps that it is made of.
#[derive(Clone)]
pub struct Line {
    /// The flow and the mixes beside it.
    pub time: Timeline,
    /// The steps; slots and mixes have their places in it.
    pub steps: Vec<PlacedStep>,
}

impl Line {
    /// Whether failing the step at a place fails the skill.
    pub fn critical(&self, place: usize) -> bool {
        self.steps.get(place).is_some_and(|it| it.step.critical)
    }

    /// How long the visit takes, in seconds.
    pub fn length(&self) -> u32 {
        self.time.flow.last().map_or(0, |slot| slot.to)
    }
}

/// The time side of a procedure.
#[component]
pub fn TimeLine(
    /// The procedure.
    procedure: &'static Procedure,
    /// The patient the reader supposes.
    supposed: Signal<Supposed>,
) -> impl IntoView {
    let clinic = clinic();
    let line = move || {
        let patient = supposed.with(|supposed| supposed_patient(&clinic, supposed));
        Line {
            time: clinic.timeline(&procedure.id, &patient),
            steps: clinic.steps(&procedure.id, &patient),
        }
    };
    let drawn = move || {
        let line = line();
        let mixes = line.time.windows.len();
        let mixed = (0..mixes).map(|at| view! { <CloseUp line=line.clone() at /> });
        // The first thing that is shown is drawn at once.
        take_turns(usize::from(mixes == 0));
        let whole = line.clone();
        let none = (mixes == 0).then(|| {
            view! { <p class="hint" data-test="no-mix">"Nothing is mixed by hand in this visit."</p> }
        });
        view! {
            {mixed.collect_view()}
            {none}
            <InTurn><Overview line=whole.clone() name=procedure.short.as_str() /></InTurn>
            <InTurn><Table line=line.clone() /></InTurn>
        }
    };
    view! {
        <div class="with-patient">
            <Chips procedure view=View::Time supposed />
            <div class="time" data-test="time-line">
                <WithCard />
                <p class="hint">
                    "Durations are custom of the trade, taken at their middle: an illustration of the order and of what runs beside what, no measure of anybody's speed. Moments are minutes and seconds from the start of the visit."
                </p>
                {drawn}
            </div>
        </div>
    }
}

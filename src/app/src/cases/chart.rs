//! The chart, to be looked at during the whole case.

use super::{play::Play, tooth::ToothPlace};
use crate::taught::clinic;
use catalogue::findings::Known;
use clinic::case::{Fact, Measures, Part};
use leptos::prelude::*;

/// The chart. What the dentist finds in the open tooth is added once it was told.
#[component]
pub fn Chart(
    /// The sitting.
    play: Play,
    /// The decision that is on screen.
    at: usize,
) -> impl IntoView {
    let case = play.case();
    let clinic = clinic();
    let told = case.plan.is_some() && case.decisions[at].part() >= Part::Plan;
    let opened = told.then(|| clinic.facts(&case.opened, Known::Opening));
    view! {
        {case.tooth.map(|fdi| view! { <ToothPlace fdi /> })}
        <p>{case.reason.clone()} " " <q>{case.words.clone()}</q></p>
        {lines(clinic.facts(&case.chart, Known::Chart))}
        {case.measures.map(measured)}
        {opened
            .map(|facts| {
                view! {
                    <h2 class="stage-label">"Found in the open tooth"</h2>
                    {lines(facts)}
                }
            })}
    }
}

/// What the visit reckons with: the weight, and how the heart is.
fn measured(measures: Measures) -> impl IntoView {
    view! {
        <dl class="chart" data-test="measures">
            <div><dt>"Weight"</dt><dd>{measures.weight} " kg"</dd></div>
            <div><dt>"Heart"</dt><dd>{measures.heart_says()}</dd></div>
        </dl>
    }
}

fn lines(facts: Vec<Fact>) -> impl IntoView {
    let line = |fact: Fact| {
        view! { <div><dt>{fact.name}</dt><dd>{fact.says}</dd></div> }
    };
    view! { <dl class="chart">{facts.into_iter().map(line).collect_view()}</dl> }
}

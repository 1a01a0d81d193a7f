//! Where an item is used, at which step, and for whom it takes another's place.

use super::uses::{UseOf, comes_for, including, uses_of};
use crate::{
    parts::{condition, fold::Fold, item_link},
    place::{Place, View},
    taught::catalogue,
};
use catalogue::{
    Item,
    procedures::{Procedure, ProcedureKind, Variation},
};
use leptos::prelude::*;

/// The procedures that use an item.
#[component]
pub fn Uses(
    /// The item.
    item: Item<'static>,
) -> impl IntoView {
    let catalogue = catalogue();
    let uses: Vec<_> = uses_of(catalogue, item.id())
        .into_iter()
        .map(|(procedure, uses)| {
            let uses: Vec<_> = uses.into_iter().map(|each| one(procedure, &each)).collect();
            view! {
                <dt>{link(procedure, View::SetUp)}</dt>
                <dd><ul class="uses-steps">{uses}</ul> {wherever(procedure)}</dd>
            }
        })
        .collect();
    let stands_in = comes_for(catalogue, item.id());
    let stands_in: Vec<_> = stands_in.into_iter().map(instead).collect();
    (!(uses.is_empty() && stands_in.is_empty())).then(|| {
        view! {
            <section class="plate" data-test="where-used">
                <h2 class="stage-label">"Where it is used"</h2>
                <dl class="uses-list">{uses} {stands_in}</dl>
            </section>
        }
    })
}

/// One use: the phase, which leads to the steps, and the reason.
fn one(procedure: &'static Procedure, each: &UseOf<'static>) -> impl IntoView + use<> {
    let to = Place::Procedure(procedure.id.clone(), View::Steps, Vec::new()).fragment();
    let called = each.if_called.then_some(" If called for.");
    view! {
        <li><a href=to>{each.phase}</a> ": " {each.reason} "." {called}</li>
    }
}

/// The treatments that a set-up is part of, folded.
fn wherever(procedure: &'static Procedure) -> impl IntoView {
    let treatments = match procedure.kind {
        ProcedureKind::SetUp => including(catalogue(), &procedure.id),
        ProcedureKind::Treatment => Vec::new(),
    };
    (!treatments.is_empty()).then(|| {
        let title = match treatments.len() {
            1 => "Part of 1 treatment".to_string(),
            many => format!("Part of {many} treatments"),
        };
        let row = |it| view! { <li>{link(it, View::SetUp)}</li> };
        view! {
            <Fold title>
                <ul class="see">{treatments.into_iter().map(row).collect_view()}</ul>
            </Fold>
        }
    })
}

fn instead((procedure, variation): (&'static Procedure, &'static Variation)) -> impl IntoView {
    view! {
        <dt>{link(procedure, View::SetUp)}</dt>
        <dd>
            "Instead of " {item_link::name(&variation.instead_of)} " for: "
            {condition::words(catalogue(), &variation.when)} ". " {variation.because.as_str()}
        </dd>
    }
}

fn link(procedure: &'static Procedure, view: View) -> impl IntoView {
    let place = Place::Procedure(procedure.id.clone(), view, Vec::new());
    view! { <a href=place.fragment()>{procedure.name.as_str()}</a> }
}

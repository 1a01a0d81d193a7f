//! What each thing on a tray says for its best reading, what is missing, and
//! what does not belong.

use super::words::{Says, because, suggestion};
use crate::{
    parts::{drawing::ItemDrawing, fold::Fold, item_link::name},
    taught::catalogue,
};
use catalogue::{
    ids::{ItemId, ProcedureId},
    procedures::ProcedureKind,
};
use clinic::reading::{Evidence, Reading};
use leptos::prelude::*;

/// How many things are shown before the rest is folded.
const FIRST: usize = 6;

/// The evidence for the best reading.
pub fn evidence(best: &Reading, mut evidence: Vec<Evidence>) -> impl IntoView + use<> {
    // What speaks against it first, then what says most.
    let stray = |e: &Evidence| best.strange.contains(&e.item);
    evidence.sort_by(|a, b| {
        let apart = stray(b).cmp(&stray(a));
        apart.then_with(|| b.weight.total_cmp(&a.weight))
    });
    let rest = evidence.split_off(evidence.len().min(FIRST));
    let row = |each: &Evidence| row(each, &best.procedure);
    let first = evidence.iter().map(row).collect_view();
    let more = (!rest.is_empty()).then(|| {
        let title = format!("What the other {} say", rest.len());
        let rows = rest.iter().map(row).collect_view();
        view! { <Fold title test="evidence-rest"><ul class="evidence">{rows}</ul></Fold> }
    });
    view! {
        <section class="group">
            <h3 class="stage-label">"What each thing says"</h3>
            <ul class="evidence" data-test="evidence">{first}</ul>
            {more}
        </section>
    }
}

/// What is missing for a reading.
pub fn missing(items: &[ItemId]) -> impl IntoView + use<> {
    let row = |id: &ItemId| {
        let item = catalogue().item(id);
        view! {
            <li>
                <span class="wish-drawing">{item.map(|item| view! { <ItemDrawing item /> })}</span>
                {name(id)}
            </li>
        }
    };
    let (first, rest) = items.split_at(items.len().min(FIRST));
    let more = (!rest.is_empty()).then(|| {
        let title = format!("{} more", rest.len());
        let rows = rest.iter().map(row).collect_view();
        view! { <Fold title><ul class="missing">{rows}</ul></Fold> }
    });
    let rows = first.iter().map(row).collect_view();
    let body = if items.is_empty() {
        view! { <p>"Nothing: all that it uses for certain is there."</p> }.into_any()
    } else {
        view! { <ul class="missing">{rows}</ul> {more} }.into_any()
    };
    view! {
        <section class="group" data-test="missing">
            <h3 class="stage-label">"What it uses and is not there"</h3>
            {body}
        </section>
    }
}

fn row(each: &Evidence, best: &ProcedureId) -> impl IntoView + use<> {
    let item = catalogue().item(&each.item);
    let says = Says::of(each);
    let short = |id: &ProcedureId| catalogue().procedure(id).map_or("", |it| it.short.as_str());
    let others: Vec<&str> = each
        .used_by
        .iter()
        .filter(|id| *id != best)
        .map(short)
        .collect();
    let own = each.used_by.contains(best);
    let why = because(own, short(best), &others, treatments());
    let suggests = each.suggests.as_deref().map(suggestion);
    let class = match says {
        Says::Against => "evidence-row evidence-against",
        Says::Little => "evidence-row evidence-little",
        _ => "evidence-row",
    };
    view! {
        <li class=class data-test=format!("evidence-{}", each.item)>
            <span class="wish-drawing">{item.map(|item| view! { <ItemDrawing item /> })}</span>
            <span class="evidence-name">{name(&each.item)} " " <span class="evidence-word">{says.word()}</span></span>
            <span class="evidence-why">{why} {suggests.map(|it| format!(" {it}"))}</span>
        </li>
    }
}

fn treatments() -> usize {
    let all = catalogue().procedures.iter();
    all.filter(|it| it.kind == ProcedureKind::Treatment).count()
}

//! One thing that was found: what it is, and where it leads. What has no
//! screen of its own unfolds where it stands.

use crate::{
    parts::{
        condition,
        icon::{Icon, icon},
        sources::{SourceLine, SourceNotes},
        steps::actor,
    },
    place::{Place, View},
    procedures::{first_sentence, lesson_place},
    taught::catalogue,
};
use catalogue::{
    Catalogue, ids::SourceId, rules::Rule, search::Found, sources::Source, stops::Stop,
};
use leptos::prelude::*;

/// A line of the results.
#[component]
pub fn Result(
    /// What was found.
    found: Found<'static>,
) -> impl IntoView {
    let line = match found {
        Found::Rule(rule) => unfolding(found, reason(rule)),
        Found::Moment(stop) => unfolding(found, moment(stop)),
        Found::Source(source) => unfolding(found, named_by(source)),
        Found::Procedure(procedure) => leading(
            found,
            Place::Procedure(procedure.id.clone(), View::Lesson, Vec::new()),
        ),
        Found::Step(procedure, _) => leading(
            found,
            Place::Procedure(procedure.id.clone(), View::Steps, Vec::new()),
        ),
        Found::Item(item) => leading(found, Place::Item(item.id().clone())),
        Found::Term(term) => leading(found, Place::Term(term.id.clone())),
        Found::Lesson(lesson) | Found::Section(lesson, _) => {
            leading(found, lesson_place(catalogue(), &lesson.id))
        }
    };
    view! { <li>{line}</li> }
}

/// What stands under the name.
fn note(found: Found<'static>) -> String {
    let kind = found.kind().label();
    let about = first_sentence(found.about());
    match found {
        Found::Step(_, step) => format!("{kind}, {} · {about}", actor(step.who).to_lowercase()),
        Found::Source(source) if source.year > 0 => format!("{kind}, {} · {about}", source.year),
        _ if about.is_empty() => kind.into(),
        _ => format!("{kind} · {about}"),
    }
}

fn leading(found: Found<'static>, place: Place) -> AnyView {
    view! {
        <a class="row" href=place.fragment()>
            <span class="row-name">{found.title()}</span>
            <span class="row-note">{note(found)}</span>
            {icon(Icon::Onwards)}
        </a>
    }
    .into_any()
}

fn unfolding(found: Found<'static>, body: impl Fn() -> AnyView + Send + 'static) -> AnyView {
    let opened = RwSignal::new(false);
    view! {
        <details class="found-fold" on:toggle=move |_| opened.set(true)>
            <summary class="row">
                <span class="row-name">{found.title()}</span>
                <span class="row-note">{note(found)}</span>
                {icon(Icon::Down)}
            </summary>
            <div class="found-body">{move || opened.get().then(&body)}</div>
        </details>
    }
    .into_any()
}

/// For whom a rule holds.
fn reason(rule: &'static Rule) -> impl Fn() -> AnyView {
    move || {
        view! {
            <p>"Holds for: " {condition::words(catalogue(), &rule.when)} "."</p>
            <SourceNotes ids=rule.sources.clone() />
        }
        .into_any()
    }
}

/// What the assistant says, and why.
fn moment(stop: &'static Stop) -> impl Fn() -> AnyView {
    move || {
        view! {
            <p>{stop.sees.replace("{tooth}", "in hand")}</p>
            <p><strong>{stop.speak.replace("{tooth}", "in hand")}</strong></p>
            <p>{stop.because.as_str()}</p>
            <SourceNotes ids=stop.sources.clone() />
        }
        .into_any()
    }
}

/// A source, and what names it.
fn named_by(source: &'static Source) -> impl Fn() -> AnyView {
    move || {
        let links = naming(catalogue(), &source.id)
            .into_iter()
            .map(|(name, place)| {
                view! { <li><a href=place.fragment()>{name}</a></li> }
            });
        let links = links.collect::<Vec<_>>();
        let list = (!links.is_empty()).then(|| {
            view! { <p>"Named by:"</p> <ul class="named-by">{links}</ul> }
        });
        view! { <p><SourceLine source /></p> {list} }.into_any()
    }
}

/// The procedures, things and words that name a source.
fn naming(catalogue: &'static Catalogue, source: &SourceId) -> Vec<(&'static str, Place)> {
    let names = |sources: &[SourceId]| sources.contains(source);
    let procedures = catalogue
        .procedures
        .iter()
        .filter(|it| names(&it.sources))
        .map(|it| {
            let place = Place::Procedure(it.id.clone(), View::Lesson, Vec::new());
            (it.name.as_str(), place)
        });
    let items = catalogue.items().filter(|it| names(it.sources()));
    let items = items.map(|it| (it.name(), Place::Item(it.id().clone())));
    let terms = catalogue.glossary.iter().filter(|it| names(&it.sources));
    let terms = terms.map(|it| (it.term.as_str(), Place::Term(it.id.clone())));
    procedures.chain(items).chain(terms).collect()
}

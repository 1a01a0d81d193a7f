//! Fields in words, and what can be chosen for them.

use super::super::super::checks::Checks;
use crate::taught::catalogue;
use catalogue::{Catalogue, Item};
use leptos::prelude::*;

/// The words of a field: what its name in the text stands for.
pub fn label(name: &str) -> String {
    let known = match name {
        "does" => "What is done",
        "says" => "What is said aloud",
        "who" => "Who acts",
        "when" => "When: a condition on the findings",
        "uses" => "What it needs, and why",
        "at-hand" => "At hand in case, and why",
        "slips" => "What can slip",
        "slip" => "What goes wrong",
        "mend" => "How it is mended",
        "because" => "Why",
        "short" => "Short name",
        "step" => "Steps",
        "variation" => "Variations",
        "must-before" => "What must come before what",
        "include" => "Set-up that stands here",
        "seconds" => "Seconds, least and most",
        "age" => "Age in years, least and most",
        "reasons" => "Why the patient comes, in several wordings",
        "words" => "What the patient says, in several wordings",
        "then" => "What follows",
        "local-law" => "Only where local law allows",
        "critical" => "Failing it fails the skill",
        "instead-of" => "Instead of",
        "booked" => "Booked for",
        other => return humane(other),
    };
    known.to_owned()
}

/// A name of a field as words: `not-for` is `Not for`.
fn humane(name: &str) -> String {
    let mut words = name.replace('-', " ");
    if let Some(first) = words.get_mut(0..1) {
        first.make_ascii_uppercase();
    }
    words
}

/// The words that a field is one of; none where it is free.
pub fn one_of(name: &str) -> Option<&'static [&'static str]> {
    Some(match name {
        "who" => &["dentist", "assistant", "team"],
        "kind" => &["treatment", "set-up"],
        "level" => &["basic", "core", "demanding"],
        "strength" => &["must", "may", "not", "must-not"],
        _ => return None,
    })
}

/// The list of ids that a field chooses from; none where it names nothing.
pub fn choices(name: &str) -> Option<&'static str> {
    Some(match name {
        "item" | "take" | "instead-of" | "first" | "beside" | "with" | "mixes" | "places"
        | "uses" | "at-hand" => "pk-items",
        "include" | "booked" | "procedure" | "instead" | "procedures" => "pk-procedures",
        "competency" => "pk-competencies",
        "sources" => "pk-sources",
        "plan" => "pk-plans",
        "finding" | "findings" => "pk-findings",
        _ => return None,
    })
}

/// Tables whose names of fields are ids of this list.
pub fn keyed(name: &str) -> bool {
    matches!(name, "uses" | "at-hand" | "findings")
}

/// What an id stands for: the name of an item or the question of a finding.
pub fn named(id: &str) -> String {
    let catalogue = catalogue();
    let item = catalogue.item(&id.into()).map(Item::name);
    item.map_or_else(|| humane(id), |name| format!("{name} ({id})"))
}

/// The lists that fields choose from, once for the whole form: what is built in,
/// and what the pack had when it last passed the checks.
#[component]
pub fn Lists(checks: Checks) -> impl IntoView {
    move || match checks.known() {
        Some(over) => lists(&over.catalogue),
        None => lists(catalogue()),
    }
}

fn lists(catalogue: &Catalogue) -> AnyView {
    let items = catalogue.items().map(|it| (it.id().as_str(), it.name()));
    let items = options("pk-items", items);
    let procedures = catalogue.procedures.iter();
    let procedures = procedures.map(|it| (it.id.as_str(), it.short.as_str()));
    let procedures = options("pk-procedures", procedures);
    let competencies = catalogue.competencies.iter();
    let competencies = competencies.map(|it| (it.id.as_str(), it.name.as_str()));
    let competencies = options("pk-competencies", competencies);
    let sources = catalogue.sources.iter();
    let sources = sources.map(|it| (it.id.as_str(), it.title.as_str()));
    let sources = options("pk-sources", sources);
    let plans = catalogue.plans.iter();
    let plans = options(
        "pk-plans",
        plans.map(|it| (it.id.as_str(), it.name.as_str())),
    );
    let findings = catalogue.findings.iter();
    let findings = findings.map(|it| (it.id.as_str(), it.name.as_str()));
    let findings = options("pk-findings", findings);
    view! { {items} {procedures} {competencies} {sources} {plans} {findings} }.into_any()
}

/// One list, of ids with what they stand for.
fn options<'c>(list: &'static str, ids: impl Iterator<Item = (&'c str, &'c str)>) -> AnyView {
    let option = |(id, name): (&str, &str)| {
        view! { <option value=id.to_owned()>{name.to_owned()}</option> }
    };
    let options: Vec<_> = ids.map(option).collect();
    view! { <datalist id=list>{options}</datalist> }.into_any()
}

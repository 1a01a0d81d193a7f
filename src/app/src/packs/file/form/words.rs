//! Fields in words, and what can be chosen for them.

use crate::taught::catalogue;
use catalogue::Item;
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

/// The lists that fields choose from, once for the whole form.
#[component]
pub fn Lists() -> impl IntoView {
    let catalogue = catalogue();
    let items = catalogue
        .items()
        .map(|item| (item.id().as_str(), item.name()))
        .collect();
    let procedures = catalogue.procedures.iter();
    let procedures = procedures
        .map(|it| (it.id.as_str(), it.short.as_str()))
        .collect();
    let competencies = catalogue.competencies.iter();
    let competencies = competencies
        .map(|it| (it.id.as_str(), it.name.as_str()))
        .collect();
    let sources = catalogue.sources.iter();
    let sources = sources
        .map(|it| (it.id.as_str(), it.title.as_str()))
        .collect();
    let plans = catalogue.plans.iter();
    let plans = plans.map(|it| (it.id.as_str(), it.name.as_str())).collect();
    let findings = catalogue.findings.iter();
    let findings = findings
        .map(|it| (it.id.as_str(), it.name.as_str()))
        .collect();
    let lists: [(&str, Vec<(&str, &str)>); 6] = [
        ("pk-items", items),
        ("pk-procedures", procedures),
        ("pk-competencies", competencies),
        ("pk-sources", sources),
        ("pk-plans", plans),
        ("pk-findings", findings),
    ];
    let list = |(id, options): (&'static str, Vec<(&'static str, &'static str)>)| {
        let options = options.into_iter();
        let options = options.map(|(id, name)| view! { <option value=id>{name}</option> });
        view! { <datalist id=id>{options.collect_view()}</datalist> }
    };
    lists.map(list).collect_view()
}

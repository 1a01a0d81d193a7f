//! The families of questions, grouped by what they show, to be searched.

use super::picked::Picked;
use crate::{
    parts::search::{Search, matches},
    questions::{Questions, Ready},
    taught::catalogue,
};
use leptos::prelude::*;
use std::collections::HashMap;
use study::families;

/// A family in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Listed {
    id: &'static str,
    name: &'static str,
    /// The id of the competency that most of its questions show.
    competency: String,
    count: usize,
}

/// The families.
#[component]
pub fn Families(
    /// What was chosen.
    picked: Picked,
) -> impl IntoView {
    view! { <Ready show=move |questions| view! { <List picked questions /> } /> }
}

#[component]
fn List(picked: Picked, questions: Questions) -> impl IntoView {
    let all = StoredValue::new(listed(questions));
    let sought = RwSignal::new(String::new());
    let found = Memo::new(move |_| {
        let sought = sought.get();
        let fits = |it: &&Listed| {
            let texts = [it.name, competency(&it.competency)];
            matches(texts.into_iter(), &sought)
        };
        all.with_value(|all| all.iter().filter(fits).cloned().collect::<Vec<_>>())
    });
    let count = Signal::derive(move || found.with(Vec::len));
    let groups = move || {
        let found = found.get();
        let group = |it: &'static catalogue::competencies::Competency| {
            let own = found.iter().filter(|own| own.competency == it.id.as_str());
            let rows: Vec<_> = own.map(|own| row(own, picked)).collect();
            (!rows.is_empty()).then(|| {
                view! {
                    <fieldset class="options dk-families">
                        <legend class="stage-label">{it.name.as_str()}</legend>
                        {rows}
                    </fieldset>
                }
            })
        };
        catalogue()
            .competencies
            .iter()
            .filter_map(group)
            .collect_view()
    };
    view! {
        <Search label="What is asked" sought found=count test="assign-family" />
        <div class="dk-family-list" tabindex="0" role="region" aria-label="What is asked">
            {groups}
        </div>
    }
}

fn row(family: &Listed, picked: Picked) -> impl IntoView + use<> {
    let id = family.id;
    let count = match family.count {
        1 => "1 question".to_owned(),
        many => format!("{many} questions"),
    };
    view! {
        <label class="option">
            <input
                type="radio"
                name="family"
                data-test=format!("family-{id}")
                prop:checked=move || picked.family.with(|it| it == id)
                on:change=move |_| picked.family.set(id.to_owned())
            />
            <span class="option-words">{family.name} <span class="option-what">{count}</span></span>
        </label>
    }
}

fn listed(questions: Questions) -> Vec<Listed> {
    let mut counts: HashMap<&str, HashMap<&str, usize>> = HashMap::new();
    for item in questions.items().items() {
        let own = counts.entry(item.family.as_str()).or_default();
        *own.entry(item.competency.as_str()).or_default() += 1;
    }
    let one = |family: &'static families::Family| {
        let own = counts.get(family.id)?;
        // Of two with as many the one that comes first by name, so that a list
        // does not change its order.
        let most = own.iter().max_by(|a, b| a.1.cmp(b.1).then(b.0.cmp(a.0)))?;
        Some(Listed {
            id: family.id,
            name: family.name,
            competency: (*most.0).to_owned(),
            count: own.values().sum(),
        })
    };
    families::ALL.iter().filter_map(one).collect()
}

fn competency(id: &str) -> &'static str {
    let mut all = catalogue().competencies.iter();
    all.find(|it| it.id.as_str() == id)
        .map_or("", |it| it.name.as_str())
}

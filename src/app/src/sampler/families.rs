//! All families, and what is set aside.

use crate::{
    log::log,
    parts::{
        icon::{Icon, icon},
        page::Page,
    },
    place::Place,
    questions::{Questions, Ready, SetAside, prepare},
};
use leptos::prelude::*;
use record::folds;
use std::collections::HashMap;
use study::question::VANISHED;

/// The screen.
#[component]
pub fn FamiliesScreen() -> impl IntoView {
    prepare();
    view! {
        <Page title="Questions" over="Record" up=Place::Record.fragment()>
            <p class="lead">
                "Every question is written from what is taught here, in families. Read any of them; set aside what you would not ask."
            </p>
            <Ready show=|questions| view! { <Families questions /> } />
        </Page>
    }
}

#[component]
fn Families(questions: Questions) -> impl IntoView {
    let mut counts: HashMap<&str, usize> = HashMap::new();
    for item in questions.items().items() {
        *counts.entry(item.family.as_str()).or_default() += 1;
    }
    let row = |family: &study::families::Family| {
        let count = counts.get(family.id).copied().unwrap_or(0);
        let to = Place::QuestionFamily(family.id.into()).fragment();
        view! {
            <li>
                <a class="row" href=to data-test="family">
                    <span class="row-name">{family.name}</span>
                    <span class="row-note">{count} " questions"</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    let rows: Vec<_> = questions.bank().families().iter().map(row).collect();
    let all = questions.items().items().len();
    view! {
        <Aside questions />
        <section class="group">
            <h2 class="stage-label">{rows.len()} " families, " {all} " questions"</h2>
            <ul class="rows">{rows}</ul>
        </section>
    }
}

/// What is set aside, with its notes.
#[component]
fn Aside(questions: Questions) -> impl IntoView {
    let aside = log().memo(|events| {
        let notes = folds::aside(events).into_keys();
        notes.collect::<Vec<String>>()
    });
    move || {
        let rows: Vec<_> = aside
            .get()
            .into_iter()
            .map(|id| {
                let stem = questions.write(&id, 0);
                let stem = stem.map_or_else(|| VANISHED.to_owned(), |question| question.stem);
                view! {
                    <li class="q-read">
                        <p class="row-name">{stem}</p>
                        <SetAside question=id />
                    </li>
                }
            })
            .collect();
        (!rows.is_empty()).then(|| {
            view! {
                <section class="group" data-test="aside">
                    <h2 class="stage-label">"Set aside"</h2>
                    <ul class="q-reads">{rows}</ul>
                </section>
            }
        })
    }
}

//! Procedures: what is taught, and each procedure's lesson, tray and steps.

mod chips;
mod lesson;
mod procedure;
mod reading;
mod set_up;
mod steps;
mod supposing;

pub use lesson::{LessonScreen, reading_minutes};
pub use procedure::ProcedureScreen;
pub use reading::in_reading_order;

use crate::{
    log::log,
    parts::{
        icon::{Icon, icon},
        page::Page,
    },
    place::{Place, View},
    taught::catalogue,
};
use catalogue::{
    Catalogue,
    ids::LessonId,
    procedures::{Procedure, ProcedureKind},
};
use leptos::prelude::*;
use record::folds;
use std::collections::BTreeSet;

/// The list of everything that is taught.
#[component]
pub fn ProceduresScreen() -> impl IntoView {
    let read = log().memo(|events| folds::lessons_read(events).into_keys().collect());
    let of = |kind| {
        let procedures = catalogue().procedures.iter();
        procedures.filter(move |each| each.kind == kind).collect()
    };
    let items = catalogue().items().count();
    view! {
        <Page title="Procedures">
            {group("Treatments", of(ProcedureKind::Treatment), read)}
            {group("Set-ups that treatments share", of(ProcedureKind::SetUp), read)}
            {other_lessons(read)}
            <section class="group">
                <h2 class="stage-label">"Instruments and materials"</h2>
                <ul class="rows">
                    <li>
                        <a class="row" href=Place::Items.fragment() data-test="all-items">
                            <span class="row-name">"All drawings"</span>
                            <span class="row-note">
                                {items} " things that lie on trays, with what tells them apart"
                            </span>
                            {icon(Icon::Onwards)}
                        </a>
                    </li>
                </ul>
            </section>
        </Page>
    }
}

fn group(
    title: &'static str,
    procedures: Vec<&'static Procedure>,
    read: Memo<BTreeSet<String>>,
) -> impl IntoView {
    let row = move |procedure: &'static Procedure| {
        let place = Place::Procedure(procedure.id.clone(), View::Lesson, Vec::new());
        let hook = format!("procedure-{}", procedure.id);
        view! {
            <li>
                <a class="row" href=place.fragment() data-test=hook>
                    <span class="row-name">
                        {procedure.name.as_str()} {read_mark(procedure.id.as_str(), read)}
                    </span>
                    <span class="row-note">{first_sentence(&procedure.purpose)}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    (!procedures.is_empty()).then(|| {
        view! {
            <section class="group">
                <h2 class="stage-label">{title}</h2>
                <ul class="rows">{procedures.into_iter().map(row).collect_view()}</ul>
            </section>
        }
    })
}

/// Lessons that belong to no procedure.
fn other_lessons(read: Memo<BTreeSet<String>>) -> impl IntoView {
    let others: Vec<_> = in_reading_order(catalogue())
        .into_iter()
        .filter(|lesson| !belongs_to_a_procedure(catalogue(), &lesson.id))
        .map(|lesson| {
            let place = Place::Lesson(lesson.id.clone());
            view! {
                <li>
                    <a class="row" href=place.fragment() data-test=format!("lesson-{}", lesson.id)>
                        <span class="row-name">
                            {lesson.title.as_str()} {read_mark(lesson.id.as_str(), read)}
                        </span>
                        {icon(Icon::Onwards)}
                    </a>
                </li>
            }
        })
        .collect();
    (!others.is_empty()).then(|| {
        view! {
            <section class="group">
                <h2 class="stage-label">"What lies behind them"</h2>
                <ul class="rows">{others}</ul>
            </section>
        }
    })
}

/// Whether a lesson is the lesson of a procedure, which then has its id.
fn belongs_to_a_procedure(catalogue: &Catalogue, id: &LessonId) -> bool {
    catalogue.procedure(&id.as_str().into()).is_some()
}

/// Where a lesson is read.
pub fn lesson_place(catalogue: &Catalogue, id: &LessonId) -> Place {
    if belongs_to_a_procedure(catalogue, id) {
        Place::Procedure(id.as_str().into(), View::Lesson, Vec::new())
    } else {
        Place::Lesson(id.clone())
    }
}

fn read_mark(id: &'static str, read: Memo<BTreeSet<String>>) -> impl IntoView {
    move || {
        read.with(|read| read.contains(id))
            .then(|| view! { <span class="read-mark">{icon(Icon::Right)} "read"</span> })
    }
}

/// The first sentence of a text, for a list.
fn first_sentence(text: &'static str) -> &'static str {
    text.find(". ").map_or(text, |end| &text[..=end])
}

#[cfg(test)]
mod tests {
    use super::first_sentence;

    #[test]
    fn a_list_shows_the_first_sentence() {
        assert_eq!(first_sentence("One. Two."), "One.");
        assert_eq!(first_sentence("Only one."), "Only one.");
        assert_eq!(first_sentence("0.5 mm or less. More."), "0.5 mm or less.");
    }
}

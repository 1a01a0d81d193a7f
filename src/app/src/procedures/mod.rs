//! Procedures: what is taught, and each procedure's lesson, tray and steps.

mod around;
mod chips;
mod lesson;
mod procedure;
mod set_up;
mod steps;
mod supposing;

pub use chips::{Chips, PatientControls};
pub use lesson::LessonScreen;
pub use procedure::ProcedureScreen;
pub use supposing::{patient as supposed_patient, words as supposed_words};

use crate::{
    log::log,
    parts::{
        icon::{Icon, icon},
        page::Page,
        search::{self, Search},
    },
    place::Place,
    taught::catalogue,
};
use catalogue::{
    Catalogue,
    ids::LessonId,
    lesson::Lesson,
    procedures::{Procedure, ProcedureKind},
    reading_order::in_reading_order,
};
use leptos::prelude::*;
use record::folds;
use std::collections::BTreeSet;

/// A line of the list: a procedure or a lesson that stands alone.
#[derive(Clone, Copy)]
struct Line {
    id: &'static str,
    name: &'static str,
    note: &'static str,
}

impl Line {
    fn of_procedure(procedure: &'static Procedure) -> Self {
        Self {
            id: procedure.id.as_str(),
            name: &procedure.name,
            note: first_sentence(&procedure.purpose),
        }
    }

    fn of_lesson(lesson: &'static Lesson) -> Self {
        Self {
            id: lesson.id.as_str(),
            name: &lesson.title,
            note: "",
        }
    }

    fn matches(self, sought: &str) -> bool {
        search::matches([self.name, self.note].into_iter(), sought)
    }
}

/// The list of everything that is taught.
#[component]
pub fn ProceduresScreen() -> impl IntoView {
    let catalogue = catalogue();
    let of = |kind| -> Vec<Line> {
        let procedures = catalogue.procedures.iter();
        let of_kind = procedures.filter(|each| each.kind == kind);
        of_kind.map(Line::of_procedure).collect()
    };
    let others = in_reading_order(catalogue)
        .into_iter()
        .filter(|lesson| !belongs_to_a_procedure(catalogue, &lesson.id))
        .map(Line::of_lesson)
        .collect();
    let groups = [
        ("Treatments", of(ProcedureKind::Treatment)),
        ("Set-ups that treatments share", of(ProcedureKind::SetUp)),
        ("What lies behind them", others),
    ];
    let sought = RwSignal::new(String::new());
    let lines: Vec<Line> = groups.iter().flat_map(|(_, lines)| lines.clone()).collect();
    let found = Memo::new(move |_| {
        sought.with(|sought| lines.iter().filter(|line| line.matches(sought)).count())
    });
    view! {
        <Page title="Procedures">
            <OtherLines />
            <Search label="Find a procedure or lesson" sought found everything=true test="procedure-search" />
            {groups
                .into_iter()
                .map(|(title, lines)| view! { <Group title lines sought /> })
                .collect_view()}
        </Page>
    }
}

/// The ways to all instruments and materials, and to preference cards.
#[component]
fn OtherLines() -> impl IntoView {
    let items = catalogue().items().count();
    view! {
        <ul class="rows group">
            <li>
                <a class="row" href=Place::Items.fragment() data-test="all-items">
                    <span class="row-name">"Instruments and materials"</span>
                    <span class="row-note">
                        {items} " things that lie on trays, drawn, with what tells them apart"
                    </span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
            <li>
                <a class="row" href=Place::AllPlates.fragment() data-test="all-plates">
                    <span class="row-name">"Plates"</span>
                    <span class="row-note">"Every drawing by family, with or without its name"</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
            <li>
                <a class="row" href=Place::Glossary.fragment() data-test="glossary">
                    <span class="row-name">"Words of the trade"</span>
                    <span class="row-note">
                        {catalogue().glossary.len()} " words, what they mean and how they are said"
                    </span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
            <li>
                <a class="row" href=Place::Cards.fragment() data-test="preference-cards">
                    <span class="row-name">"Preference cards"</span>
                    <span class="row-note">"What one dentist or one practice wants done differently"</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        </ul>
    }
}

/// Lines under a title; what does not match the search is hidden.
#[component]
fn Group(title: &'static str, lines: Vec<Line>, sought: RwSignal<String>) -> impl IntoView {
    let read = log().memo(|events| folds::lessons_read(events).into_keys().collect());
    let all = lines.clone();
    let empty = move || sought.with(|sought| !all.iter().any(|line| line.matches(sought)));
    let row = move |line: Line| {
        let place = lesson_place(catalogue(), &line.id.into());
        view! {
            <li hidden=move || sought.with(|sought| !line.matches(sought))>
                <a class="row" href=place.fragment() data-test=format!("lesson-{}", line.id)>
                    <span class="row-name">{line.name} {read_mark(line.id, read)}</span>
                    <span class="row-note">{line.note}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    view! {
        <section class="group" hidden=empty>
            <h2 class="stage-label">{title}</h2>
            <ul class="rows">{lines.into_iter().map(row).collect_view()}</ul>
        </section>
    }
}

/// Whether a lesson is the lesson of a procedure, which then has its id.
fn belongs_to_a_procedure(catalogue: &Catalogue, id: &LessonId) -> bool {
    catalogue.procedure(&id.as_str().into()).is_some()
}

/// Where a lesson is read.
pub fn lesson_place(catalogue: &Catalogue, id: &LessonId) -> Place {
    Place::of_lesson(id, belongs_to_a_procedure(catalogue, id))
}

fn read_mark(id: &'static str, read: Memo<BTreeSet<String>>) -> impl IntoView {
    move || {
        read.with(|read| read.contains(id))
            .then(|| view! { <span class="read-mark">{icon(Icon::Right)} "read"</span> })
    }
}

/// The first sentence of a text, for a list.
pub fn first_sentence(text: &'static str) -> &'static str {
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

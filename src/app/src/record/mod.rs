//! Record: what the student has done and can take along.

mod checked;
mod competencies;
mod done;
mod keeping;
mod settings;

use crate::{
    parts::{
        gradually::{InTurn, take_turns},
        icon::{Icon, icon},
        page::Page,
    },
    place::{ClassPlace, Place},
};
use leptos::prelude::*;

/// Where answers to questions are looked at.
#[component]
fn Study() -> impl IntoView {
    let row = |place: Place, name: &'static str, note: &'static str, test: &'static str| {
        view! {
            <li>
                <a class="row" href=place.fragment() data-test=test>
                    <span class="row-name">{name}</span>
                    <span class="row-note">{note}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    view! {
        <section class="group" data-test="record-study">
            <h2 class="stage-label">"Questions"</h2>
            <ul class="rows">
                {row(Place::Progress, "How I stand", "Mastery, readiness, days of study, export", "to-progress")}
                {row(Place::Forms(String::new()), "Practice forms", "Under way and handed in", "to-forms")}
                {row(Place::Plan, "The plan", "Examination day and minutes a day", "to-plan")}
                {row(Place::Questions, "All questions", "Every family, for reading and setting aside", "to-questions")}
            </ul>
        </section>
    }
}

/// The screen.
#[component]
pub fn RecordScreen() -> impl IntoView {
    take_turns(0);
    view! {
        <Page title="Record">
            <competencies::Competencies />
            <Study />
            <InTurn><done::Done /></InTurn>
            <InTurn><checked::Checked /></InTurn>
            <InTurn><keeping::Keeping /></InTurn>
            <InTurn><settings::Settings /></InTurn>
            <section class="group">
                <h2 class="stage-label">"Trayward"</h2>
                <ul class="rows">
                    <li>
                        <a class="row" href=Place::Class(ClassPlace::Desk).fragment() data-test="to-class">
                            <span class="row-name">"Class"</span>
                            <span class="row-note">"For instructors: assign, collect, report"</span>
                            {icon(Icon::Onwards)}
                        </a>
                    </li>
                    <li>
                        <a class="row" href=Place::About.fragment() data-test="about">
                            <span class="row-name">"About, safety and sources"</span>
                            {icon(Icon::Onwards)}
                        </a>
                    </li>
                </ul>
            </section>
        </Page>
    }
}

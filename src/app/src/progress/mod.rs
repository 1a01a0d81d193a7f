//! How the student stands: what can be said of each competency and how surely,
//! how it has grown, when there was study, and how far forecasts held. Every
//! picture has its table behind it.

mod calendar;
mod calibrated;
mod csv;
mod grown;
mod mastered;
mod ready;

use crate::{
    browser::{clock, files},
    log::log,
    parts::{
        announce::announcer,
        gradually::{InTurn, take_turns},
        page::Page,
    },
    place::Place,
    questions::{Questions, Ready, prepare, studied},
};
use leptos::prelude::*;
use record::folds;
use study::mastery::Mastery;

/// The screen.
#[component]
pub fn ProgressScreen() -> impl IntoView {
    prepare();
    view! {
        <Page title="How I stand" over="Record" up=Place::Record.fragment()>
            <Ready show=|questions| view! { <Progress questions /> } />
        </Page>
    }
}

/// Each section is worked out when it is its turn: a record of years takes a while.
#[component]
fn Progress(questions: Questions) -> impl IntoView {
    take_turns(0);
    view! {
        <InTurn><Standing questions /></InTurn>
        <InTurn>{grown::over_time(questions, &studied(questions))}</InTurn>
        <InTurn>{calendar::calendar(&studied(questions))}</InTurn>
        <InTurn>{calibrated::calibration(&studied(questions))}</InTurn>
        <InTurn><Remarks questions /><Export /></InTurn>
    }
}

/// What can be said today.
#[component]
fn Standing(questions: Questions) -> impl IntoView {
    let now = studied(questions);
    let mastery = Mastery::of(questions.items(), &now.tries);
    view! {
        {ready::readiness(questions, &now, &mastery)}
        {mastered::by_competency(&mastery)}
    }
}

/// What is unusual about the record.
#[component]
fn Remarks(questions: Questions) -> impl IntoView {
    let remark = |words: &String| {
        view! { <p class="q-note" data-test="remark">{words.clone()}</p> }
    };
    let now = studied(questions);
    now.remarks.iter().map(remark).collect_view()
}

/// The answers as a table for other programs.
#[component]
fn Export() -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let export = move |_| {
        let text = log.look(|events| csv::table(&folds::evidence(events)));
        let name = format!("trayward-answers-{}.csv", clock::iso_day(clock::now()));
        announcer.say(match files::download(&name, &text) {
            Ok(()) => format!("Offered as {name}."),
            Err(sentence) => sentence,
        });
    };
    view! {
        <section class="group">
            <h2 class="stage-label">"Take it along"</h2>
            <p>"Every answer as a table, for a spreadsheet. The whole record is exported from Record."</p>
            <div class="actions">
                <button type="button" class="button button-quiet" data-test="export-csv" on:click=export>
                    "Export the answers (CSV)"
                </button>
            </div>
        </section>
    }
}

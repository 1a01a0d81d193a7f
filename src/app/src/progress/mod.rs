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
    browser::{breath::Sliced, clock, files},
    log::log,
    parts::{
        announce::announcer,
        gradually::{InTurn, take_turns},
        page::Page,
    },
    place::Place,
    questions::{Questions, Ready, Studied, following, prepare, studied},
};
use leptos::prelude::*;
use record::folds;
use study::mastery::{Mastery, Readiness};

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

/// How the student stands comes first; each further section is worked out when it
/// is its turn: a record of years takes a while.
#[component]
fn Progress(questions: Questions) -> impl IntoView {
    take_turns(0);
    view! {
        {following(questions, "q-space-standing", WORKING, stand, standing)}
        <InTurn>{grown::over_time(questions)}</InTurn>
        <InTurn>{calendar::calendar(&studied(questions))}</InTurn>
        <InTurn>{calibrated::calibration(questions)}</InTurn>
        <InTurn><Remarks questions /><Export /></InTurn>
    }
}

/// Said where a figure is still being worked out.
const WORKING: &str = "Working it out…";

/// What can be said today.
type Standing = (Mastery, Readiness);

async fn stand(questions: Questions, now: &Studied, work: &mut Sliced) -> Standing {
    let mastery = Mastery::of(questions.items(), &now.shown.tries);
    work.rest().await;
    let readiness = ready::forecast(questions, now, &mastery);
    (mastery, readiness)
}

fn standing(_: Questions, now: &Studied, (mastery, readiness): &Standing) -> impl IntoView + use<> {
    view! {
        {ready::readiness(now.plan.pass, readiness)}
        {mastered::by_competency(mastery)}
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

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
    parts::{announce::announcer, page::Page},
    place::Place,
    questions::{Questions, Ready, Soon, prepare, studied},
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

#[component]
fn Progress(questions: Questions) -> impl IntoView {
    let now = studied(questions);
    let mastery = Mastery::of(questions.items(), &now.tries);
    let remarks = now.remarks.iter();
    let remarks =
        remarks.map(|words| view! { <p class="q-note" data-test="remark">{words.clone()}</p> });
    view! {
        {ready::readiness(questions, &now, &mastery)}
        {mastered::by_competency(&mastery)}
        <Soon show=move || grown::over_time(questions, &studied(questions)) />
        <Soon show=move || {
            let studied = studied(questions);
            view! {
                {calendar::calendar(&studied)}
                {calibrated::calibration(&studied)}
            }
        } />
        {remarks.collect_view()}
        <Export />
    }
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

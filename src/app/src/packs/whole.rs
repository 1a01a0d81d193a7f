//! Every patient that can be, run through the rules with the pack: what
//! `cargo site check` does for the built-in ones, with the same messages.

use super::writing::Writing;
use crate::{
    browser::{breath, clock},
    parts::{
        announce::announcer,
        notice::{Notice, Tone},
    },
};
use clinic::Clinic;
use leptos::{prelude::*, task::spawn_local};
use std::rc::Rc;

/// How long the page may stand still at a time, in milliseconds.
const STILL: i64 = 40;

/// How many faults are listed.
const LISTED: usize = 30;

/// How far it is.
#[derive(Clone, PartialEq)]
enum State {
    Waiting,
    /// The share that is done, in hundredths.
    Running(u32),
    /// How many patients were run for how many combinations, and what is wrong.
    Done(u64, u128, Vec<String>),
}

/// The button that runs every patient, and what came of it.
#[component]
pub fn EveryPatient(
    /// The pack.
    writing: Writing,
) -> impl IntoView {
    let announcer = announcer();
    let state = RwSignal::new(State::Waiting);
    let run = move |_| {
        let Some(over) = writing.checks.passed() else {
            announcer.say("First the checks have to find nothing wrong.");
            return;
        };
        state.set(State::Running(0));
        spawn_local(async move {
            let clinic = Clinic::new(Rc::new(over.catalogue.clone()));
            let mut sweep = clinic.sweep();
            let mut since = clock::now().utc_ms;
            let report = loop {
                if let Some(report) = sweep.step() {
                    break report;
                }
                if clock::now().utc_ms - since > STILL {
                    #[expect(
                        clippy::cast_possible_truncation,
                        clippy::cast_sign_loss,
                        reason = "a share is from 0 to 1"
                    )]
                    let share = (sweep.share() * 100.0) as u32;
                    // The screen is gone: nobody waits for it any more.
                    if state.try_set(State::Running(share)).is_some() {
                        return;
                    }
                    breath::take().await;
                    since = clock::now().utc_ms;
                }
            };
            let done = State::Done(report.run, report.combinations, report.faults);
            let _ = state.try_set(done);
        });
    };
    let says = move || {
        match state.get() {
        State::Waiting => ().into_any(),
        State::Running(share) => view! {
            <p data-test="every-patient-runs">"Running every patient that can be: " {share} " per cent."</p>
        }
        .into_any(),
        State::Done(run, combinations, faults) if faults.is_empty() => view! {
            <p data-test="every-patient-done">
                "Every patient that can be was run: " {run.to_string()} " stand for " {combinations.to_string()}
                " combinations of findings. Nothing is wrong."
            </p>
        }
        .into_any(),
        State::Done(_, _, faults) => {
            let lines = faults.into_iter().take(LISTED).map(|says| view! { <li>{says}</li> });
            view! {
                <Notice tone=Tone::Attention>
                    <p data-test="every-patient-done"><strong>"Not every patient comes through."</strong></p>
                    <ul>{lines.collect_view()}</ul>
                </Notice>
            }
            .into_any()
        }
    }
    };
    let running = move || matches!(state.get(), State::Running(_));
    let ready = move || writing.checks.passed_now() && !running();
    view! {
        <section class="group" aria-live="polite">
            <button
                type="button"
                class="button button-quiet"
                data-test="every-patient"
                disabled=move || !ready()
                on:click=run
            >
                "Check every patient"
            </button>
            <p class="hint">
                "Runs every patient that can be through the rules, as they are with this pack. It takes a while; the page stays with you."
            </p>
            {says}
        </section>
    }
}

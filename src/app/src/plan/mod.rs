//! The examination day and the minutes a day, and what they allow.

mod feasible;

use crate::{
    browser::clock,
    log::log,
    parts::{announce::announcer, page::Page},
    place::Place,
    questions::{days, plan, prepare, questions},
};
use feasible::feasible;
use leptos::prelude::*;
use plan::Plan;
use record::{SettingChanged, What};
use study::day::Day;

/// The screen.
#[component]
pub fn PlanScreen() -> impl IntoView {
    prepare();
    let log = log();
    let set = log.memo(Plan::of);
    let wrong = RwSignal::new(None::<&'static str>);
    let announcer = announcer();
    let put = move |key: &'static str, value: String| {
        log.append(What::SettingChanged(SettingChanged {
            key: key.into(),
            value,
        }));
        announcer.say("Set.");
    };
    let change_day = move |event| {
        let typed = event_target_value(&event);
        let read = days::parse(&typed);
        // A field that is being typed into may hold half a date.
        if typed.is_empty() || read.is_some() {
            wrong.set(None);
            put(plan::DAY, typed);
        } else {
            wrong.set(Some(
                "That is no day of the calendar. Choose one, or type it whole.",
            ));
        }
    };
    let change_minutes = move |event| {
        let typed = event_target_value(&event);
        match plan::minutes(&typed) {
            Some(minutes) => {
                wrong.set(None);
                put(plan::MINUTES, minutes.to_string());
            }
            None => wrong.set(Some("Minutes a day are a whole number from 5 to 180.")),
        }
    };
    let day = move || set.get().day.map(days::iso).unwrap_or_default();
    view! {
        <Page title="The plan" over="Today" up=Place::Today.fragment()>
            <p class="lead">
                "Set the day of your examination and how long you want to study each day. Reviews are then laid so that what you learn lasts until that day."
            </p>
            <div class="q-set">
                <label class="q-field">
                    <span>"Examination day"</span>
                    <input type="date" data-test="day" prop:value=day on:change=change_day />
                </label>
                <label class="q-field">
                    <span>"Minutes a day"</span>
                    <input
                        type="number"
                        min="5"
                        max="180"
                        data-test="minutes"
                        prop:value=move || set.get().minutes.to_string()
                        on:change=change_minutes
                    />
                </label>
                {move || set.get().day.map(|_| view! {
                    <div class="actions">
                        <button
                            type="button"
                            class="button button-quiet"
                            data-test="no-day"
                            on:click=move |_| put(plan::DAY, String::new())
                        >
                            "Take the day away"
                        </button>
                    </div>
                })}
            </div>
            {move || wrong.get().map(|words| view! { <p class="q-wrong" role="alert" data-test="wrong">{words}</p> })}
            <p data-test="day-words">{move || words(set.get())}</p>
            {move || {
                set.track();
                let waiting = view! { <p class="q-feasible q-note" aria-busy="true">"Getting the questions ready…"</p> };
                match questions() {
                    Some(questions) => feasible(questions).into_any(),
                    None => waiting.into_any(),
                }
            }}
        </Page>
    }
}

/// What is said of the day itself.
fn words(plan: Plan) -> String {
    let today: Day = days::day(clock::now());
    match plan.examination() {
        Some(examination) => format!(
            "{}: {}",
            days::words(examination.0),
            examination.words(today)
        ),
        None => "No examination day is set: reviews go by memory alone.".into(),
    }
}

//! Study on Today: sittings of three lengths at once, and what is due as soon
//! as the part that knows it has arrived in the background.

use crate::{
    areas::{Area, Draw, Stopped},
    book::{Arrival, Book},
    log::log,
    parts::icon::{Icon, icon},
    place::{Place, SittingAt},
    questions::plan,
};
use leptos::prelude::*;
use record::{Event, What, folds};

/// The lengths of a sitting, in minutes.
const LENGTHS: [u16; 3] = [5, 10, 20];

/// The card of study.
#[component]
pub fn Study() -> impl IntoView {
    let length = |minutes: u16| {
        let to = Place::Sitting(SittingAt::New(minutes));
        view! {
            <a class="button" href=to.fragment() data-test=format!("sit-{minutes}")>
                {minutes} " min"
            </a>
        }
    };
    view! {
        <section class="card today-study" data-test="study">
            <h2 class="stage-label">"A sitting of questions"</h2>
            <UnderWay />
            <div class="actions" role="group" aria-label="Begin a sitting of">
                {LENGTHS.map(length).collect_view()}
            </div>
            <Later />
            <ul class="rows today-more">
                <li>
                    <a class="row" href=Place::Forms(String::new()).fragment() data-test="to-forms">
                        <span class="row-name">"Practice form"</span>
                        {icon(Icon::Onwards)}
                    </a>
                </li>
                <li>
                    <a class="row" href=Place::Progress.fragment() data-test="to-progress">
                        <span class="row-name">"How I stand"</span>
                        {icon(Icon::Onwards)}
                    </a>
                </li>
            </ul>
        </section>
    }
}

/// A sitting that waits to be gone on with.
#[component]
fn UnderWay() -> impl IntoView {
    let open = log().memo(folds::study_under_way);
    move || {
        open.get().map(|(id, minutes)| {
            let to = Place::Sitting(SittingAt::Kept(id));
            view! {
                <a class="button today-resume" href=to.fragment() data-test="resume-sitting">
                    "Go on with the sitting of " {minutes} " min" {icon(Icon::Onwards)}
                </a>
            }
        })
    }
}

/// What only the part of study can say. Today is whole without it, so nothing
/// is said where it does not come. Before the first answer nothing can be due,
/// and no question is made ready for it.
#[component]
fn Later() -> impl IntoView {
    let begun = log().memo(|events| {
        let answered = |event: &Event| matches!(event.what, What::QuestionAnswered(_));
        let day = || folds::settings(events).get(plan::DAY).cloned();
        events.iter().any(answered) || day().is_some_and(|day| !day.is_empty())
    });
    move || {
        if begun.get() {
            view! { <WhatIsDue /> }.into_any()
        } else {
            view! {
                <p class="q-note">
                    "Nothing is due yet. "
                    <a href=Place::Plan.fragment() data-test="to-plan">"Set an examination day"</a>
                </p>
            }
            .into_any()
        }
    }
}

/// What is due, drawn by the part of study once it is here. Its place is kept
/// free until then, so that nothing moves under a finger.
#[component]
fn WhatIsDue() -> impl IntoView {
    let draw = RwSignal::new(None::<Result<Draw, Stopped>>);
    let book: Book = expect_context();
    let arrival = book.arrival();
    Effect::new(move |_| {
        if arrival.get() == Arrival::Here {
            leptos::task::spawn_local(async move {
                let here = Area::Study.open().await;
                // Today may be left by now.
                draw.try_set(Some(here));
            });
        }
    });
    move || match (draw.get(), arrival.get()) {
        (Some(Ok(draw)), _) => draw(Place::Today, Signal::stored(Place::Today)),
        (Some(Err(_)), _) | (_, Arrival::Stopped(_)) => ().into_any(),
        _ => view! {
            <div class="q-ahead" aria-busy="true">
                <p class="q-note">"Getting the questions ready…"</p>
            </div>
        }
        .into_any(),
    }
}

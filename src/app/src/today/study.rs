//! Study on Today: sittings of three lengths at once, and what is due as soon
//! as the part that knows it has arrived in the background.

use crate::{
    areas::{Area, Draw},
    book::{Arrival, Book},
    log::log,
    parts::icon::{Icon, icon},
    place::{Place, SittingAt},
};
use leptos::prelude::*;
use record::folds;

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
/// is said where it does not come.
#[component]
fn Later() -> impl IntoView {
    let draw = RwSignal::new(None::<Draw>);
    let book: Book = expect_context();
    let arrival = book.arrival();
    Effect::new(move |_| {
        if arrival.get() == Arrival::Here {
            leptos::task::spawn_local(async move {
                if let Ok(here) = Area::Study.open().await {
                    // Today may be left by now.
                    draw.try_set(Some(here));
                }
            });
        }
    });
    move || {
        draw.get()
            .map(|draw| draw(Place::Today, Signal::stored(Place::Today)))
    }
}

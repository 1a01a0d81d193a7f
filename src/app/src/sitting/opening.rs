//! What a sitting of so many minutes would be made of, and its beginning.

use super::player::Plain;
use crate::{
    book::outline,
    browser::address::Address,
    log::log,
    place::{Place, SittingAt},
    questions::{Questions, Ready, Studied, days, studied},
};
use leptos::prelude::*;
use record::{Event, SittingBegun, What, folds};
use std::collections::HashSet;
use study::sitting::{Length, Sitting, Wanted, compose};

/// The opening of a sitting.
#[component]
pub fn Opening(
    /// The minutes that were chosen.
    minutes: u16,
) -> impl IntoView {
    let Some(length) = length(minutes) else {
        return view! {
            <Plain title="A sitting">
                <p class="lead">"A sitting lasts 5, 10 or 20 minutes."</p>
                {lengths("A sitting of")}
            </Plain>
        }
        .into_any();
    };
    let title = match length {
        Length::Five => "Five minutes",
        Length::Ten => "Ten minutes",
        Length::Twenty => "Twenty minutes",
    };
    view! {
        <Plain title>
            <Ready show=move |questions| view! { <Composed questions length /> } />
        </Plain>
    }
    .into_any()
}

/// Links to sittings of each length.
pub fn lengths(label: &'static str) -> impl IntoView {
    let one = |length: Length| {
        let minutes = length.minutes();
        let at = SittingAt::New(u16::try_from(minutes).unwrap_or(5));
        view! {
            <a
                class="button button-quiet"
                href=Place::Sitting(at).fragment()
                data-test=format!("sit-{minutes}")
            >
                {minutes} " min"
            </a>
        }
    };
    view! {
        <div class="actions" role="group" aria-label=label>
            {Length::ALL.map(one).collect_view()}
        </div>
    }
}

fn length(minutes: u16) -> Option<Length> {
    let mut all = Length::ALL.into_iter();
    all.find(|length| length.minutes() == u32::from(minutes))
}

/// Procedures in the order in which they are learnt: those whose lesson was
/// read, then the others, each in the order of reading.
fn learning(events: &[Event], of_procedures: &[String]) -> Vec<String> {
    let read = folds::lessons_read(events);
    let (known, rest): (Vec<String>, Vec<String>) = of_procedures
        .iter()
        .cloned()
        .partition(|id| read.contains_key(id));
    known.into_iter().chain(rest).collect()
}

/// What a sitting of this length is made of now.
pub fn composed(questions: Questions, studied: &Studied, length: Length) -> Sitting {
    let lessons = outline().lessons.iter().filter(|line| line.of_procedure);
    let procedures: Vec<String> = lessons.map(|line| line.id.to_string()).collect();
    let (learning, aside) = log().look(|events| {
        let aside = folds::aside(events);
        (learning(events, &procedures), aside)
    });
    let places = aside.keys().filter_map(|id| questions.items().place(id));
    let without: HashSet<usize> = places.collect();
    let left = (studied.plan.minutes * 60).saturating_sub(studied.seconds_today());
    let wanted = Wanted {
        length,
        // What the student asks for is given, also beyond the minutes of the day.
        budget: left.max(length.minutes() * 60),
        learning: &learning,
        without: &without,
        today: studied.today,
    };
    compose(
        questions.items(),
        &studied.shown.memory,
        &studied.schedule,
        &wanted,
    )
}

#[component]
fn Composed(questions: Questions, length: Length) -> impl IntoView {
    let (log, address) = (log(), expect_context::<Address>());
    let studied = studied(questions);
    let sitting = composed(questions, &studied, length);
    let items = questions.items().items();
    let ids: Vec<String> = sitting
        .asks
        .iter()
        .map(|ask| items[ask.place].id.clone())
        .collect();
    let done = studied.seconds_today() / 60;
    let beyond = (done >= studied.plan.minutes).then(|| {
        format!(
            "You have studied {done} minutes today, of the {} you set. This comes on top.",
            studied.plan.minutes
        )
    });
    let nothing = ids.is_empty();
    let next = nothing.then(|| {
        let day = next_due(questions, &studied);
        day.map(|day| format!("The next review falls due on {}.", days::words(day)))
    });
    let begin = move |_| {
        let id = log.new_sitting();
        log.append(What::SittingBegun(SittingBegun {
            sitting: id,
            minutes: u16::try_from(length.minutes()).unwrap_or(5),
            questions: ids.clone(),
        }));
        // Back leads to where the student came from, not to another opening.
        address.amend(Place::Sitting(SittingAt::Kept(id)));
    };
    view! {
        <p class="lead" data-test="composed">{sitting.words}</p>
        {beyond.map(|words| view! { <p>{words}</p> })}
        {next.flatten().map(|words| view! { <p>{words}</p> })}
        {studied.remarks.iter().map(|remark| view! { <p class="q-note">{remark.clone()}</p> }).collect_view()}
        <p class="q-note">
            "One question a screen. Answer first; then you see why, and where it is from. What you miss comes back once before the end."
        </p>
        <div class="case-go">
            <button
                type="button"
                class="button"
                data-test="begin"
                disabled=nothing
                on:click=begin
            >
                "Begin"
            </button>
        </div>
    }
}

/// The day on which the next review falls due.
fn next_due(questions: Questions, studied: &Studied) -> Option<study::day::Day> {
    let bank = questions.items();
    let due = studied.shown.memory.known().map(|(place, trace)| {
        let (day, _) = studied.schedule.due(bank.hash(place), trace);
        day
    });
    due.min()
}

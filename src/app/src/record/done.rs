//! Cases brought to their end and lessons read, the latest first.

use crate::{
    browser::clock,
    log::log,
    parts::{more::More, order::in_order},
    place::Place,
    procedures::lesson_place,
    taught::catalogue,
};
use clinic::case::tray_reading;
use leptos::prelude::*;
use record::folds;

/// Both lists; nothing where nothing was done.
#[component]
pub fn Done() -> impl IntoView {
    view! {
        <Cases />
        <Lessons />
    }
}

/// How many cases are shown at once; a record may hold a thousand.
const AT_ONCE: usize = 12;

#[component]
fn Cases() -> impl IntoView {
    let catalogue = catalogue();
    let finished = log().memo(|events| {
        let mut cases = folds::finished_cases(events);
        // They come in the order they were started, nearly that of their ends.
        cases.reverse();
        in_order(&mut cases, |a, b| a.finish.at > b.finish.at);
        cases
    });
    let row = move |it: folds::FinishedCase| {
        let frame = catalogue.case(&it.case.as_str().into());
        let title = match frame {
            Some(frame) => frame.title.clone(),
            None if it.case == tray_reading::CASE => tray_reading::TITLE.into(),
            None => it.case.clone(),
        };
        let place = Place::of_sitting(&it.case, it.seed, it.with.as_deref());
        view! {
            <li>
                <a class="row" href=place.fragment() data-test="finished-case">
                    <span class="row-name">{title}</span>
                    <span class="row-note">{clock::day(it.finish.at)}</span>
                    <span class="row-mark">{it.finish.per_cent.to_string()}</span>
                </a>
            </li>
        }
    };
    let shown = RwSignal::new(AT_ONCE);
    let count = Signal::derive(move || finished.with(Vec::len));
    let rows = move || {
        let latest: Vec<_> = finished.with(|all| all.iter().take(shown.get()).cloned().collect());
        latest.into_iter().map(row).collect_view()
    };
    move || {
        (!finished.with(Vec::is_empty)).then(|| {
            view! {
                <section class="group" data-test="finished-cases">
                    <h2 class="stage-label">"Finished cases"</h2>
                    <ul class="rows">{rows}</ul>
                    <div class="actions">
                        <More
                            shown
                            count
                            at_once=AT_ONCE
                            says=|left| format!("Show more: {left} left")
                            test="more-cases"
                        />
                    </div>
                </section>
            }
        })
    }
}

#[component]
fn Lessons() -> impl IntoView {
    let catalogue = catalogue();
    let read = log().memo(|events| {
        let mut read: Vec<_> = folds::lessons_read(events).into_iter().collect();
        in_order(&mut read, |a, b| a.1 > b.1);
        read
    });
    move || {
        let rows: Vec<_> = read
            .get()
            .into_iter()
            .filter_map(|(id, at)| Some((catalogue.lesson(&id.as_str().into())?, at)))
            .map(|(lesson, at)| {
                let to = lesson_place(catalogue, &lesson.id).fragment();
                view! {
                    <li>
                        <a class="row" href=to data-test="read-lesson">
                            <span class="row-name">{lesson.title.as_str()}</span>
                            <span class="row-note">{clock::day(at)}</span>
                        </a>
                    </li>
                }
            })
            .collect();
        (!rows.is_empty()).then(|| {
            view! {
                <section class="group" data-test="read-lessons">
                    <h2 class="stage-label">"Lessons read"</h2>
                    <ul class="rows">{rows}</ul>
                </section>
            }
        })
    }
}

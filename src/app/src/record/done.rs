//! Cases brought to their end and lessons read, the latest first.

use crate::{browser::clock, log::log, place::Place, procedures::lesson_place, taught::catalogue};
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

#[component]
fn Cases() -> impl IntoView {
    let catalogue = catalogue();
    let finished = log().memo(|events| {
        let mut cases = folds::finished_cases(events);
        cases.sort_by_key(|it| core::cmp::Reverse(it.finish.at));
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
    move || {
        let rows: Vec<_> = finished.get().into_iter().map(row).collect();
        (!rows.is_empty()).then(|| {
            view! {
                <section class="group" data-test="finished-cases">
                    <h2 class="stage-label">"Finished cases"</h2>
                    <ul class="rows">{rows}</ul>
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
        read.sort_by_key(|(_, at)| core::cmp::Reverse(*at));
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

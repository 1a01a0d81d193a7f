//! Assignments on Today: what is set, until when, and how far it is.

use crate::{
    assignments,
    browser::clock,
    log::log,
    parts::icon::{Icon, icon},
    place::{ClassPlace, Place},
};
use leptos::prelude::*;
use record::{
    Moment,
    folds::{self, Assigned},
};

/// A card for each assignment that was taken up and not handed in.
#[component]
pub fn Assignments() -> impl IntoView {
    let open = log().memo(|events| {
        let mut open = folds::assignments(events);
        open.retain(|it| it.handed_in.is_none());
        open
    });
    move || open.get().into_iter().map(one).collect_view()
}

fn one(it: Assigned) -> AnyView {
    let place = Place::Class(ClassPlace::Assignment(it.taken.assignment.clone()));
    let due = it.taken.due.map(|day| {
        let at = Moment {
            utc_ms: i64::from(day) * 86_400_000,
            offset_min: 0,
        };
        format!("Due {}. ", clock::day(at))
    });
    let note = format!(
        "{}{} of {} done",
        due.unwrap_or_default(),
        it.done(),
        it.taken.tasks
    );
    let about = it.taken.about.clone().map(|about| {
        let time = it.taken.minutes.map(assignments::expected);
        let time = time.map(|time| format!(", {time}"));
        view! {
            <span class="card-note" data-test="assigned-about">{about} {time}</span>
        }
    });
    let go = if it.complete() { "Hand in" } else { "Go on" };
    view! {
        <a class="card card-due" href=place.fragment() data-test="assigned">
            <span class="stage-label">"Assigned"</span>
            <span class="card-name">{it.taken.title}</span>
            {about}
            <span class="card-note">{note}</span>
            <span class="card-go">{go} {icon(Icon::Onwards)}</span>
        </a>
    }
    .into_any()
}

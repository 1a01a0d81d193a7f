//! The desk: what was set, and the ways on.

use super::kept::{self, Set};
use crate::{
    assignments,
    browser::clock,
    parts::{
        icon::{Icon, icon},
        notice::{Notice, Tone},
        page::Page,
    },
    place::{ClassPlace, Place, WritePlace},
};
use class::handin::SELF_REPORTED;
use leptos::prelude::*;
use record::Moment;

/// The screen.
#[component]
pub fn DeskScreen() -> impl IntoView {
    let listed = match kept::sets() {
        Ok(sets) if sets.is_empty() => view! {
            <p data-test="nothing-set">
                "Nothing is set yet. Choose what your class is to do; a link, a symbol or a sheet takes it to them, and each seat hands in a code."
            </p>
        }
        .into_any(),
        Ok(sets) => view! { <ul class="rows">{sets.into_iter().map(row).collect_view()}</ul> }.into_any(),
        Err(fault) => view! { <Notice tone=Tone::Attention><p>{fault.to_string()}</p></Notice> }.into_any(),
    };
    view! {
        <Page title="Class" over="Record" up=Place::Record.fragment()>
            <p class="lead">
                "For instructors. What you set, what comes back and who sits where stays on this device; nothing goes through a server."
            </p>
            <div class="actions">
                <a class="button" href=Place::Class(ClassPlace::Assign).fragment() data-test="to-assign">
                    "Set an assignment"
                </a>
                <a
                    class="button button-quiet"
                    href=Place::Class(ClassPlace::Roster).fragment()
                    data-test="to-roster"
                >
                    "Who sits where"
                </a>
            </div>
            <section class="group dk-set" data-test="set">
                <h2 class="stage-label">"Set so far"</h2>
                {listed}
            </section>
            <section class="group">
                <h2 class="stage-label">"Packs"</h2>
                <p>
                    "Write procedures, cases and lessons of your own beside the built-in ones, or change those: "
                    <a href=Place::Class(ClassPlace::Write(WritePlace::Packs)).fragment() data-test="to-packs">
                        "packs"
                    </a> "."
                </p>
            </section>
            <section class="group">
                <h2 class="stage-label">"Check-off sheets"</h2>
                <p>
                    "Every procedure has a sheet for hands-on assessment, made from its steps: open the "
                    <a href=Place::Procedures.fragment()>"procedure"</a> " and choose its check-off sheet."
                </p>
            </section>
            <p class="hint prose">{SELF_REPORTED}</p>
        </Page>
    }
}

fn row(set: Set) -> impl IntoView {
    let place = Place::Class(ClassPlace::Collect(set.id.clone()));
    let made = clock::day(Moment {
        utc_ms: set.made,
        offset_min: clock::now().offset_min,
    });
    let (name, note) = match &set.assignment {
        Ok(assignment) => {
            let due = assignment
                .due
                .map(|day| format!(", due {}", assignments::due(day)));
            let tasks = assignments::tasks(&assignment.tasks).join("; ");
            let count = kept::hand_ins(&set.id).map_or(0, |lines| lines.len());
            let read = match count {
                0 => "no hand-in read yet".to_owned(),
                1 => "1 hand-in read".into(),
                many => format!("{many} hand-ins read"),
            };
            (
                assignment.name(),
                format!("Set {made}{}. {read}. {tasks}", due.unwrap_or_default()),
            )
        }
        Err(fault) => ("An assignment".to_owned(), fault.to_string()),
    };
    view! {
        <li>
            <a class="row" href=place.fragment() data-test="set-row">
                <span class="row-name">{name}</span>
                <span class="row-note">{note}</span>
                {icon(Icon::Onwards)}
            </a>
        </li>
    }
}

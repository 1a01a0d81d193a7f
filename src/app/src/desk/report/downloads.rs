//! The report on paper and as files.

use super::{Worked, competency};
use crate::{
    browser::{clock, files, handing, printer},
    parts::announce::announcer,
};
use class::exchange::{csv, json, xapi};
use leptos::prelude::*;
use std::rc::Rc;

/// A file that can be made of a report.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    Seats,
    Items,
    Options,
    Json,
    Statements,
}

impl Kind {
    const ALL: [Self; 5] = [
        Self::Seats,
        Self::Items,
        Self::Options,
        Self::Json,
        Self::Statements,
    ];

    /// Its name, the end of the name of the file, and the kind of its bytes.
    fn names(self) -> (&'static str, &'static str, &'static str) {
        match self {
            Self::Seats => ("Seats, CSV", "seats.csv", "text/csv;charset=utf-8"),
            Self::Items => ("Items, CSV", "items.csv", "text/csv;charset=utf-8"),
            Self::Options => ("Options, CSV", "options.csv", "text/csv;charset=utf-8"),
            Self::Json => ("All, JSON", "report.json", "application/json"),
            Self::Statements => ("Statements, xAPI", "statements.json", "application/json"),
        }
    }

    fn text(self, worked: &Worked, labels: bool) -> String {
        let roster = labels.then_some(&worked.roster);
        match self {
            Self::Seats => csv::seats(&worked.report, roster, &competency),
            Self::Items => csv::items(&worked.report, &competency),
            Self::Options => csv::options(&worked.report),
            Self::Json => json::report(&worked.report),
            Self::Statements => {
                xapi::statements(&worked.assignment, &worked.table, &handing::base())
            }
        }
    }
}

/// The downloads.
#[component]
pub fn Downloads(
    /// What was worked out.
    worked: Rc<Worked>,
) -> impl IntoView {
    let announcer = announcer();
    let labels = RwSignal::new(false);
    let some_labels = !worked.roster.seats().is_empty();
    let owner = Owner::current();
    let kept = StoredValue::new_local(worked);
    let button = move |kind: Kind| {
        let (label, end, bytes_kind) = kind.names();
        let owner = owner.clone();
        let save = move |_| {
            let name = format!("class-{}-{end}", clock::iso_day(clock::now()));
            let make = || kept.with_value(|worked| kind.text(worked, labels.get_untracked()));
            // Names of competencies are looked up where the catalogue is known.
            let text = owner.as_ref().map_or_else(make, |owner| owner.with(make));
            if let Err(why) = files::download_bytes(&name, bytes_kind, text.as_bytes()) {
                announcer.say(why);
            }
        };
        let hook = format!("save-{}", end.replace('.', "-"));
        view! {
            <button type="button" class="button button-quiet" data-test=hook on:click=save>
                {label}
            </button>
        }
    };
    let with_labels = some_labels.then(|| {
        view! {
            <label class="dk-check">
                <input
                    type="checkbox"
                    data-test="with-labels"
                    on:change=move |event| labels.set(event_target_checked(&event))
                />
                <span>"Put the labels of the seats into the table of seats"</span>
            </label>
        }
    });
    view! {
        <div class="dk-downloads dk-noprint">
            <div class="actions">
                <button type="button" class="button button-quiet" data-test="print-report" on:click=move |_| printer::print()>
                    "Print"
                </button>
                {Kind::ALL.map(button).collect_view()}
            </div>
            {with_labels}
        </div>
    }
}

//! The list of cases, with what was done of each.

use crate::{
    log::log,
    parts::{
        icon::{Icon, icon},
        page::Page,
    },
    place::Place,
    taught::catalogue,
};
use catalogue::cases::{CaseFrame, Level};
use leptos::prelude::*;
use record::{Event, folds};

/// What a level is called.
pub fn level(level: Level) -> &'static str {
    match level {
        Level::Basic => "One thing to see",
        Level::Core => "A working day",
        Level::Demanding => "Several things at once",
    }
}

/// The seed of the next patient of a frame: the first that was not begun.
pub fn next_seed(events: &[Event], frame: &str) -> u64 {
    let begun = folds::under_way(events);
    let finished = folds::finished_cases(events);
    let seeds = begun.iter().map(|it| (&it.case, it.seed));
    let seeds = seeds.chain(finished.iter().map(|it| (&it.case, it.seed)));
    let last = seeds
        .filter(|(case, _)| *case == frame)
        .map(|(_, seed)| seed)
        .max();
    last.map_or(1, |last| last.saturating_add(1))
}

/// The list of cases.
#[component]
pub fn CasesScreen() -> impl IntoView {
    let groups: Vec<_> = [Level::Basic, Level::Core, Level::Demanding]
        .into_iter()
        .map(|of| {
            let frames: Vec<&CaseFrame> =
                catalogue().cases.iter().filter(|it| it.level == of).collect();
            (!frames.is_empty()).then(|| {
                view! {
                    <section class="group">
                        <h2 class="stage-label">{level(of)}</h2>
                        <ul class="rows">
                            {frames.into_iter().map(|frame| view! { <CaseRow frame /> }).collect_view()}
                        </ul>
                    </section>
                }
            })
        })
        .collect();
    view! {
        <Page title="Cases">
            <p class="lead">
                "Each case is a patient from the chart to the recall visit. The same case comes back with another patient."
            </p>
            {groups}
            {catalogue().cases.is_empty().then(|| view! { <p>"There are no cases yet."</p> })}
        </Page>
    }
}

#[component]
fn CaseRow(frame: &'static CaseFrame) -> impl IntoView {
    let id = frame.id.as_str();
    let log = log();
    let under_way = log.memo(move |events| {
        let mut all = folds::under_way(events).into_iter();
        all.find(|it| it.case == id).map(|it| it.seed)
    });
    let next = log.memo(move |events| next_seed(events, id));
    let done = log.memo(move |events| {
        let finished = folds::finished_cases(events);
        finished.iter().filter(|it| it.case == id).count()
    });
    let to = move || {
        let seed = under_way.get().unwrap_or_else(|| next.get());
        Place::Case(frame.id.clone(), seed).fragment()
    };
    let booked = catalogue()
        .procedure(&frame.booked)
        .map(|it| it.short.as_str());
    let state = move || match (under_way.get(), done.get()) {
        (Some(_), _) => Some("Under way: go on where you were".to_string()),
        (None, 0) => None,
        (None, 1) => Some("Done once: another patient waits".into()),
        (None, many) => Some(format!("Done {many} times: another patient waits")),
    };
    view! {
        <li>
            <a class="row" href=to data-test=format!("case-{id}")>
                <span class="row-name">{frame.title.as_str()}</span>
                <span class="row-note">
                    "Booked for: " {booked}
                    {move || state().map(|state| view! { <span class="row-state">{state}</span> })}
                </span>
                {icon(Icon::Onwards)}
            </a>
        </li>
    }
}

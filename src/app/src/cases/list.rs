//! The list of cases, with what was done of each.

use crate::{
    browser::clock,
    log::log,
    parts::{
        icon::{Icon, icon},
        level::level,
        page::Page,
    },
    place::Place,
    taught::catalogue,
};
use catalogue::cases::{CaseFrame, Level};
use leptos::prelude::*;
use record::{Event, Moment, folds};
use std::collections::BTreeMap;

/// The seed of the next patient of a frame: the first that was not begun.
pub fn next_seed(events: &[Event], frame: &str) -> u64 {
    let mut all = Done::by_frame(events);
    all.remove(frame).unwrap_or_default().next
}

/// What was done of a frame.
#[derive(Clone, PartialEq, Eq)]
struct Done {
    /// The seed of the case under way, if one is, and what it was asked for with.
    under_way: Option<(u64, Option<String>)>,
    /// The seed of the next patient.
    next: u64,
    /// How many were brought to their end.
    finished: usize,
    /// The best of them, in per cent.
    best: u8,
    /// When the last was finished.
    last: Option<Moment>,
}

impl Default for Done {
    /// Nothing yet.
    fn default() -> Self {
        Self {
            under_way: None,
            next: 1,
            finished: 0,
            best: 0,
            last: None,
        }
    }
}

impl Done {
    /// What was done of each frame, by its id: one look at the record for all.
    fn by_frame(events: &[Event]) -> BTreeMap<String, Self> {
        let mut all: BTreeMap<String, Self> = BTreeMap::new();
        for it in folds::finished_cases(events) {
            let done = all.entry(it.case).or_default();
            done.met(it.seed);
            done.finished += 1;
            done.best = done.best.max(it.finish.per_cent.get());
            done.last = done.last.max(Some(it.finish.at));
        }
        for it in folds::under_way(events) {
            let done = all.entry(it.case).or_default();
            done.met(it.seed);
            done.under_way = Some((it.seed, it.with));
        }
        all
    }

    fn met(&mut self, seed: u64) {
        self.next = self.next.max(seed.saturating_add(1));
    }

    /// In a sentence; none where nothing was done.
    fn says(&self) -> Option<String> {
        let last = clock::day(self.last?);
        Some(match self.finished {
            1 => format!("Done once, on {last}: {} per cent.", self.best),
            many => format!(
                "Done {many} times, last on {last}; best {} per cent.",
                self.best
            ),
        })
    }
}

/// The list of cases.
#[component]
pub fn CasesScreen() -> impl IntoView {
    let all = log().memo(Done::by_frame);
    let group = move |of: Level| {
        let frames = catalogue().cases.iter().filter(|it| it.level == of);
        let rows: Vec<_> = frames
            .map(|frame| view! { <CaseRow frame all /> })
            .collect();
        (!rows.is_empty()).then(|| {
            view! {
                <section class="group">
                    <h2 class="stage-label">{level(of)}</h2>
                    <ul class="rows">{rows}</ul>
                </section>
            }
        })
    };
    view! {
        <Page title="Cases">
            <p class="lead">
                "A case is one patient and one visit, from the chart to the date of the next visit. You say what the assistant does and what the dentist will call for; then you read why."
            </p>
            <p class="prose">
                "Nobody here is real. Every time, the findings are drawn afresh, and the right answer with them. In a real visit the dentist decides."
            </p>
            <ul class="rows group">
                {line(&Place::Order, "order", "A case to order", "Choose the procedure, how hard, and what the patient has to have")}
                {line(&Place::Reading(Vec::new()), "reading", "Reading a tray", "What is it laid for, what does not belong, what is missing?")}
            </ul>
            {[Level::Basic, Level::Core, Level::Demanding].map(group)}
            {catalogue().cases.is_empty().then(|| view! { <p>"There are no cases yet."</p> })}
        </Page>
    }
}

/// The way to something that is no list of cases.
fn line(
    to: &Place,
    hook: &'static str,
    name: &'static str,
    note: &'static str,
) -> impl IntoView + use<> {
    view! {
        <li>
            <a class="row" href=to.fragment() data-test=hook>
                <span class="row-name">{name}</span>
                <span class="row-note">{note}</span>
                {icon(Icon::Onwards)}
            </a>
        </li>
    }
}

#[component]
fn CaseRow(frame: &'static CaseFrame, all: Memo<BTreeMap<String, Done>>) -> impl IntoView {
    let id = frame.id.as_str();
    let done = Memo::new(move |_| all.with(|all| all.get(id).cloned().unwrap_or_default()));
    let to = move || {
        done.with(|done| match &done.under_way {
            Some((seed, with)) => Place::of_sitting(id, *seed, with.as_deref()),
            None => Place::Case(frame.id.clone(), done.next, None),
        })
        .fragment()
    };
    let under_way = move || done.with(|done| done.under_way.is_some());
    let another = move || {
        under_way().then(|| {
            let to = Place::Case(frame.id.clone(), done.with(|done| done.next), None).fragment();
            view! {
                <a class="row-also" href=to data-test=format!("another-{id}")>"Another patient"</a>
            }
        })
    };
    let booked = catalogue().procedure(&frame.booked);
    view! {
        <li>
            <a class="row" href=to data-test=format!("case-{id}")>
                <span class="row-name">{frame.title.as_str()}</span>
                <span class="row-note">
                    "Booked for: " {booked.map(|it| it.short.as_str())}
                    {move || under_way().then_some(view! { <span class="row-state">"Under way. Go on where you were."</span> })}
                    {move || done.with(Done::says).map(|says| view! { <span class="row-done">{says}</span> })}
                </span>
                {icon(Icon::Onwards)}
            </a>
            {another}
        </li>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use record::{CaseFinished, CaseStarted, Log, MemoryStore, PerCent, SittingId, What, Writer};

    #[test]
    fn the_next_patient_is_one_that_was_never_begun() {
        let started = |sitting: u64, case: &str, seed| {
            What::CaseStarted(CaseStarted {
                sitting: SittingId(sitting),
                case: case.into(),
                seed,
                with: (seed == 9).then(|| "pregnant".into()),
                card: None,
            })
        };
        let finished = |sitting: u64, per_cent| {
            What::CaseFinished(CaseFinished {
                sitting: SittingId(sitting),
                per_cent: PerCent::of(per_cent),
            })
        };
        let mut log = Log::open(MemoryStore::new(), Writer(1));
        for what in [
            started(1, "a", 7),
            finished(1, 80),
            started(2, "a", 3),
            finished(2, 60),
            started(3, "b", 4),
            started(4, "b", 9),
        ] {
            let at = Moment {
                utc_ms: 0,
                offset_min: 0,
            };
            log.append(at, what);
        }
        let all = Done::by_frame(log.events());
        for frame in ["a", "b", "c"] {
            let done = all.get(frame).cloned().unwrap_or_default();
            assert_eq!(done.next, next_seed(log.events(), frame), "{frame}");
        }
        assert_eq!((all["a"].finished, all["a"].best), (2, 80));
        assert!(all["a"].under_way.is_none() && all["a"].last.is_some());
        assert_eq!(all["b"].under_way, Some((9, Some("pregnant".into()))));
        assert_eq!((all["b"].finished, all["b"].last), (0, None));
    }
}

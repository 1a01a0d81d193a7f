//! Hand-ins graded again, in steps, so that the page shows how far it is and
//! can be stopped.

use crate::{
    assignments::graders,
    browser::{breath, clock},
    questions,
};
use class::{
    assignment::{Assignment, Seat},
    handin::{Inbox, Outcome, Received, Table},
    report::{Report, Tries, Work},
};
use clinic::Clinic;
use leptos::prelude::*;
use std::{cell::RefCell, rc::Rc};

/// How many milliseconds the work goes on without a breath. A browser takes a
/// few of its own for each, so that a breath a line would take longer than
/// the work; and a touch waits no longer than this.
const STRETCH: i64 = 40;

/// How far the work is, and whether to stop it. Cheap to copy.
#[derive(Clone, Copy)]
pub struct Going {
    state: RwSignal<Option<(usize, usize)>>,
    stopped: RwSignal<bool>,
    /// When the last breath was taken, in milliseconds.
    breathed: StoredValue<i64>,
}

impl Going {
    /// Nothing is going on yet.
    pub fn new() -> Self {
        Self {
            state: RwSignal::new(None),
            stopped: RwSignal::new(false),
            breathed: StoredValue::new(0),
        }
    }

    /// How many lines are done, of how many; none while nothing goes on.
    pub fn progress(self) -> Signal<Option<(usize, usize)>> {
        self.state.into()
    }

    /// Stops at the next breath.
    pub fn stop(self) {
        self.stopped.set(true);
    }

    /// Begins work of so many steps.
    pub fn begin(self, of: usize) {
        self.stopped.try_set(false);
        self.state.try_set(Some((0, of)));
        self.breathed.try_set_value(clock::now().utc_ms);
    }

    /// Breathes where it is time to; false where the work is to stop or the
    /// screen is gone.
    pub async fn breathe(self, done: usize, of: usize) -> bool {
        let now = clock::now().utc_ms;
        if self
            .breathed
            .try_get_value()
            .is_some_and(|it| now - it < STRETCH)
        {
            return true;
        }
        self.state.try_set(Some((done, of)));
        breath::take().await;
        self.breathed.try_set_value(clock::now().utc_ms);
        self.stopped.try_get_untracked() == Some(false)
    }

    /// Nothing goes on any more.
    pub fn end(self) {
        self.state.try_set(None);
    }
}

/// Hand-ins that were read.
pub struct Collected {
    /// Those that count, graded.
    pub table: Table,
    /// What became of each line that was new, with the line.
    pub new: Vec<(String, Received)>,
    /// The lines worth keeping: those that count, parts, and those that counted once.
    pub keep: Vec<String>,
}

/// Begins to make ready what hand-ins of an assignment are graded with.
pub fn prepare(assignment: &Assignment) {
    if assignment.needs_questions() {
        questions::prepare();
    }
}

/// Reads lines that were kept, and then new ones, with the reasoning that the
/// assignment asks for, once it is prepared. None where it was stopped.
pub async fn read(
    assignment: &Assignment,
    clinic: Clinic,
    kept: Vec<String>,
    new: Vec<String>,
    going: Going,
) -> Option<Collected> {
    if assignment.needs_questions() {
        questions::awaited().await;
    }
    let graders = graders(&clinic);
    let mut inbox = Inbox::new(assignment, &graders);
    let (before, all) = (kept.len(), kept.len() + new.len());
    going.begin(all);
    for (at, line) in kept.iter().chain(&new).enumerate() {
        inbox.read(line);
        if !going.breathe(at + 1, all).await {
            going.end();
            return None;
        }
    }
    going.end();
    let (table, received) = inbox.close();
    let lines = kept.into_iter().chain(new);
    let mut collected = Collected {
        table,
        new: Vec::new(),
        keep: Vec::new(),
    };
    for (at, (line, received)) in lines.zip(received).enumerate() {
        let worth = matches!(
            received.outcome,
            Outcome::Accepted(_)
                | Outcome::Part { .. }
                | Outcome::Older(_)
                | Outcome::TooManyTries(_)
        );
        if worth {
            collected.keep.push(line.clone());
        }
        if at >= before {
            collected.new.push((line, received));
        }
    }
    Some(collected)
}

thread_local! {
    /// The hand-ins that were graded last.
    static LAST: RefCell<Option<Last>> = const { RefCell::new(None) };
}

/// Hand-ins that are kept, as they were graded in this visit.
struct Last {
    /// The id of the assignment, which tells what they are graded by.
    id: String,
    lines: Vec<String>,
    table: Rc<Table>,
}

/// Remembers how kept lines were graded, for the report that is opened next.
pub fn remember(id: String, lines: Vec<String>, table: Rc<Table>) {
    LAST.set(Some(Last { id, lines, table }));
}

/// How these lines were graded, where they are those that were graded last.
pub fn remembered(id: &str, lines: &[String]) -> Option<Rc<Table>> {
    LAST.with_borrow(|last| {
        let same = last.as_ref().filter(|it| it.id == id && it.lines == lines);
        same.map(|it| it.table.clone())
    })
}

/// The report of hand-ins that were read. None where it was stopped.
pub async fn report(
    assignment: &Assignment,
    table: &Table,
    tries: Tries,
    expected: &[Seat],
    going: Going,
) -> Option<Report> {
    let mut work = Work::new(assignment, table, tries);
    going.begin(work.progress().of);
    while work.step() {
        let progress = work.progress();
        if !going.breathe(progress.done, progress.of).await {
            going.end();
            return None;
        }
    }
    going.end();
    Some(work.finish(expected))
}

/// How far the work is, and the way to stop it. Nothing while nothing goes on.
#[component]
pub fn Progress(
    /// The work.
    going: Going,
    /// What is being done: "Reading hand-ins".
    doing: &'static str,
) -> impl IntoView {
    let state = going.progress();
    move || {
        state.get().map(|(done, of)| {
            view! {
                <div class="dk-progress" data-test="progress">
                    <label>
                        <span>{doing} ": " {done} " of " {of}</span>
                        <progress max=of value=done></progress>
                    </label>
                    <button
                        type="button"
                        class="button button-quiet"
                        data-test="stop"
                        on:click=move |_| going.stop()
                    >
                        "Stop"
                    </button>
                </div>
            }
        })
    }
}

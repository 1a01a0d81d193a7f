//! Reading hand-ins: pasted lines, files, the camera. What cannot be taken is
//! named, and the rest kept.

mod outcomes;
mod scanner;

use super::{
    grading::{self, Going, Progress},
    kept,
    way::{Unreadable, Ways},
};
use crate::{
    assignments::clinic_with,
    browser::files,
    parts::{announce::announcer, page::Page},
    place::{ClassPlace, Place},
    shell::NotHere,
};
use class::{assignment::Assignment, handin::SELF_REPORTED};
use leptos::{prelude::*, task::spawn_local};
use outcomes::{Outcomes, Read};
use std::rc::Rc;

/// The most bytes of one file: far more than a class hands in.
const MOST: f64 = 64.0 * 1024.0 * 1024.0;

/// The screen.
#[component]
pub fn CollectScreen(
    /// The id of the assignment.
    id: String,
) -> impl IntoView {
    let Some(set) = kept::set(&id) else {
        return view! { <NotHere what="assignment" /> }.into_any();
    };
    let here = ClassPlace::Collect(id.clone());
    let up = Place::Class(ClassPlace::Desk).fragment();
    let ready = set
        .assignment
        .map_err(|fault| fault.to_string())
        .and_then(|assignment| {
            clinic_with(assignment.card.as_deref()).map(|clinic| (assignment, clinic))
        });
    match ready {
        Ok((assignment, clinic)) => {
            let title = assignment.name();
            let reader = Reader::new(id.clone(), assignment, Rc::new(clinic));
            view! {
                <Page title over="Class" up>
                    <Ways id here />
                    <p class="hint prose" data-test="self-reported">{SELF_REPORTED}</p>
                    <Ingoing reader />
                    <Progress going=reader.going doing="Reading hand-ins" />
                    <Outcomes reader />
                </Page>
            }
            .into_any()
        }
        Err(says) => view! { <Unreadable says=says /> }.into_any(),
    }
}

/// What reads hand-ins to one assignment. Cheap to copy.
#[derive(Clone, Copy)]
pub struct Reader {
    id: StoredValue<String>,
    assignment: StoredValue<Assignment, LocalStorage>,
    clinic: StoredValue<Rc<clinic::Clinic>, LocalStorage>,
    going: Going,
    /// How many hand-ins are kept, of how many seats.
    kept: RwSignal<(usize, usize)>,
    read: RwSignal<Vec<Read>>,
    fault: RwSignal<Option<String>>,
    announcer: crate::parts::announce::Announcer,
}

impl Reader {
    fn new(id: String, assignment: Assignment, clinic: Rc<clinic::Clinic>) -> Self {
        let reader = Self {
            id: StoredValue::new(id),
            assignment: StoredValue::new_local(assignment),
            clinic: StoredValue::new_local(clinic),
            going: Going::new(),
            kept: RwSignal::new((0, 0)),
            read: RwSignal::new(Vec::new()),
            fault: RwSignal::new(None),
            announcer: announcer(),
        };
        // What is kept is counted by reading it.
        reader.take(Vec::new());
        reader
    }

    /// Reads lines, and keeps those that are hand-ins.
    pub fn take(self, new: Vec<String>) {
        let Some(assignment) = self.assignment.try_get_value() else {
            return;
        };
        let clinic = self
            .clinic
            .get_value()
            .with_card(self.clinic.get_value().card().cloned());
        let id = self.id.get_value();
        let before = match kept::hand_ins(&id) {
            Ok(lines) => lines,
            Err(fault) => {
                self.fault.set(Some(fault.to_string()));
                Vec::new()
            }
        };
        spawn_local(async move {
            let some = !new.is_empty();
            let read = grading::read(&assignment, clinic, before, new, self.going).await;
            let Some(collected) = read else {
                self.say(some, "Stopped. Nothing was changed.".into());
                return;
            };
            let rows = &collected.table.rows;
            let mut seats: Vec<u16> = rows.iter().map(|row| row.seat.0).collect();
            seats.sort_unstable();
            seats.dedup();
            self.kept.try_set((rows.len(), seats.len()));
            if !some {
                return;
            }
            if let Err(fault) = kept::keep_hand_ins(&id, &collected.keep) {
                self.fault.try_set(Some(fault.to_string()));
            }
            let read: Vec<Read> = collected.new.iter().map(Read::of).collect();
            self.say(some, outcomes::tally(&read));
            self.read.try_set(read);
        });
    }

    fn say(self, aloud: bool, sentence: String) {
        if aloud {
            self.announcer.say(sentence);
        }
    }

    /// Reads files, each of lines.
    fn take_files(self, files: Vec<web_sys::File>) {
        spawn_local(async move {
            let mut lines = Vec::new();
            for file in files {
                if file.size() > MOST {
                    let says = format!(
                        "The file “{}” is larger than any such file can be, and was not read.",
                        file.name()
                    );
                    self.fault.try_set(Some(says));
                    continue;
                }
                match files::read(&file).await {
                    Ok(bytes) => lines.extend(lines_of(&String::from_utf8_lossy(&bytes))),
                    Err(says) => {
                        self.fault.try_set(Some(says));
                    }
                }
            }
            self.take(lines);
        });
    }
}

/// The lines of a text that have something on them.
fn lines_of(text: &str) -> Vec<String> {
    let lines = text.lines().map(str::trim);
    lines
        .filter(|line| !line.is_empty())
        .map(str::to_owned)
        .collect()
}

/// The ways in.
#[component]
fn Ingoing(reader: Reader) -> impl IntoView {
    let pasted = RwSignal::new(String::new());
    let over = RwSignal::new(false);
    let paste = move |_| {
        let lines = pasted.with_untracked(|text| lines_of(text));
        if !lines.is_empty() {
            pasted.set(String::new());
            reader.take(lines);
        }
    };
    let chosen = move |event: web_sys::Event| reader.take_files(files::given(&event));
    let dropped = move |event: web_sys::DragEvent| {
        event.prevent_default();
        over.set(false);
        reader.take_files(files::given(&event));
    };
    view! {
        <div class="dk-ways-in">
            <section
                class="dk-drop"
                class:dk-over=move || over.get()
                data-test="drop"
                on:dragover=move |event| {
                    event.prevent_default();
                    over.set(true);
                }
                on:dragleave=move |_| over.set(false)
                on:drop=dropped
            >
                <h2 class="stage-label">"Files"</h2>
                <p>"Drop as many files as you like here, or choose them."</p>
                <label class="button file-button">
                    <input type="file" multiple class="unseen" data-test="hand-in-files" on:change=chosen />
                    "Choose files"
                </label>
            </section>
            <section class="dk-paste">
                <h2 class="stage-label">"Links or codes"</h2>
                <label class="field">
                    <span>"Paste them here, one a line"</span>
                    <textarea
                        rows="4"
                        spellcheck="false"
                        data-test="hand-in-lines"
                        prop:value=move || pasted.get()
                        on:input=move |event| pasted.set(event_target_value(&event))
                    ></textarea>
                </label>
                <button type="button" class="button" data-test="read-lines" on:click=paste>
                    "Read them"
                </button>
            </section>
            <scanner::Scanner reader />
        </div>
    }
}

//! What reads hand-ins to one assignment, one heap after another: a symbol that
//! is seen while a file is being read waits for its turn.

use super::{
    super::{
        grading::{self, Going},
        kept,
    },
    outcomes::{self, Read},
};
use crate::{
    browser::files,
    parts::announce::{Announcer, announcer},
};
use class::assignment::Assignment;
use clinic::Clinic;
use leptos::{prelude::*, task::spawn_local};
use std::rc::Rc;

/// The most bytes of one file: far more than a class hands in.
const MOST: f64 = 64.0 * 1024.0 * 1024.0;

/// The most lines that are read at once: ten times a very large class.
const MOST_LINES: usize = 100_000;

/// What reads hand-ins. Cheap to copy.
#[derive(Clone, Copy)]
pub struct Reader {
    /// The id of the assignment.
    pub id: StoredValue<String>,
    assignment: StoredValue<Assignment, LocalStorage>,
    clinic: StoredValue<Rc<Clinic>, LocalStorage>,
    /// How far it is.
    pub going: Going,
    /// How many hand-ins are kept, of how many seats.
    pub kept: RwSignal<(usize, usize)>,
    /// What became of the lines that were read last.
    pub read: RwSignal<Vec<Read>>,
    /// What stands in the way, or was stopped.
    pub fault: RwSignal<Option<String>>,
    /// Lines that wait; none where nothing does.
    waiting: StoredValue<Option<Vec<String>>>,
    busy: StoredValue<bool>,
    announcer: Announcer,
}

impl Reader {
    /// One that has counted nothing yet.
    pub fn new(id: String, assignment: Assignment, clinic: Rc<Clinic>) -> Self {
        grading::prepare(&assignment);
        let reader = Self {
            id: StoredValue::new(id),
            assignment: StoredValue::new_local(assignment),
            clinic: StoredValue::new_local(clinic),
            going: Going::new(),
            kept: RwSignal::new((0, 0)),
            read: RwSignal::new(Vec::new()),
            fault: RwSignal::new(None),
            waiting: StoredValue::new(None),
            busy: StoredValue::new(false),
            announcer: announcer(),
        };
        // What is kept is counted by reading it.
        reader.take(Vec::new());
        reader
    }

    /// Reads lines, and keeps those that are hand-ins.
    pub fn take(self, mut new: Vec<String>) {
        if new.len() > MOST_LINES {
            let says = format!(
                "More than {MOST_LINES} lines came at once. The first of them are read; read the others from a file of their own."
            );
            new.truncate(MOST_LINES);
            self.fault.try_set(Some(says));
        }
        let waited = self.waiting.try_update_value(|waiting| {
            waiting.get_or_insert_default().extend(new);
        });
        let busy = self
            .busy
            .try_update_value(|busy| std::mem::replace(busy, true));
        if waited.is_some() && busy == Some(false) {
            spawn_local(async move {
                while let Some(new) = self.waiting.try_update_value(Option::take).flatten() {
                    self.read_all(new).await;
                }
                self.busy.try_set_value(false);
            });
        }
    }

    async fn read_all(self, new: Vec<String>) {
        let (Some(assignment), Some(clinic), Some(id)) = (
            self.assignment.try_get_value(),
            self.clinic.try_get_value(),
            self.id.try_get_value(),
        ) else {
            return;
        };
        let before = match kept::hand_ins(&id) {
            Ok(lines) => lines,
            Err(fault) => {
                self.fault.try_set(Some(fault.to_string()));
                Vec::new()
            }
        };
        let some = !new.is_empty();
        let clinic = clinic.with_card(clinic.card().cloned());
        let read = grading::read(&assignment, clinic, before, new, self.going).await;
        let Some(collected) = read else {
            self.stopped(some);
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
        self.announcer.say(outcomes::tally(&read));
        self.read.try_set(read);
        grading::remember(id, collected.keep, Rc::new(collected.table));
    }

    /// Says that nothing came of it; what waits was meant to be stopped too.
    fn stopped(self, aloud: bool) {
        self.waiting.try_set_value(None);
        if aloud && self.fault.try_get_untracked().is_some() {
            let says = "Stopped. Nothing was changed.";
            self.announcer.say(says);
            self.fault.try_set(Some(says.into()));
        }
    }

    /// Reads files, each of lines.
    pub fn take_files(self, files: Vec<web_sys::File>) {
        self.fault.try_set(None);
        spawn_local(async move {
            let (mut lines, count) = (Vec::new(), files.len());
            self.going.begin(count);
            for (at, file) in files.into_iter().enumerate() {
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
                if !self.going.breathe(at + 1, count).await {
                    self.going.end();
                    return self.stopped(true);
                }
            }
            self.going.end();
            if !lines.is_empty() {
                self.take(lines);
            }
        });
    }
}

/// The lines of a text that have something on them, and one more than is read
/// at once at the most.
pub fn lines_of(text: &str) -> Vec<String> {
    let lines = text.lines().map(str::trim);
    lines
        .filter(|line| !line.is_empty())
        .take(MOST_LINES + 1)
        .map(str::to_owned)
        .collect()
}

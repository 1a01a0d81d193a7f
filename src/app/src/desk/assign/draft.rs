//! What is being chosen.

use super::super::kept;
use crate::assignments::bank;
use class::assignment::{Assignment, MOST_TASKS, MOST_TIMES, Set};
use leptos::prelude::*;

/// What is being chosen. Cheap to copy; every copy is the same.
#[derive(Clone, Copy)]
pub struct Draft(RwSignal<Assignment, LocalStorage>);

impl Draft {
    /// Takes up what was being chosen, or begins.
    pub fn open() -> Self {
        let draft = kept::draft().unwrap_or_else(|| Assignment {
            bank: bank().version,
            title: next_title(),
            seed: 0,
            due: None,
            pass_mark: 75,
            tries: 1,
            hints: false,
            alike: false,
            card: None,
            tasks: Vec::new(),
        });
        Self(RwSignal::new_local(draft))
    }

    /// As it is now.
    pub fn get(self) -> Assignment {
        self.0.get_untracked()
    }

    /// A part of it, followed.
    pub fn memo<T>(self, part: impl Fn(&Assignment) -> T + Send + Sync + 'static) -> Memo<T>
    where
        T: PartialEq + Send + Sync + 'static,
    {
        Memo::new(move |_| self.0.with(&part))
    }

    /// Changes it, and keeps it.
    pub fn change(self, change: impl FnOnce(&mut Assignment)) {
        self.0.update(change);
        self.0.with_untracked(kept::keep_draft);
    }

    /// Puts a task in; the same task once more raises how often it is set.
    /// False where there is no room.
    pub fn put_in(self, set: Set) -> bool {
        let mut done = true;
        self.change(|draft| {
            let room = draft.tasks.len() < MOST_TASKS;
            match draft.tasks.iter_mut().find(|it| it.task == set.task) {
                Some(known) if known.times.saturating_add(set.times) <= MOST_TIMES => {
                    known.times += set.times;
                }
                None if room => draft.tasks.push(set),
                _ => done = false,
            }
        });
        done
    }
}

/// The number after those of the assignments that were set.
fn next_title() -> u8 {
    let sets = kept::sets().unwrap_or_default();
    let titles = sets
        .iter()
        .filter_map(|set| Some(set.assignment.as_ref().ok()?.title));
    titles.max().unwrap_or(0).saturating_add(1)
}

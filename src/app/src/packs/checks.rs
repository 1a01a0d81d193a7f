//! A pack held to the checks of content, over the built-in sources and beside
//! the other packs in use: the same reader, the same messages.

use super::{kept, used};
use crate::browser::breath;
use catalogue::source::{Fault, Files};
use class::pack::{
    self, Pack,
    over::{self, Over},
};
use leptos::prelude::*;
use std::rc::Rc;

/// What came of the checks.
#[derive(Clone)]
pub enum Outcome {
    /// They wait for something.
    Awaited,
    /// They are under way.
    Running,
    /// Nothing is wrong. What the pack makes of the catalogue is at hand.
    Passed(Rc<Over>),
    /// What is wrong, each with its place.
    Faulty(Vec<Fault>),
}

/// The checks of one pack, run again whenever asked to.
#[derive(Clone, Copy)]
pub struct Checks {
    outcome: RwSignal<Outcome, LocalStorage>,
    /// What the pack made of the catalogue when it last passed.
    known: RwSignal<Option<Rc<Over>>, LocalStorage>,
    asked: StoredValue<u32>,
}

impl Checks {
    /// No checks yet.
    pub fn new() -> Self {
        Self {
            outcome: RwSignal::new_local(Outcome::Awaited),
            known: RwSignal::new_local(None),
            asked: StoredValue::new(0),
        }
    }

    /// What came of them, for reading in a view.
    pub fn outcome(self) -> Outcome {
        self.outcome.get()
    }

    /// Whether the last ones found nothing wrong, for reading in a view.
    pub fn passed_now(self) -> bool {
        self.outcome
            .with(|outcome| matches!(outcome, Outcome::Passed(_)))
    }

    /// What the pack makes of the catalogue, where the last ones found nothing wrong.
    pub fn passed(self) -> Option<Rc<Over>> {
        self.outcome.with_untracked(|outcome| match outcome {
            Outcome::Passed(over) => Some(Rc::clone(over)),
            _ => None,
        })
    }

    /// What the pack made of the catalogue when the checks last found nothing
    /// wrong, for reading in a view: a fault does not take it away.
    pub fn known(self) -> Option<Rc<Over>> {
        self.known.get()
    }

    /// Runs them once the browser has drawn what is there. Where they are asked
    /// for again before, only the last counts.
    pub fn run(self, files: &'static Files, pack: Pack) {
        let turn = self.asked.with_value(|asked| asked + 1);
        self.asked.set_value(turn);
        leptos::task::spawn_local(async move {
            if self.outcome.try_set(Outcome::Running).is_some() {
                return;
            }
            breath::take().await;
            breath::take().await;
            if self.asked.try_get_value() != Some(turn) {
                return;
            }
            let outcome = match with_others(files, &pack) {
                Ok(over) => {
                    let over = Rc::new(over);
                    let _ = self.known.try_set(Some(Rc::clone(&over)));
                    Outcome::Passed(over)
                }
                Err(faults) => Outcome::Faulty(faults),
            };
            let _ = self.outcome.try_set(outcome);
        });
    }
}

/// A pack over the built-in sources, beside the other packs in use.
pub fn with_others(files: &Files, pack: &Pack) -> Result<Over, Vec<Fault>> {
    let texts = used::texts();
    let read = texts.iter().filter_map(|it| pack::read(it.as_bytes()).ok());
    let others: Vec<Pack> = read.filter(|other| other.id() != pack.id()).collect();
    let mut all: Vec<&Pack> = others.iter().collect();
    all.push(pack);
    match over::read(files, &all) {
        // Another pack in use may be at fault by itself: it is set aside when
        // the page opens, so it does not stand in the way of this one.
        Err(faults) if !others.is_empty() && over::read(files, &all[..all.len() - 1]).is_err() => {
            over::read(files, &[pack]).map_err(|own| if own.is_empty() { faults } else { own })
        }
        read => read,
    }
}

/// Whether a pack is in use exactly as it is here.
pub fn is_in_use(pack: &Pack) -> bool {
    kept::in_use(pack.id()).is_some_and(|used| used.checksum() == pack.checksum())
}

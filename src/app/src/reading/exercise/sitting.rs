//! A sitting at a drawn tray, read from the record.

use crate::{
    browser::{clock, focus, scroll},
    cases::{Sought, answered},
    log::{OpenLog, log},
};
use clinic::case::{Decision, Grade, TrayReading, overall, tray_reading::CASE};
use leptos::prelude::*;
use record::{CaseFinished, CaseStarted, PerCent, SittingId, What, folds};
use std::sync::Arc;

/// A sitting. Cheap to copy; every copy is the same sitting.
#[derive(Clone, Copy)]
pub struct Sitting {
    exercise: StoredValue<Arc<TrayReading>>,
    log: OpenLog,
    kept: Memo<Option<folds::Sitting>>,
    since: StoredValue<i64>,
}

impl Sitting {
    /// Takes up the sitting where the record has it.
    pub fn open(exercise: TrayReading) -> Self {
        let log = log();
        let sought = Sought::new(CASE, exercise.seed, None);
        Self {
            exercise: StoredValue::new(Arc::new(exercise)),
            log,
            kept: log.memo(move |events| sought.latest(events)),
            since: StoredValue::new(clock::now().utc_ms),
        }
    }

    /// The exercise.
    pub fn exercise(self) -> Arc<TrayReading> {
        self.exercise.get_value()
    }

    /// The question that waits for its answer; none when all are answered.
    pub fn scene(self) -> Memo<Option<usize>> {
        Memo::new(move |_| {
            let exercise = self.exercise();
            self.kept.with(|kept| {
                let answered = |decision: &Decision| {
                    kept.as_ref()
                        .is_some_and(|it| it.answer_to(&decision.id).is_some())
                };
                exercise.decisions.iter().position(|it| !answered(it))
            })
        })
    }

    /// The answer that was given to a question, and how it was judged.
    pub fn answer(self, at: usize) -> (Option<String>, Grade) {
        let exercise = self.exercise();
        let decision = &exercise.decisions[at];
        let answer = self.kept.with_untracked(|kept| {
            let given = kept.as_ref().and_then(|it| it.answer_to(&decision.id));
            given.map_or_else(Vec::new, |it| it.answer.clone())
        });
        let grade = decision.grade(&answer);
        (answer.into_iter().next(), grade)
    }

    /// What the sitting came to, in per cent.
    pub fn per_cent(self) -> u8 {
        let count = self.exercise().decisions.len();
        let marks: Vec<u8> = (0..count).map(|at| self.answer(at).1.per_cent).collect();
        overall(&marks)
    }

    /// Gives an answer. The first begins the sitting, the last ends it.
    pub fn give(self, at: usize, answer: String) {
        let exercise = self.exercise();
        let decision = &exercise.decisions[at];
        let sitting = self.id().unwrap_or_else(|| self.begin());
        let now = clock::now().utc_ms;
        let seconds = (now - self.since.get_value()) / 1000;
        self.since.set_value(now);
        let seconds = u32::try_from(seconds).unwrap_or(0);
        let answered = answered(sitting, decision, vec![answer], seconds);
        self.log.append(What::CaseAnswered(answered));
        if at + 1 == exercise.decisions.len() {
            self.log.append(What::CaseFinished(CaseFinished {
                sitting,
                per_cent: PerCent::of(self.per_cent()),
            }));
        }
    }

    /// Begins a sitting, the first or another one.
    pub fn begin(self) -> SittingId {
        let sitting = self.log.new_sitting();
        self.since.set_value(clock::now().utc_ms);
        self.log.append(What::CaseStarted(CaseStarted {
            sitting,
            case: CASE.into(),
            seed: self.exercise().seed,
            with: None,
            card: None,
        }));
        sitting
    }

    /// The sitting, once it has begun.
    pub fn id(self) -> Option<SittingId> {
        self.kept
            .with_untracked(|kept| kept.as_ref().map(|it| it.id))
    }
}

/// A new question begins at its top, with focus on what it is about.
pub fn arrive() {
    scroll::to_top();
    focus::first("#main .question");
}

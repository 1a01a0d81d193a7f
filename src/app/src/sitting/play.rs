//! A sitting under way, as the page holds it. Nothing here judges an answer;
//! the question does.

use super::queue::{self, Showing};
use crate::{
    browser::{clock, storage::BrowserStore},
    log::{OpenLog, log},
    questions::{Draft, Kept, Questions, judged},
};
use leptos::prelude::*;
use record::{
    QuestionAnswered, SittingEnded, SittingId, Store, What,
    folds::{self, Study},
};
use std::sync::Arc;
use study::{numeric::hash, question::Question};

/// What is on screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Scene {
    /// A question waits for its answer.
    Ask(Showing),
    /// The last answer is explained; so many answers were given.
    Explain(usize),
    /// The sitting is over.
    Ended,
    /// There is no such sitting.
    Unknown,
}

/// A sitting. Cheap to copy; every copy is the same sitting.
#[derive(Clone, Copy)]
pub struct Play {
    id: SittingId,
    questions: Questions,
    log: OpenLog,
    study: Memo<Option<Study>>,
    /// How many answers the student has seen explained.
    seen: RwSignal<usize>,
    /// The answer as it stands.
    pub draft: RwSignal<Draft>,
    /// Seconds spent on the question in earlier visits.
    before: StoredValue<u32>,
    since: StoredValue<i64>,
}

/// A pause at the door must not make an answer slow: no question takes longer.
const LONGEST: u32 = 600;

impl Play {
    /// Takes up a sitting where the record and its draft have it.
    pub fn open(id: SittingId, questions: Questions) -> Self {
        let log = log();
        let study = log.memo(move |events| folds::study(events, id));
        let given = study.with_untracked(|it| it.as_ref().map_or(0, |it| it.answers.len()));
        let kept = BrowserStore.get(&Kept::key(id)).ok().flatten();
        let kept = kept.and_then(|text| Kept::read(&text));
        let kept = kept.filter(|kept| kept.at <= given).unwrap_or(Kept {
            at: given,
            ..Kept::default()
        });
        let play = Self {
            id,
            questions,
            log,
            study,
            seen: RwSignal::new(kept.at),
            draft: RwSignal::new(kept.draft),
            before: StoredValue::new(kept.seconds),
            since: StoredValue::new(clock::now().utc_ms),
        };
        Effect::new(move |_| {
            play.draft.track();
            play.seen.track();
            play.keep();
        });
        play
    }

    /// All questions.
    pub fn questions(self) -> Questions {
        self.questions
    }

    /// What is on screen.
    pub fn scene(self) -> Memo<Scene> {
        Memo::new(move |_| {
            let questions = self.questions;
            self.study.with(|study| {
                let Some(study) = study else {
                    return Scene::Unknown;
                };
                if study.ended.is_some() {
                    return Scene::Ended;
                }
                let answers = answered(study);
                if self.seen.get() < answers.len() {
                    return Scene::Explain(answers.len());
                }
                queue::next(&study.questions, &answers, |id| is_taught(questions, id))
                    .map_or(Scene::Ended, Scene::Ask)
            })
        })
    }

    /// The sitting as the record has it.
    pub fn study(self) -> Option<Study> {
        self.study.get_untracked()
    }

    /// How many showings are done, of how many.
    pub fn progress(self) -> (usize, usize) {
        let questions = self.questions();
        self.study.with(|study| {
            study.as_ref().map_or((0, 0), |study| {
                let answers = answered(study);
                queue::progress(&study.questions, &answers, |id| is_taught(questions, id))
            })
        })
    }

    /// The seed of the wording of a showing: the same after every reload.
    fn wording(self, showing: &Showing) -> u64 {
        let again = u8::from(showing.again);
        hash(&format!("{}/{}/{again}", self.id, showing.question))
    }

    /// A question in the wording of its showing.
    pub fn write(self, showing: &Showing) -> Option<Arc<Question>> {
        let wording = self.wording(showing);
        let question = self.questions().write(&showing.question, wording);
        // A wording that cannot be written falls back on the first one.
        question
            .or_else(|| self.questions().write(&showing.question, 0))
            .map(Arc::new)
    }

    /// Gives the answer as it stands, and records how it was judged.
    pub fn give(self, showing: &Showing, question: &Question) {
        let draft = self.draft.get_untracked();
        let Some(answer) = draft.answer(&question.form) else {
            return;
        };
        let wording = self.wording(showing);
        self.log.append(What::QuestionAnswered(QuestionAnswered {
            hint: draft.hint,
            unsure: draft.unsure,
            ..judged(question, wording, answer, self.id, self.seconds())
        }));
    }

    /// Goes on after an explanation, to the next question or to the end.
    pub fn go_on(self) {
        let given = self
            .study
            .with_untracked(|it| it.as_ref().map_or(0, |it| it.answers.len()));
        self.before.set_value(0);
        self.since.set_value(clock::now().utc_ms);
        self.draft.set(Draft::default());
        self.seen.set(given);
        let questions = self.questions();
        let over = self.study.with_untracked(|study| {
            study.as_ref().is_some_and(|study| {
                let answers = answered(study);
                queue::next(&study.questions, &answers, |id| is_taught(questions, id)).is_none()
            })
        });
        if over {
            self.end();
        }
    }

    /// Ends the sitting here. What was answered stays answered.
    pub fn end(self) {
        let open = self
            .study
            .with_untracked(|it| it.as_ref().is_some_and(|it| it.ended.is_none()));
        if open {
            self.log
                .append(What::SittingEnded(SittingEnded { sitting: self.id }));
        }
        // A draft that cannot be removed is never read again.
        let _ = BrowserStore.remove(&Kept::key(self.id));
    }

    fn seconds(self) -> u32 {
        let here = (clock::now().utc_ms - self.since.get_value()).max(0) / 1000;
        let here = u32::try_from(here).unwrap_or(0);
        self.before.get_value().saturating_add(here).min(LONGEST)
    }

    /// Keeps the draft. Where the storage is full or forbidden the page has
    /// said so already, and goes on in memory.
    pub fn keep(self) {
        let open = self
            .study
            .with_untracked(|it| it.as_ref().is_some_and(|it| it.ended.is_none()));
        if open {
            let kept = Kept {
                at: self.seen.get_untracked(),
                seconds: self.seconds(),
                draft: self.draft.get_untracked(),
            };
            let _ = BrowserStore.put(&Kept::key(self.id), &kept.write());
        }
    }
}

fn answered(study: &Study) -> Vec<(String, bool)> {
    let right = |answer: &QuestionAnswered| answer.verdict == record::Verdict::Right;
    let answers = study.answers.iter();
    answers.map(|it| (it.question.clone(), right(it))).collect()
}

fn is_taught(questions: Questions, id: &str) -> bool {
    questions.items().place(id).is_some()
}

//! A form under way, as the page holds it.

use super::time;
use crate::{
    browser::{address::Address, clock, storage::BrowserStore},
    log::{OpenLog, log},
    place::{FormSide, Place},
    questions::{Draft, Kept, Questions, answer, judged},
};
use class::forms;
use leptos::prelude::*;
use record::{
    FormFinished, FormFlagged, FormPaused, SittingId, Store, What,
    folds::{self, Form},
};
use std::{cell::Cell, sync::Arc};
use study::question::{Answer, Question};

/// What is on screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scene {
    /// There is no such form.
    Unknown,
    /// It rests.
    Paused,
    /// All its questions.
    Whole,
    /// The question at this place waits for its answer.
    Ask(usize),
    /// The result.
    Result,
    /// The question at this place, looked back on.
    Look(usize),
}

/// A form. Cheap to copy; every copy is the same form.
#[derive(Clone, Copy)]
pub struct Run {
    /// Which form.
    pub id: SittingId,
    questions: Questions,
    log: OpenLog,
    address: Address,
    form: Memo<Option<Form>>,
    /// That the time ran on while the form lay closed; nothing where it did not.
    away: StoredValue<Option<String>>,
}

thread_local! {
    /// The form that was on screen last in this page, and until when.
    static LEFT: Cell<Option<(SittingId, i64)>> = const { Cell::new(None) };
}

/// Going from one question to the next is no absence, in milliseconds.
const TURNING: i64 = 5000;

impl Run {
    /// Takes up a form where the record has it. One whose time has run out in
    /// the meantime is handed in.
    pub fn open(id: SittingId, questions: Questions) -> Self {
        let log = log();
        let run = Self {
            id,
            questions,
            log,
            address: expect_context(),
            form: log.memo(move |events| folds::form(events, id)),
            away: StoredValue::new(None),
        };
        let now = clock::now();
        let turned = |(form, until)| form == id && now.utc_ms - until < TURNING;
        if !LEFT.get().is_some_and(turned) {
            run.away.set_value(
                run.form
                    .with_untracked(|form| time::away(form.as_ref()?, now)),
            );
        }
        on_cleanup(move || LEFT.set(Some((id, clock::now().utc_ms))));
        if run.left() == Some(0) {
            run.finish();
        }
        run
    }

    /// All questions.
    pub fn questions(self) -> Questions {
        self.questions
    }

    /// The form as the record has it, followed.
    pub fn form(self) -> Option<Form> {
        self.form.get()
    }

    /// The form as the record has it now.
    pub fn now(self) -> Option<Form> {
        self.form.get_untracked()
    }

    /// What is on screen on a side of the form.
    pub fn scene(self, side: FormSide) -> Memo<Scene> {
        Memo::new(move |_| {
            self.form.with(|form| {
                let Some(form) = form else {
                    return Scene::Unknown;
                };
                let at = match side {
                    FormSide::Whole => None,
                    FormSide::Question(number) => Some(usize::from(number.max(1)) - 1),
                };
                let at = at.filter(|at| *at < form.begun.questions.len());
                match (form.finished.is_some(), form.is_paused(), at) {
                    (true, _, None) => Scene::Result,
                    (true, _, Some(at)) => Scene::Look(at),
                    (false, true, _) => Scene::Paused,
                    (false, false, None) => Scene::Whole,
                    (false, false, Some(at)) => Scene::Ask(at),
                }
            })
        })
    }

    /// That the time ran on while the form lay closed.
    pub fn away(self) -> Option<String> {
        self.away.get_value()
    }

    /// Seconds left; none where it is untimed or handed in.
    pub fn left(self) -> Option<u32> {
        self.form.with_untracked(|form| {
            let form = form.as_ref().filter(|form| form.finished.is_none())?;
            time::left(form, clock::now())
        })
    }

    /// The id of the question at a place.
    pub fn question_id(self, at: usize) -> String {
        self.form.with_untracked(|form| {
            let questions = form.as_ref().map(|form| &form.begun.questions);
            let id = questions.and_then(|all| all.get(at));
            id.cloned().unwrap_or_default()
        })
    }

    /// The seed of the wording: one for all who have the code.
    fn wording(self, question: &str) -> u64 {
        let code = self.form.with_untracked(|form| {
            let form = form.as_ref();
            form.and_then(|form| form.begun.code.clone())
        });
        let code = code.unwrap_or_else(|| self.id.to_string());
        forms::wording(&code, question)
    }

    /// The question at a place; nothing where its fact is no longer taught.
    pub fn write(self, at: usize) -> Option<Arc<Question>> {
        let id = self.question_id(at);
        let written = self.questions().write(&id, self.wording(&id));
        written
            .or_else(|| self.questions().write(&id, 0))
            .map(Arc::new)
    }

    /// The answer that was given to the question at a place.
    pub fn answer(self, at: usize) -> Option<Answer> {
        let id = self.question_id(at);
        self.form.with_untracked(|form| {
            let given = form.as_ref()?.answers.get(&id)?;
            answer(&given.answer)
        })
    }

    /// The draft of the question at a place: as it was kept, or else the answer
    /// that was given. What was kept of another question is given first.
    pub fn take_up(self, at: usize) -> Kept {
        let kept = BrowserStore.get(&Kept::key(self.id)).ok().flatten();
        match kept.and_then(|text| Kept::read(&text)) {
            Some(kept) if kept.at == at => kept,
            other => {
                if let Some(other) = other {
                    self.give(other.at, &other.draft, other.seconds);
                }
                Kept {
                    at,
                    seconds: 0,
                    draft: Draft::of(self.answer(at)),
                }
            }
        }
    }

    /// Keeps what of an answer is there.
    pub fn keep(self, kept: &Kept) {
        let _ = BrowserStore.put(&Kept::key(self.id), &kept.write());
    }

    /// Gives an answer, where there is one that is not the one given before.
    pub fn give(self, at: usize, draft: &Draft, seconds: u32) {
        let open = self
            .form
            .with_untracked(|form| form.as_ref().is_some_and(|form| form.finished.is_none()));
        let Some(question) = self.write(at).filter(|_| open) else {
            return;
        };
        let Some(answer) = draft.answer(&question.form) else {
            return;
        };
        if self.answer(at).as_ref() == Some(&answer) {
            return;
        }
        let id = self.question_id(at);
        let before = self.form.with_untracked(|form| {
            let given = form.as_ref().and_then(|form| form.answers.get(&id));
            given.map_or(0, |given| given.seconds)
        });
        let (wording, seconds) = (self.wording(&id), before.saturating_add(seconds));
        let judged = judged(&question, wording, answer, self.id, seconds);
        self.log.append(What::QuestionAnswered(judged));
    }

    /// Whether the question at a place is flagged.
    pub fn is_flagged(self, at: usize) -> bool {
        let id = self.question_id(at);
        self.form
            .with(|form| form.as_ref().is_some_and(|form| form.flagged.contains(&id)))
    }

    /// Flags a question, or takes the flag away.
    pub fn flag(self, at: usize, flagged: bool) {
        self.log.append(What::FormFlagged(FormFlagged {
            form: self.id,
            question: self.question_id(at),
            flagged,
        }));
    }

    /// Pauses the form, or goes on with it.
    pub fn pause(self, paused: bool) {
        self.log.append(What::FormPaused(FormPaused {
            form: self.id,
            paused,
        }));
    }

    /// Hands the form in, with what was kept of an answer.
    pub fn finish(self) {
        let kept = BrowserStore.get(&Kept::key(self.id)).ok().flatten();
        if let Some(kept) = kept.and_then(|text| Kept::read(&text)) {
            self.give(kept.at, &kept.draft, kept.seconds);
        }
        self.log
            .append(What::FormFinished(FormFinished { form: self.id }));
        let _ = BrowserStore.remove(&Kept::key(self.id));
    }

    /// Where the question at a place is, or the whole form past the last one.
    pub fn place(self, at: usize) -> Place {
        let count = self
            .form
            .with_untracked(|form| form.as_ref().map_or(0, |form| form.begun.questions.len()));
        let number = u16::try_from(at + 1).unwrap_or(0);
        let side = if at < count {
            FormSide::Question(number)
        } else {
            FormSide::Whole
        };
        Place::Form(self.id, side)
    }

    /// Where the whole form is.
    pub fn whole(self) -> Place {
        Place::Form(self.id, FormSide::Whole)
    }

    /// Goes to a place.
    pub fn go(self, place: Place) {
        self.address.go(place);
    }
}

//! Questions: what one is, and how an answer to it is graded.
//!
//! A question is written from the facts of the catalogue by one of the
//! [`families`](crate::families). Nothing in it is typed as an answer key: what
//! is right and what is wrong was asked of the catalogue and of `clinic` when
//! the question was written, and grading only compares.

mod answer;
mod bank;
mod estimate;
mod form;
mod id;
mod measured;

pub use answer::{Answer, Verdict};
pub use bank::{Bank, VANISHED};
pub use form::{Choice, Form, Piece};
pub use id::QuestionId;
pub use measured::measured;

pub(crate) use estimate::estimate;

use catalogue::{
    cases::Level,
    ids::{CompetencyId, ItemId, LessonId, ProcedureId},
};
use clinic::Reason;

/// One question, in one wording.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// The fact it asks about, by its family.
    pub id: QuestionId,
    /// The id of its family.
    pub family: &'static str,
    /// The competency it shows.
    pub competency: CompetencyId,
    /// How hard it is, in one of three words.
    pub level: Level,
    /// How hard it is, in logits: 0 is a question that a student of middling
    /// ability gets right half the time. An estimate of our own from the form
    /// and from how close the wrong options are, until answers say otherwise.
    pub difficulty: f64,
    /// How long reading and answering take an unhurried student, in seconds; an
    /// estimate of our own.
    pub seconds: u32,
    /// What is asked.
    pub stem: String,
    /// What is shown with it.
    pub shown: Shown,
    /// What can be answered.
    pub form: Form,
    /// Why the right answer is right, and who says so.
    pub reasons: Vec<Reason>,
    /// What to study next.
    pub study: Vec<Study>,
}

/// What a question shows beside its stem.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shown {
    /// Nothing.
    Nothing,
    /// Items that lie there, by name and drawing.
    Items(Vec<ItemId>),
    /// The drawing of an item without its name. Labels and engraved numbers of
    /// the drawing are left away too, because they would answer the question.
    Drawing(ItemId),
    /// Lines of a chart or of a mix.
    Lines(Vec<String>),
}

/// Something to study next.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Study {
    /// A lesson.
    Lesson(LessonId),
    /// A procedure, with its lesson and its set-up.
    Procedure(ProcedureId),
    /// An instrument or a material.
    Item(ItemId),
}

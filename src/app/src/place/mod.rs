//! Every place of the page, and its name in the address: `#/procedures/amalgam`.
//!
//! The fragment is the only state of navigation, so Back, a bookmark and a
//! reload all lead to the same screen.

mod class;
mod packs;
mod query;
mod read;
mod section;
#[cfg(test)]
mod tests;
mod view;
mod write;

pub use class::{ClassPlace, HAND_IN, SET};
pub use packs::{FileSide, WritePlace};
pub use section::Section;
pub use view::{Drawn, FormSide, SittingAt, View};

use crate::tray_card::Paper;
use catalogue::ids::{CardId, CaseId, FindingId, ItemId, LessonId, ProcedureId, TermId};
use clinic::case::tray_reading;
use record::SittingId;

/// Findings a reader supposes of the patient, as `finding=value`.
pub type Supposed = Vec<(FindingId, String)>;

/// A place of the page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    /// What is due and what comes next.
    Today,
    /// All procedures and lessons.
    Procedures,
    /// One procedure, for a supposed patient.
    Procedure(ProcedureId, View, Supposed),
    /// All instruments and materials.
    Items,
    /// One instrument or material.
    Item(ItemId),
    /// All drawings, small, family by family.
    AllPlates,
    /// The drawings of a family, by its name with hyphens; whether the names
    /// are hidden.
    Plates(String, bool),
    /// Drawings at life size, to be printed.
    LifeSize(Drawn),
    /// One lesson.
    Lesson(LessonId),
    /// The tray card of a procedure for a supposed patient, on a paper.
    TrayCard(ProcedureId, Paper, Supposed),
    /// What is found for some words.
    Find(String),
    /// All words of the trade.
    Glossary,
    /// One word of the trade.
    Term(TermId),
    /// All cases.
    Cases,
    /// A case to order.
    Order,
    /// One case, drawn by its seed, with a finding the patient has to have.
    Case(CaseId, u64, Option<FindingId>),
    /// A tray to be read, with what lies on it.
    Reading(Vec<ItemId>),
    /// A drawn tray to be read, by its seed.
    ReadingExercise(u64),
    /// All preference cards.
    Cards,
    /// One card, as a difference from one procedure for a supposed patient.
    Card(CardId, Option<ProcedureId>, Supposed),
    /// A wish to be added to a card.
    Wish(CardId),
    /// A sitting of questions.
    Sitting(SittingAt),
    /// The examination day and the minutes a day.
    Plan,
    /// All practice forms; with the code of one to be begun.
    Forms(String),
    /// One practice form.
    Form(SittingId, FormSide),
    /// All families of questions.
    Questions,
    /// The questions of one family.
    QuestionFamily(String),
    /// How the student stands, by competency and over time.
    Progress,
    /// The bench.
    Bench,
    /// A material to be mixed by hand, for its usual use or a named one.
    Mix(ItemId, Option<String>),
    /// All tools for numbers.
    Tools,
    /// One of them, by its id, with what was entered.
    Tool(String, Vec<(String, String)>),
    /// An exercise in numbers, by its family and seed.
    Exercise(String, u64),
    /// A place of a class, of the student or the instructor.
    Class(ClassPlace),
    /// What was done.
    Record,
    /// What this is.
    About,
    /// An address that leads nowhere.
    Unknown(String),
}

impl Place {
    /// What names the case that a tool was opened from, among its entries.
    pub const FROM_CASE: &str = "case";

    /// Where a sitting of the record is gone on with or looked back on.
    pub fn of_sitting(case: &str, seed: u64, with: Option<&str>) -> Self {
        if case == tray_reading::CASE {
            Self::ReadingExercise(seed)
        } else {
            Self::Case(case.into(), seed, with.map(FindingId::from))
        }
    }

    /// Where a lesson is read: with its procedure, if it is the lesson of one.
    pub fn of_lesson(id: &LessonId, of_procedure: bool) -> Self {
        if of_procedure {
            Self::Procedure(id.as_str().into(), View::Lesson, Vec::new())
        } else {
            Self::Lesson(id.clone())
        }
    }

    /// The place without what may change while the reader stays on it. Two
    /// places with the same ground are one screen, and focus stays where it is.
    pub fn ground(&self) -> Self {
        match self {
            Self::Procedure(id, view, _) => Self::Procedure(id.clone(), *view, Vec::new()),
            Self::Reading(_) => Self::Reading(Vec::new()),
            Self::Card(id, ..) => Self::Card(id.clone(), None, Vec::new()),
            Self::TrayCard(id, ..) => Self::TrayCard(id.clone(), Paper::A4, Vec::new()),
            Self::Plates(family, _) => Self::Plates(family.clone(), false),
            Self::Find(_) => Self::Find(String::new()),
            Self::Tool(tool, _) => Self::Tool(tool.clone(), Vec::new()),
            other => other.clone(),
        }
    }
}

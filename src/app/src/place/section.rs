//! The five places of the bar, and which of them a place belongs to.

use super::Place;

/// The five places of the bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Section {
    /// What is due.
    Today,
    /// What is taught.
    Procedures,
    /// Patients to practise with.
    Cases,
    /// Mixing and arithmetic.
    Bench,
    /// What was done.
    Record,
}

impl Section {
    /// All of them, in the order of the bar.
    pub const ALL: [Self; 5] = [
        Self::Today,
        Self::Procedures,
        Self::Cases,
        Self::Bench,
        Self::Record,
    ];

    /// Its name.
    pub fn label(self) -> &'static str {
        match self {
            Self::Today => "Today",
            Self::Procedures => "Procedures",
            Self::Cases => "Cases",
            Self::Bench => "Bench",
            Self::Record => "Record",
        }
    }

    /// Where it opens.
    pub fn place(self) -> Place {
        match self {
            Self::Today => Place::Today,
            Self::Procedures => Place::Procedures,
            Self::Cases => Place::Cases,
            Self::Bench => Place::Bench,
            Self::Record => Place::Record,
        }
    }
}

impl Place {
    /// Which of the five places of the bar it belongs to.
    pub fn section(&self) -> Option<Section> {
        Some(match self {
            Self::Today | Self::Sitting(_) | Self::Plan | Self::Forms(_) | Self::Form(..) => {
                Section::Today
            }
            Self::Procedures
            | Self::Procedure(..)
            | Self::Items
            | Self::Item(_)
            | Self::AllPlates
            | Self::Plates(..)
            | Self::LifeSize(_)
            | Self::Lesson(_)
            | Self::TrayCard(..)
            | Self::Glossary
            | Self::Term(_)
            | Self::Cards
            | Self::Card(..)
            | Self::Wish(_) => Section::Procedures,
            Self::Cases
            | Self::Order
            | Self::Case(..)
            | Self::Reading(_)
            | Self::ReadingExercise(_) => Section::Cases,
            Self::Bench | Self::Mix(..) | Self::Tools | Self::Tool(..) | Self::Exercise(..) => {
                Section::Bench
            }
            Self::Record
            | Self::About
            | Self::Questions
            | Self::QuestionFamily(_)
            | Self::Progress => Section::Record,
            Self::Class(place) => place.section(),
            Self::Find(_) | Self::Unknown(_) => return None,
        })
    }
}

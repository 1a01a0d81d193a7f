//! Which side of a procedure, a drawing, a sitting or a form is shown.

use catalogue::ids::ItemId;
use record::SittingId;

/// Which side of a procedure is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// The lesson.
    Lesson,
    /// The derived tray.
    SetUp,
    /// The steps by actor.
    Steps,
    /// The time line.
    Time,
}

impl View {
    /// All of them, in the order of the tabs.
    pub const ALL: [Self; 4] = [Self::Lesson, Self::SetUp, Self::Steps, Self::Time];

    /// Its word in the fragment; the lesson needs none.
    pub(super) fn word(self) -> &'static str {
        match self {
            Self::Lesson => "",
            Self::SetUp => "set-up",
            Self::Steps => "steps",
            Self::Time => "time",
        }
    }

    /// What its tab says.
    pub fn label(self) -> &'static str {
        match self {
            Self::Lesson => "Lesson",
            Self::SetUp => "Set-up",
            Self::Steps => "Steps",
            Self::Time => "Time",
        }
    }
}

/// What is drawn at life size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Drawn {
    /// A family, by its name with hyphens.
    Family(String),
    /// One instrument or material.
    Item(ItemId),
}

/// Which sitting of questions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SittingAt {
    /// One to be begun, of so many minutes.
    New(u16),
    /// One that the record has.
    Kept(SittingId),
}

/// Which side of a practice form is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FormSide {
    /// All its questions, or its result.
    Whole,
    /// One of its questions, counted from 1.
    Question(u16),
}

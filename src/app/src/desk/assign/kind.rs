//! The kinds of task that can be set: those that the page can play and grade.

use class::task::{Order, Task};

/// A kind of task.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Kind {
    /// A case of a frame, or of any.
    #[default]
    Case,
    /// A tray to be read.
    Reading,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Case, Self::Reading];

    /// Its value in a choice.
    pub fn value(self) -> &'static str {
        match self {
            Self::Case => "case",
            Self::Reading => "reading",
        }
    }

    /// What it is called.
    pub fn label(self) -> &'static str {
        match self {
            Self::Case => "A case",
            Self::Reading => "A tray to read",
        }
    }

    /// The kind of a value.
    pub fn of(value: &str) -> Self {
        let mut all = Self::ALL.into_iter();
        all.find(|kind| kind.value() == value).unwrap_or_default()
    }

    /// The task of this kind with what was chosen.
    pub fn task(self, order: &Order) -> Task {
        match self {
            Self::Case => Task::Case(order.clone()),
            Self::Reading => Task::Reading,
        }
    }
}

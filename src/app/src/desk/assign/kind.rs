//! The kinds of task that can be set: those that the page can play and grade.

/// A kind of task.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Kind {
    /// A case of a frame, or of any.
    #[default]
    Case,
    /// A tray to be read.
    Reading,
    /// A material to be mixed by hand.
    Mix,
    /// A number to be worked out.
    Number,
    /// A question of a family.
    Question,
    /// A practice form.
    Form,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 6] = [
        Self::Case,
        Self::Reading,
        Self::Mix,
        Self::Number,
        Self::Question,
        Self::Form,
    ];

    /// Its value in a choice.
    pub fn value(self) -> &'static str {
        match self {
            Self::Case => "case",
            Self::Reading => "reading",
            Self::Mix => "mix",
            Self::Number => "number",
            Self::Question => "question",
            Self::Form => "form",
        }
    }

    /// What it is called.
    pub fn label(self) -> &'static str {
        match self {
            Self::Case => "A case",
            Self::Reading => "A tray to read",
            Self::Mix => "A mix",
            Self::Number => "A number",
            Self::Question => "A question",
            Self::Form => "A practice form",
        }
    }

    /// The kind of a value.
    pub fn of(value: &str) -> Self {
        let mut all = Self::ALL.into_iter();
        all.find(|kind| kind.value() == value).unwrap_or_default()
    }
}

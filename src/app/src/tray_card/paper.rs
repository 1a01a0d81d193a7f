//! Papers that a card is printed on.

/// A size of paper.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Paper {
    /// 210 mm by 297 mm.
    #[default]
    A4,
    /// 8.5 by 11 inches.
    Letter,
    /// 105 mm by 148 mm, for a pocket or a drawer.
    A6,
}

impl Paper {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::A4, Self::Letter, Self::A6];

    /// Its word in an address and in the style sheet.
    pub fn value(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::Letter => "letter",
            Self::A6 => "a6",
        }
    }

    /// The paper of a word; A4 for any other.
    pub fn from_value(value: &str) -> Self {
        let named = Self::ALL.into_iter().find(|paper| paper.value() == value);
        named.unwrap_or_default()
    }

    /// What it is called.
    pub fn label(self) -> &'static str {
        match self {
            Self::A4 => "A4",
            Self::Letter => "Letter",
            Self::A6 => "A6",
        }
    }
}

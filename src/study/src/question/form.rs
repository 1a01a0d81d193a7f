//! The forms that a question can take on a phone.

use catalogue::{ids::ItemId, quantity::Milli};
use clinic::{sequence::Target, standing::Standing};

/// Something to choose.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// What an answer names it by; the same in every wording of the question.
    pub key: String,
    /// What it says.
    pub text: String,
    /// The item to draw beside it, if it is one.
    pub item: Option<ItemId>,
    /// How good it is.
    pub standing: Standing,
    /// Why, for the debrief; empty where the reason of the question says it.
    pub because: String,
}

/// Something to move or to match.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Piece {
    /// What an answer names it by.
    pub key: String,
    /// What it says; empty for a drawing that is to be named.
    pub text: String,
    /// The item to draw. Where `text` is empty its labels and engraved numbers
    /// are left away.
    pub item: Option<ItemId>,
}

/// What can be answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Form {
    /// Choose one.
    One(Vec<Choice>),
    /// Choose all that are so.
    All(Vec<Choice>),
    /// Put in order.
    Order {
        /// The pieces, mixed up.
        pieces: Vec<Piece>,
        /// The order, by keys; inside a stage any order is right.
        target: Target<String>,
    },
    /// Place on the tray: pick the items that belong.
    Place(Vec<Choice>),
    /// Choose the name of the drawing that is shown.
    Name(Vec<Choice>),
    /// Match each on the left with one on the right.
    Match {
        /// The left side.
        left: Vec<Piece>,
        /// The right side, mixed up.
        right: Vec<Piece>,
        /// Which belongs to which, by keys.
        pairs: Vec<(String, String)>,
    },
    /// Type a number.
    Number {
        /// Its unit as it stands behind the number; empty where there is none.
        unit: String,
        /// The least that is right.
        from: Milli,
        /// The most that is right.
        to: Milli,
    },
    /// Spot the slip: choose the line of a told sequence that is wrong.
    Slip(Vec<Choice>),
}

impl Form {
    /// The choices of a form that has them.
    pub fn choices(&self) -> &[Choice] {
        match self {
            Self::One(all)
            | Self::All(all)
            | Self::Place(all)
            | Self::Name(all)
            | Self::Slip(all) => all,
            Self::Order { .. } | Self::Match { .. } | Self::Number { .. } => &[],
        }
    }

    /// What the student is to do, in a few words.
    pub fn asks(&self) -> &'static str {
        match self {
            Self::One(_) => "Choose one.",
            Self::All(_) => "Choose all that are so.",
            Self::Order { .. } => "Put in order.",
            Self::Place(_) => "Place on the tray what belongs there.",
            Self::Name(_) => "Choose the name.",
            Self::Match { .. } => "Match each with its own.",
            Self::Number { .. } => "Type a number.",
            Self::Slip(_) => "Choose the line with the slip.",
        }
    }
}

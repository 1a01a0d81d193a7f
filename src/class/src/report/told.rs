//! A number, or the words that stand in its place.

use core::fmt;

/// A number, or why there is none.
pub type Told<T> = Result<T, Missing>;

/// Why there is no number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Missing {
    /// Nobody has handed in.
    NoSeats,
    /// One or two seats have handed in.
    TooFewSeats(usize),
    /// Fewer than two items were asked of every seat.
    TooFewItems,
    /// Every seat had every item right.
    AllRight,
    /// Every seat had every item wrong.
    AllWrong,
    /// All seats have the same score.
    NoSpread,
    /// The items do not go together: alpha is zero or negative.
    NotTogether,
    /// The scores do not fit the model.
    NoFit,
}

impl fmt::Display for Missing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoSeats => f.write_str("Nobody has handed in yet."),
            Self::TooFewSeats(1) => f.write_str(
                "Not estimable: one seat has handed in. What that seat did is shown; nothing can be said of a class.",
            ),
            Self::TooFewSeats(count) => write!(
                f,
                "Not estimable: only {count} seats have handed in. At least three are needed, and thirty for numbers to rely on."
            ),
            Self::TooFewItems => f.write_str(
                "Not estimable: fewer than two items were asked of every seat. Set the same for all to compare items.",
            ),
            Self::AllRight => f.write_str(
                "Not estimable: every seat had everything right. The items are too easy to tell seats apart, or the class knows it.",
            ),
            Self::AllWrong => f.write_str(
                "Not estimable: no seat had anything right. Look at the items before looking at the class.",
            ),
            Self::NoSpread => f.write_str(
                "Not estimable: all seats have the same score, so there is nothing by which to tell them apart.",
            ),
            Self::NotTogether => f.write_str(
                "Not estimable: the items do not go together in this class. Too few seats, or items about different things.",
            ),
            Self::NoFit => f.write_str(
                "Not estimable: the scores do not follow the model that this number rests on.",
            ),
        }
    }
}

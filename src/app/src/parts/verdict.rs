//! How an answer was judged: a word, and the class of its colour and shape.

use super::icon::Icon;
use record::Verdict;

/// The word for a verdict.
pub fn word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Right => "Right",
        Verdict::Acceptable => "Acceptable",
        Verdict::Wrong => "Wrong",
        Verdict::Unsafe => "Unsafe",
    }
}

/// The class by which the style sheet knows a verdict.
pub fn class(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Right => "verdict-right",
        Verdict::Acceptable => "verdict-acceptable",
        Verdict::Wrong => "verdict-wrong",
        Verdict::Unsafe => "verdict-unsafe",
    }
}

/// The shape of a verdict.
pub fn shape(verdict: Verdict) -> Icon {
    match verdict {
        Verdict::Right => Icon::Right,
        Verdict::Acceptable => Icon::Acceptable,
        Verdict::Wrong => Icon::Wrong,
        Verdict::Unsafe => Icon::Unsafe,
    }
}

//! How an answer was judged: a mark, a word and a colour of its own.

use super::icon::{Icon, icon};
use leptos::prelude::*;
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

/// A verdict as a mark with its word.
#[component]
pub fn VerdictMark(
    /// The verdict.
    verdict: Verdict,
) -> impl IntoView {
    let mark = match verdict {
        Verdict::Right => Icon::Right,
        Verdict::Acceptable => Icon::Acceptable,
        Verdict::Wrong => Icon::Wrong,
        Verdict::Unsafe => Icon::Unsafe,
    };
    view! {
        <span class=format!("verdict {}", class(verdict)) data-test="verdict">
            {icon(mark)}
            {word(verdict)}
        </span>
    }
}

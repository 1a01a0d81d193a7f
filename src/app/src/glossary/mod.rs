//! The words of the trade: all of them by letter, and one by one.

mod in_lesson;
mod list;
mod seen;
mod term;

pub use in_lesson::WordsOfLesson;
pub use list::GlossaryScreen;
pub use seen::WordsFor;
pub use term::TermScreen;

use catalogue::glossary::Term;
use leptos::prelude::*;

/// How a word is said, if a hint is needed.
fn said(term: &'static Term) -> impl IntoView {
    (!term.says.is_empty()).then(|| {
        view! { <span class="said"><span class="unseen">"said: "</span>{term.says.as_str()}</span> }
    })
}

//! The way back from a thing or procedure to the words that point to it.

use super::said;
use crate::{place::Place, taught::catalogue};
use catalogue::glossary::{See, Term};
use leptos::prelude::*;

/// The words that point to something, in one line. Nothing where none does.
#[component]
pub fn WordsFor(
    /// What they point to.
    what: See,
) -> impl IntoView {
    let terms = catalogue()
        .glossary
        .iter()
        .filter(|term| term.see.contains(&what));
    let word = |term: &'static Term| {
        view! {
            <li>
                <a href=Place::Term(term.id.clone()).fragment()>{term.term.as_str()}</a>
                {said(term)}
            </li>
        }
    };
    let words: Vec<_> = terms.map(word).collect();
    (!words.is_empty()).then(|| {
        view! {
            <section class="plate" data-test="words-for">
                <h2 class="stage-label">"Words to know"</h2>
                <ul class="see">{words}</ul>
            </section>
        }
    })
}

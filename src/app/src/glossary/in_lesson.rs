//! The words of the trade that a lesson uses.

use super::said;
use crate::{place::Place, taught::catalogue};
use catalogue::{glossary::Term, lesson, lesson::Lesson};
use leptos::prelude::*;

/// The words of a lesson with their meanings, folded, and sought out only when
/// the fold is first opened.
#[component]
pub fn WordsOfLesson(
    /// The lesson.
    lesson: &'static Lesson,
) -> impl IntoView {
    let opened = RwSignal::new(false);
    let catalogue = catalogue();
    let words = move || {
        opened.get().then(|| {
            let text = lesson::text(&lesson.blocks);
            let used = catalogue
                .glossary
                .iter()
                .filter(|term| term.in_text(&text).is_some());
            view! { <dl class="words">{used.map(word).collect_view()}</dl> }
        })
    };
    view! {
        <details class="fold" data-test="lesson-words" on:toggle=move |_| opened.set(true)>
            <summary>"Words of this lesson, and how they are said"</summary>
            <div class="fold-body">{words}</div>
        </details>
    }
}

fn word(term: &'static Term) -> impl IntoView {
    view! {
        <div class="word">
            <dt>
                <a href=Place::Term(term.id.clone()).fragment()>{term.term.as_str()}</a>
                {said(term)}
            </dt>
            <dd>{term.meaning.as_str()}</dd>
        </div>
    }
}

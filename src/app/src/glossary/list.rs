//! All words of the trade, letter by letter.

use super::said;
use crate::{
    browser::scroll,
    parts::{
        gradually::in_turn,
        page::Page,
        search::{self, Search},
    },
    place::Place,
    taught::catalogue,
};
use catalogue::glossary::Term;
use leptos::prelude::*;

/// How many letters a screen shows at first.
const AT_ONCE: usize = 1;

/// The glossary.
#[component]
pub fn GlossaryScreen() -> impl IntoView {
    let terms = &catalogue().glossary;
    let sought = RwSignal::new(String::new());
    let found = Memo::new(move |_| {
        sought.with(|sought| terms.iter().filter(|term| matches(term, sought)).count())
    });
    let letters = letters(terms);
    let jumps: Vec<_> = letters
        .iter()
        .map(|(letter, _)| {
            let letter = *letter;
            view! {
                <li>
                    <button
                        type="button"
                        class="letter"
                        data-test=format!("letter-{letter}")
                        on:click=move |_| scroll::to(format!("#letter-{letter}"))
                    >
                        {letter.to_string()}
                    </button>
                </li>
            }
        })
        .collect();
    let sections = in_turn(letters, AT_ONCE, move |(letter, terms)| {
        view! { <Letter letter terms sought /> }
    });
    view! {
        <Page title="Words of the trade" over="Procedures" up=Place::Procedures.fragment()>
            <Search label="Find a word" sought found everything=true test="word-search" />
            <nav aria-label="Letters" hidden=move || sought.with(|sought| !sought.is_empty())>
                <ul class="letters">{jumps}</ul>
            </nav>
            <p class="hint">
                "Beside a word stands how it is said, the loud syllable in capitals. The hints are from memory; accents differ."
            </p>
            {sections}
        </Page>
    }
}

/// The words with one initial; what does not match the search is hidden.
#[component]
fn Letter(letter: char, terms: Vec<&'static Term>, sought: RwSignal<String>) -> impl IntoView {
    let shown = move |term: &Term| sought.with(|sought| matches(term, sought));
    let all = terms.clone();
    let empty = move || !all.iter().any(|term| shown(term));
    let row = move |term: &'static Term| {
        view! {
            <div class="word" hidden=move || !shown(term)>
                <dt>
                    <a href=Place::Term(term.id.clone()).fragment() data-test=format!("word-{}", term.id)>
                        {term.term.as_str()}
                    </a>
                    {said(term)}
                </dt>
                <dd>{term.meaning.as_str()}</dd>
            </div>
        }
    };
    view! {
        <section class="group" hidden=empty>
            <h2 class="stage-label" id=format!("letter-{letter}") tabindex="-1">{letter.to_string()}</h2>
            <dl class="words">{terms.into_iter().map(row).collect_view()}</dl>
        </section>
    }
}

fn matches(term: &Term, sought: &str) -> bool {
    search::matches(term.forms(), sought)
}

/// The words by their initials.
fn letters(terms: &'static [Term]) -> Vec<(char, Vec<&'static Term>)> {
    let mut letters: Vec<(char, Vec<&Term>)> = Vec::new();
    for term in terms {
        let initial = term
            .term
            .chars()
            .next()
            .map_or('?', |c| c.to_ascii_uppercase());
        match letters.last_mut() {
            Some((letter, members)) if *letter == initial => members.push(term),
            _ => letters.push((initial, vec![term])),
        }
    }
    letters
}

//! The field, and what it found. The words stand in the address, so that they
//! survive a reload and can be passed on.

use super::results::Result;
use crate::{
    browser::{address::Address, focus},
    parts::{
        gradually::in_turn,
        icon::{Icon, icon},
        page::Page,
    },
    place::Place,
    taught::catalogue,
};
use catalogue::{
    Catalogue,
    search::{Index, MOST},
};
use leptos::prelude::*;
use std::cell::RefCell;

/// How many results are drawn before a letter is painted: more than a phone shows.
const AT_ONCE: usize = 8;

/// The search over everything.
#[component]
pub fn FindScreen(
    /// Where the reader is, with the words sought.
    place: Signal<Place>,
) -> impl IntoView {
    let address: Address = expect_context();
    let catalogue = catalogue();
    let sought = Memo::new(move |_| match place.get() {
        Place::Find(words) => words,
        _ => String::new(),
    });
    if sought.with_untracked(String::is_empty) {
        focus::first("#find");
    }
    let results = move || {
        let words = sought.get();
        if words.trim().is_empty() {
            return view! { <Ways /> }.into_any();
        }
        let found = index(catalogue).find(&words);
        let said = match found.len() {
            0 => "Nothing was found. Try fewer words, or the first letters of one.".to_string(),
            1 => "1 found".to_string(),
            MOST => format!("The {MOST} nearest are shown"),
            many => format!("{many} found"),
        };
        let rows = in_turn(found, AT_ONCE, |found| view! { <Result found /> });
        view! {
            <p class="count" role="status" data-test="find-count">{said}</p>
            <ol class="rows found" data-test="found">{rows}</ol>
        }
        .into_any()
    };
    view! {
        <Page title="Find">
            <label class="search">
                <span>"Anything: a thing, a procedure, a word, a reason, a source"</span>
                <input
                    id="find"
                    type="search"
                    autocomplete="off"
                    data-test="find"
                    prop:value=sought
                    on:input=move |event| address.amend(Place::Find(event_target_value(&event)))
                />
            </label>
            {results}
        </Page>
    }
}

/// Where to look without words.
#[component]
fn Ways() -> impl IntoView {
    let ways = [
        (
            "Instruments and materials",
            "All of them, family by family",
            Place::Items,
        ),
        (
            "Plates",
            "Every drawing, to know things by sight",
            Place::AllPlates,
        ),
        (
            "Words of the trade",
            "What they mean and how they are said",
            Place::Glossary,
        ),
    ];
    let way = |(name, note, place): (&'static str, &'static str, Place)| {
        view! {
            <li>
                <a class="row" href=place.fragment()>
                    <span class="row-name">{name}</span>
                    <span class="row-note">{note}</span>
                    {icon(Icon::Onwards)}
                </a>
            </li>
        }
    };
    view! {
        <p class="hint">
            "The first letters of a word are enough, and a slip of the finger is forgiven."
        </p>
        <ul class="rows">{ways.into_iter().map(way).collect_view()}</ul>
    }
}

/// An index, and the catalogue it was made of.
type Kept = (&'static Catalogue, &'static Index<'static>);

thread_local! {
    static INDEX: RefCell<Option<Kept>> = const { RefCell::new(None) };
}

/// The index of a catalogue. It is made at the first search and stays.
fn index(catalogue: &'static Catalogue) -> &'static Index<'static> {
    INDEX.with_borrow_mut(|kept| match kept {
        Some((of, index)) if std::ptr::eq(*of, catalogue) => *index,
        _ => {
            let index: &'static Index = Box::leak(Box::new(Index::of(catalogue)));
            *kept = Some((catalogue, index));
            index
        }
    })
}

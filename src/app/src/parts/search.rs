//! A field to search a list by.

use super::icon::{Icon, icon};
use crate::place::Place;
use leptos::prelude::*;

/// A search field with what it found.
#[component]
pub fn Search(
    /// What it asks for.
    label: &'static str,
    /// What is sought, as typed.
    sought: RwSignal<String>,
    /// How many of the list match.
    #[prop(into)]
    found: Signal<usize>,
    /// Whether the search over everything is offered for the same words.
    #[prop(optional)]
    everything: bool,
    /// A stable hook for tests.
    test: &'static str,
) -> impl IntoView {
    let elsewhere = move || {
        let words = sought.get();
        (everything && !words.trim().is_empty()).then(|| {
            view! {
                <a class="search-on" href=Place::Find(words).fragment() data-test="find-everywhere">
                    "Look everywhere" {icon(Icon::Onwards)}
                </a>
            }
        })
    };
    view! {
        <label class="search">
            <span>{label}</span>
            <input
                type="search"
                autocomplete="off"
                data-test=test
                on:input=move |event| sought.set(event_target_value(&event))
            />
        </label>
        <p class="count"><span role="status">{found} " found"</span> {elsewhere}</p>
    }
}

/// Whether every word sought stands in one of the texts, in capitals or not.
pub fn matches<'t>(texts: impl Iterator<Item = &'t str> + Clone, sought: &str) -> bool {
    sought.split_whitespace().all(|word| {
        let word = word.to_lowercase();
        texts
            .clone()
            .any(|text| text.to_lowercase().contains(&word))
    })
}

#[cfg(test)]
mod tests {
    use super::matches;

    #[test]
    fn all_words_are_sought_in_any_of_the_texts() {
        let texts = ["Spoon excavator, small", "excavators", "GMT"];
        for (sought, found) in [
            ("", true),
            ("spoon", true),
            ("SMALL excav", true),
            ("gmt spoon", true),
            ("spoon large", false),
        ] {
            assert_eq!(matches(texts.iter().copied(), sought), found, "{sought}");
        }
    }
}

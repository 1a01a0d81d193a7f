//! One word of the trade: what it means, how it is said, where it comes up.

use super::said;
use crate::{
    parts::{capital::capital, page::Page, sources::SourceNotes},
    place::{Place, View},
    procedures::lesson_place,
    shell::NotHere,
    taught::catalogue,
};
use catalogue::{
    Catalogue,
    glossary::{See, Term},
    ids::TermId,
    lesson,
};
use leptos::prelude::*;

/// The page of a word.
#[component]
pub fn TermScreen(
    /// The word.
    id: TermId,
) -> impl IntoView {
    let catalogue = catalogue();
    let Some(term) = catalogue.term(&id) else {
        return view! { <NotHere what="word of the trade" /> }.into_any();
    };
    let also = (!term.also.is_empty())
        .then(|| view! { <p class="also">"Also: " {term.also.join(", ")}</p> });
    let see = term
        .see
        .iter()
        .filter_map(|see| seen(catalogue, see))
        .collect();
    view! {
        <Page title=capital(&term.term) over="Words of the trade" up=Place::Glossary.fragment()>
            <p class="word-said">{said(term)}</p>
            <p class="lead" data-test="meaning">{term.meaning.as_str()}</p>
            {also}
            {links("See", see)}
            {links("Lessons that use the word", lessons(catalogue, term))}
            <SourceNotes ids=term.sources.clone() />
        </Page>
    }
    .into_any()
}

fn links(title: &'static str, links: Vec<(&'static str, Place)>) -> impl IntoView {
    (!links.is_empty()).then(|| {
        let link = |(name, place): (&'static str, Place)| {
            view! { <li><a href=place.fragment()>{name}</a></li> }
        };
        view! {
            <section class="group">
                <h2 class="stage-label">{title}</h2>
                <ul class="see">{links.into_iter().map(link).collect_view()}</ul>
            </section>
        }
    })
}

/// What a word points to, by name.
fn seen(catalogue: &'static Catalogue, see: &See) -> Option<(&'static str, Place)> {
    Some(match see {
        See::Item(id) => (catalogue.item(id)?.name(), Place::Item(id.clone())),
        See::Procedure(id) => {
            let place = Place::Procedure(id.clone(), View::Lesson, Vec::new());
            (&catalogue.procedure(id)?.name, place)
        }
        See::Lesson(id) => (&catalogue.lesson(id)?.title, lesson_place(catalogue, id)),
        See::Term(id) => (&catalogue.term(id)?.term, Place::Term(id.clone())),
    })
}

/// The lessons in whose text the word stands.
fn lessons(catalogue: &'static Catalogue, term: &Term) -> Vec<(&'static str, Place)> {
    let uses = |each: &&lesson::Lesson| term.in_text(&lesson::text(&each.blocks)).is_some();
    let lessons = catalogue.lessons.iter().filter(uses);
    let link = |it: &'static lesson::Lesson| (it.title.as_str(), lesson_place(catalogue, &it.id));
    lessons.map(link).collect()
}

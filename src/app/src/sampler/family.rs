//! The questions of a family, a few at a time, with their answers.

use crate::{
    parts::{gradually::in_turn, level::level, page::Page},
    place::Place,
    questions::{Questions, Ready, SetAside, ask::shown, prepare, told},
    shell::NotHere,
    taught::catalogue,
};
use leptos::prelude::*;

/// How many questions are shown at once.
const AT_ONCE: usize = 8;

/// The screen.
#[component]
pub fn FamilyScreen(
    /// The id of the family.
    family: String,
) -> impl IntoView {
    prepare();
    view! {
        <Ready show=move |questions| {
            let families = questions.bank().families().iter();
            let found = families.filter(|each| each.id == family).map(|each| (each.id, each.name)).next();
            match found {
                Some((id, name)) => view! { <Family questions id name /> }.into_any(),
                None => view! { <NotHere what="family of questions" /> }.into_any(),
            }
        } />
    }
}

#[component]
fn Family(questions: Questions, id: &'static str, name: &'static str) -> impl IntoView {
    let all: Vec<&'static str> = questions
        .items()
        .items()
        .iter()
        .filter(|item| item.family == id)
        .map(|item| item.id.as_str())
        .collect();
    let (all, count) = (StoredValue::new(all.clone()), all.len());
    let (from, wording) = (RwSignal::new(0_usize), RwSignal::new(0_u64));
    let list = move || {
        let (from, wording) = (from.get(), wording.get());
        let page = all.with_value(|all| {
            let page = all.iter().skip(from).take(AT_ONCE);
            page.copied().collect::<Vec<_>>()
        });
        in_turn(page, 2, move |id| read(questions, id, wording))
    };
    let range = move || {
        let from = from.get();
        format!(
            "{} to {} of {count}",
            (from + 1).min(count),
            (from + AT_ONCE).min(count)
        )
    };
    view! {
        <Page title=name over="Questions" up=Place::Questions.fragment()>
            <p data-test="range" aria-live="polite">{range}</p>
            <ul class="q-reads">{list}</ul>
            <div class="actions">
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="earlier"
                    disabled=move || from.get() == 0
                    on:click=move |_| from.update(|from| *from = from.saturating_sub(AT_ONCE))
                >
                    "Earlier"
                </button>
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="further"
                    disabled=move || from.get() + AT_ONCE >= count
                    on:click=move |_| from.update(|from| *from += AT_ONCE)
                >
                    "Further"
                </button>
                <button
                    type="button"
                    class="button button-quiet"
                    data-test="another-wording"
                    on:click=move |_| wording.update(|wording| *wording += 1)
                >
                    "Another wording"
                </button>
            </div>
        </Page>
    }
}

/// One question as a teacher reads it: with the right answer and why.
fn read(questions: Questions, id: &str, wording: u64) -> impl IntoView + use<> {
    let question = questions
        .write(id, wording)
        .or_else(|| questions.write(id, 0))?;
    let competency = catalogue()
        .competencies
        .iter()
        .find(|each| each.id == question.competency)
        .map(|each| each.name.clone());
    Some(view! {
        <li class="q-read" data-test="read">
            <h2 class="q-read-stem">{question.stem.clone()}</h2>
            <p class="q-note">
                {competency} " · " {level(question.level)} " · " {question.seconds} " s · "
                {question.form.asks()}
            </p>
            {shown(&question.shown)}
            {told::explained(&question, None)}
            <SetAside question=question.id.to_string() />
        </li>
    })
}

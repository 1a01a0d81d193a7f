//! The visit looked back on: what was unsafe first, then every decision with
//! its verdict, reason and source, and what to study next.

use super::{
    explain::{
        explanation,
        verdict::{mark, summary},
    },
    list::next_seed,
    play::Play,
    study::StudyNext,
};
use crate::{
    browser::scroll,
    cards::CardNote,
    log::log,
    packs::FromPack,
    parts::{
        assigned::{BackToAssignment, belongs_to},
        notice::{Notice, Tone},
        page::Page,
    },
    place::Place,
};
use clinic::standing::Standing;
use leptos::prelude::*;

/// The debrief of a finished sitting.
#[component]
pub fn Debrief(
    /// The sitting.
    play: Play,
) -> impl IntoView {
    let case = play.case();
    let count = case.decisions.len();
    let (over, up) = belongs_to(play.id(), "Cases", &Place::Cases);
    view! {
        <Page title="The visit, looked back on" over up>
            <div class="debrief" data-test="debrief">
                <p class="case-title">{case.title.clone()} <CardNote /></p>
                <FromPack kind="case" id=case.frame.as_str() />
                <p class="lead" data-test="overall">{overall(play)}</p>
                <Harm play />
                <BackToAssignment sitting=play.id() />
                <StudyNext play />
                <section>
                    <h2 class="stage-label">"Every decision"</h2>
                    <ol class="debrief-list">
                        {(0..count).map(|at| view! { <Decided play at /> }).collect_view()}
                    </ol>
                </section>
                <Onwards play />
            </div>
        </Page>
    }
}

/// What the visit came to, in words.
fn overall(play: Play) -> String {
    let standings: Vec<Standing> = (0..play.case().decisions.len())
        .map(|at| play.asked(at).grade(&play.answer(at)).standing)
        .collect();
    let count = |standing| standings.iter().filter(|it| **it == standing).count();
    let parts = [
        (Standing::Right, "right"),
        (Standing::Acceptable, "nearly, or in another way"),
        (Standing::Wrong, "not right yet"),
        (Standing::Unsafe, "unsafe"),
    ];
    let said: Vec<String> = parts
        .into_iter()
        .map(|(standing, word)| (count(standing), word))
        .filter(|(count, _)| *count > 0)
        .map(|(count, word)| format!("{count} {word}"))
        .collect();
    format!(
        "{} decisions: {}. {} per cent in all.",
        standings.len(),
        said.join(", "),
        play.overall()
    )
}

/// Answers that could have hurt somebody, named before anything else.
#[component]
fn Harm(play: Play) -> impl IntoView {
    let unsafe_ones: Vec<_> = (0..play.case().decisions.len())
        .map(|at| play.asked(at))
        .filter(|asked| asked.grade(&play.answer(asked.at)).standing == Standing::Unsafe)
        .map(|asked| {
            let name = asked.name.clone();
            let place = format!("#decided-{} summary", asked.id);
            let go = move |_| scroll::to(place.clone());
            view! {
                <li>
                    <button type="button" class="link-button" on:click=go>{name}</button>
                </li>
            }
        })
        .collect();
    (!unsafe_ones.is_empty()).then(|| {
        view! {
            <Notice tone=Tone::Unsafe>
                <p><strong>"Somebody could have been hurt here."</strong> " Look at this first:"</p>
                <ul class="harm-list">{unsafe_ones}</ul>
            </Notice>
        }
    })
}

/// One decision, folded unless it was unsafe.
#[component]
fn Decided(play: Play, at: usize) -> impl IntoView {
    let (asked, answer) = (play.asked(at), play.answer(at));
    let grade = asked.grade(&answer);
    let summary = summary(&asked, &answer, &grade);
    view! {
        <li id=format!("decided-{}", asked.id)>
            <details
                class="fold decided"
                open=grade.standing == Standing::Unsafe
                data-test=format!("decided-{}", asked.id)
            >
                <summary>
                    <span class="decided-name">{asked.name.clone()}</span>
                    {mark(&asked.form, grade.standing)}
                </summary>
                <div class="decided-body">
                    <p class="decided-question">{asked.question.clone()}</p>
                    {(!summary.is_empty()).then(|| view! { <p>{summary}</p> })}
                    {explanation(&asked, &answer)}
                </div>
            </details>
        </li>
    }
}

/// Where to go from here.
#[component]
fn Onwards(play: Play) -> impl IntoView {
    let frame = play.case().frame.clone();
    let next = log().look(|events| next_seed(events, frame.as_str()));
    view! {
        <div class="actions">
            <a class="button" href=Place::Case(frame, next, None).fragment() data-test="another">
                "Another patient of this kind"
            </a>
            <button
                type="button"
                class="button button-quiet"
                data-test="case-again"
                on:click=move |_| play.start()
            >
                "The same patient again"
            </button>
            <a class="button button-quiet" href=Place::Cases.fragment()>"All cases"</a>
        </div>
    }
}

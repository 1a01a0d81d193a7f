//! The three answers looked back on, and the evidence.

use super::{
    super::{
        evidence::{evidence, missing},
        ranked::ranked,
    },
    ask::tray,
    sitting::Sitting,
};
use crate::{
    cases::{next_seed, verdict},
    log::log,
    parts::{
        announce::announcer,
        assigned::BackToAssignment,
        icon::{Icon, icon},
        verdict::class,
    },
    place::{Place, View},
    taught::{catalogue, standard},
};
use clinic::{
    case::{Choice, tray_reading::CASE},
    standing::Standing,
};
use leptos::prelude::*;

/// What the answers came to, and why.
#[component]
pub fn Seen(
    /// The sitting, with all its answers.
    sitting: Sitting,
) -> impl IntoView {
    let exercise = sitting.exercise();
    let count = exercise.decisions.len();
    let right = (0..count)
        .filter(|&at| sitting.answer(at).1.standing == Standing::Right)
        .count();
    let says = format!("{right} of {count} right.");
    announcer().say(says.clone());
    let clinic = standard();
    let reader = clinic.tray_reader();
    let readings = reader.read(&exercise.laid);
    let says_each = reader.evidence(&exercise.laid, &exercise.procedure);
    let best = readings.first();
    view! {
        <div data-test="seen">
            <h2 class="question" tabindex="-1" data-test="reading-sum">{says}</h2>
            <ol class="answers">{(0..count).map(|at| one(sitting, at)).collect_view()}</ol>
            <BackToAssignment sitting=sitting.id() />
            <Onwards sitting />
            <section class="group">
                <h2 class="stage-label">"The tray"</h2>
                {tray(&exercise.decisions[1])}
            </section>
            <section class="group">
                <h2 class="stage-label">"What it would be for"</h2>
                {ranked(&readings)}
            </section>
            {best.map(|best| missing(&best.missing))}
            {best.map(|best| evidence(best, says_each))}
        </div>
    }
}

/// One question: the own answer, the right one, and why.
fn one(sitting: Sitting, at: usize) -> impl IntoView {
    let exercise = sitting.exercise();
    let decision = &exercise.decisions[at];
    let (given, grade) = sitting.answer(at);
    let own = given.and_then(|id| decision.choice(&id).cloned());
    let right = decision
        .choices
        .iter()
        .find(|choice| choice.standing == Standing::Right)
        .cloned();
    let wrong = grade.standing != Standing::Right;
    let (mark, word) = if wrong {
        (Icon::Wrong, "Not this")
    } else {
        (Icon::Right, "Right")
    };
    let said = |label: &'static str, choice: Choice| {
        let why = choice.reasons.into_iter().map(|reason| reason.because);
        view! {
            <p class="answer-said">
                <span class="option-what">{label} ": "</span> <strong>{choice.label}</strong>
            </p>
            <p class="reason">{why.collect::<Vec<_>>().join(" ")}</p>
        }
    };
    view! {
        <li class="answer" data-test=format!("seen-{}", decision.id)>
            <h3 class="stage-label">{decision.name.clone()}</h3>
            <p class=format!("verdict {}", class(verdict(grade.standing)))>{icon(mark)} {word}</p>
            {own.filter(|_| wrong).map(|own| said("Your answer", own))}
            {right.map(|right| said(if wrong { "Right here" } else { "Your answer" }, right))}
        </li>
    }
}

/// Where to go from here.
#[component]
fn Onwards(sitting: Sitting) -> impl IntoView {
    let exercise = sitting.exercise();
    let next = log().look(|events| next_seed(events, CASE));
    let procedure = catalogue().procedure(&exercise.procedure);
    let study = procedure.map(|procedure| {
        let to = Place::Procedure(procedure.id.clone(), View::SetUp, Vec::new());
        view! {
            <a class="button button-quiet" href=to.fragment() data-test="study-set-up">
                "Study: " {procedure.short.as_str()}
            </a>
        }
    });
    view! {
        <div class="actions">
            <a class="button" href=Place::ReadingExercise(next).fragment() data-test="another">
                "Another tray"
            </a>
            {study}
            <button
                type="button"
                class="button button-quiet"
                data-test="reading-again"
                on:click=move |_| {
                    sitting.begin();
                }
            >
                "Read it again"
            </button>
        </div>
    }
}

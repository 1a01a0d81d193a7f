//! One option was the answer: the own one and the best one side by side, then
//! the others on request.

use super::{
    super::{
        decide::{drawing, words as label},
        play::Asked,
    },
    reasons::reasons,
    verdict::{mark, shape, words},
};
use crate::parts::icon::icon;
use clinic::{
    case::{ByHand, Choice, Form},
    standing::Standing,
};
use leptos::prelude::*;

/// The options of a decision with one answer.
pub fn options(asked: &Asked, answer: &[String]) -> impl IntoView + use<> {
    let best = asked.choices.iter().map(|c| c.standing).min();
    let is_best = |choice: &Choice| Some(choice.standing) == best;
    // A mix stands for itself: the option it comes nearest to was not taken.
    let by_hand = ByHand::replay(answer).is_some();
    let own = answer.first().filter(|_| !by_hand);
    let own = own.and_then(|id| asked.choice(id));
    let is_own = |choice: &Choice| own.is_some_and(|own| own.id == choice.id);
    let right: Vec<&Choice> = asked
        .choices
        .iter()
        .filter(|c| is_best(c) && !is_own(c))
        .collect();
    let own_best = own.is_some_and(is_best);
    // Where no option is right, the best there is counts as right.
    let shown = |choice: &Choice| {
        if is_best(choice) {
            Standing::Right
        } else {
            choice.standing
        }
    };
    let beside = match (own_best, right.len()) {
        _ if by_hand => "How it should be",
        (true, _) => "As good here",
        (false, 1) => "Best here",
        (false, _) => "Best here, any of these",
    };
    let others = asked.choices.iter().filter(|c| !is_own(c) && !is_best(c));
    view! {
        <div class="beside" data-test="compared">
            {own.map(|own| column("Your answer", &[own], shown(own)))}
            {(!right.is_empty()).then(|| column(beside, &right, Standing::Right))}
        </div>
        <section class="others">
            <h3 class="stage-label">"The other options"</h3>
            {others.map(folded).collect_view()}
        </section>
    }
}

fn column(title: &str, choices: &[&Choice], standing: Standing) -> impl IntoView + use<> {
    let right = standing == Standing::Right;
    let one = |choice: &Choice| {
        view! {
            <div class=if right { "beside-one beside-right" } else { "beside-one" } data-test=format!("why-{}", choice.id)>
                <p class="beside-label">{label(choice)}</p>
                {drawing(&choice.shows)}
                {reasons(&choice.reasons)}
            </div>
        }
    };
    view! {
        <section class="beside-column">
            <h3 class="stage-label beside-title">{icon(shape(standing))} {title.to_string()}</h3>
            {choices.iter().map(|c| one(c)).collect_view()}
        </section>
    }
}

/// An option that was neither taken nor best, with its reason on request.
fn folded(choice: &Choice) -> impl IntoView + use<> {
    let quiet = choice.standing == Standing::Wrong;
    let mark = if quiet {
        view! { <span class="unseen">{words(&Form::One, choice.standing)}</span> }.into_any()
    } else {
        mark(&Form::One, choice.standing).into_any()
    };
    view! {
        <details class="fold other" data-test=format!("why-{}", choice.id)>
            <summary><span>{label(choice)} " " {mark}</span></summary>
            <div class="fold-body">{reasons(&choice.reasons)}</div>
        </details>
    }
}

//! A decision that was answered: the verdict, the own answer beside the best
//! one, why, and how the visit goes on.

mod all;
mod by_hand;
mod one;
mod order;
mod proof;
mod reasons;
pub mod tray;
mod tray_faults;
pub mod verdict;

use super::{
    play::{Asked, Play},
    player::Visit,
};
use crate::parts::{
    announce::announcer,
    icon::{Icon, icon},
    worked::Worked,
};
use clinic::case::Form;
use leptos::prelude::*;
use proof::ProofChain;
pub use reasons::reasons;
use verdict::{summary, words};

/// An answered decision.
#[component]
pub fn Explain(
    /// The sitting.
    play: Play,
    /// Which decision.
    at: usize,
) -> impl IntoView {
    let (asked, answer) = (play.asked(at), play.answer(at));
    let grade = asked.grade(&answer);
    let summary = summary(&asked, &answer, &grade);
    announcer().say(format!("{}. {summary}", words(&asked.form, grade.standing)));
    let last = at + 1 == play.case().decisions.len();
    view! {
        <Visit play at>
            <h1 class="question question-past">
                <span class="stage-label">{asked.name.clone()}<span class="unseen">": "</span></span>
                {asked.question.clone()}
            </h1>
            {verdict::head(&asked.form, grade.standing, &summary)}
            {explanation(&asked, &answer)}
            {then(&asked.then)}
            <div class="case-go">
                <button
                    type="button"
                    class="button"
                    data-test="go-on"
                    on:click=move |_| play.go_on(at)
                >
                    {if last { "Look back on the visit" } else { "Go on" }}
                </button>
            </div>
        </Visit>
    }
}

/// Why, for one decision: the options with their reasons, the argument, and
/// what holds for the decision as a whole.
pub fn explanation(asked: &Asked, answer: &[String]) -> impl IntoView + use<> {
    let body = match &asked.form {
        Form::One => one::options(asked, answer).into_any(),
        Form::All => all::options(asked, answer).into_any(),
        Form::Order(order) => order::compared(asked, order, answer).into_any(),
        Form::Tray { .. } => tray::compared(asked, answer).into_any(),
        Form::Number(sum) => view! { <Worked working=sum.problem.working.clone() /> }.into_any(),
    };
    view! {
        {by_hand::mixed(asked, answer)}
        {body}
        {asked.proof.as_ref().map(|proof| view! { <ProofChain proof=proof.clone() /> })}
        {(!asked.reasons.is_empty()).then(|| view! { <div class="why">{reasons(&asked.reasons)}</div> })}
    }
}

fn then(says: &str) -> impl IntoView + use<> {
    (!says.is_empty()).then(|| {
        view! { <p class="then" data-test="then">{icon(Icon::Says)} <span>{says.to_string()}</span></p> }
    })
}

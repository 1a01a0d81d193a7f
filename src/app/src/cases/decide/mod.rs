//! A decision that waits for its answer: what has happened, the question, and
//! the form in which it is answered.

mod all;
mod by_hand;
mod drag;
mod number;
mod one;
mod option;
mod order;
mod place;
mod tray;

pub use drag::{Axis, Drag};
pub use option::{drawing, words};
pub use place::{moved, ordinal};

use super::{play::Play, player::Visit};
use clinic::case::Form;
use leptos::prelude::*;

/// A decision and its form.
#[component]
pub fn Decide(
    /// The sitting.
    play: Play,
    /// Which decision.
    at: usize,
) -> impl IntoView {
    let asked = play.asked(at);
    let form = match asked.form {
        Form::One => view! { <one::DecideOne play at /> }.into_any(),
        Form::All => view! { <all::DecideAll play at /> }.into_any(),
        Form::Order(_) => view! { <order::DecideOrder play at /> }.into_any(),
        Form::Tray { .. } => view! { <tray::DecideTray play at /> }.into_any(),
        Form::Number(_) => view! { <number::DecideNumber play at /> }.into_any(),
    };
    let told = (!asked.lead.is_empty()).then_some("told");
    view! {
        <Visit play at>
            {told.map(|id| view! { <p class="told" id=id>{asked.lead.clone()}</p> })}
            <h1 class="question" id="stem" tabindex="-1" aria-describedby=told>
                <span class="stage-label">{asked.name.clone()}<span class="unseen">": "</span></span>
                {asked.question.clone()}
            </h1>
            {form}
        </Visit>
    }
}

//! One option is the answer.

use super::{
    by_hand::ByHand,
    option::{Kind, option},
};
use crate::{cases::play::Play, parts::answer::AnswerButton};
use leptos::prelude::*;

/// Radio buttons over the options.
#[component]
pub fn DecideOne(
    /// The sitting.
    play: Play,
    /// Which decision.
    at: usize,
) -> impl IntoView {
    let asked = play.asked(at);
    let taken = play.taken(at);
    let rows = asked.choices.iter().map(|choice| {
        let id = choice.id.clone();
        option(Kind::Radio, choice, taken, move |_| {
            play.take(at, vec![id.clone()]);
        })
    });
    let rows = rows.collect_view();
    let ready = Signal::derive(move || taken.with(|taken| !taken.is_empty()));
    view! {
        <fieldset class="options">
            <legend class="unseen">"One of these"</legend>
            {rows}
        </fieldset>
        <AnswerButton ready give=move || play.give(at) />
        <ByHand play at />
    }
}

//! Every option that fits belongs to the answer; it may be none.

use super::option::{Kind, option};
use crate::{cases::play::Play, parts::answer::AnswerButton};
use leptos::prelude::*;

/// Checkboxes over the options.
#[component]
pub fn DecideAll(
    /// The sitting.
    play: Play,
    /// Which decision.
    at: usize,
) -> impl IntoView {
    let asked = play.asked(at);
    let taken = play.taken(at);
    let rows = asked.choices.iter().map(|choice| {
        let id = choice.id.clone();
        option(Kind::Checkbox, choice, taken, move |on| {
            let mut all = taken.get_untracked();
            all.retain(|other| *other != id);
            if on {
                all.push(id.clone());
            }
            play.take(at, all);
        })
    });
    let rows = rows.collect_view();
    let says = Signal::derive(move || {
        if taken.with(Vec::is_empty) {
            "Answer: none of these"
        } else {
            "Answer"
        }
    });
    view! {
        <p class="how-to">"Take all that fit."</p>
        <fieldset class="options">
            <legend class="unseen">"All that fit"</legend>
            {rows}
        </fieldset>
        <AnswerButton ready=true says give=move || play.give(at) />
    }
}

//! The other way to answer a decision of mixing: to mix. The bench is a place
//! of its own; a mix that was handed over there since the case was begun can
//! be taken for the answer here.

use crate::{
    cases::play::Play,
    parts::{
        icon::icon,
        verdict::{class, shape, word},
    },
    place::Place,
};
use leptos::prelude::*;

/// The way to the bench, and the mix that came from it. Nothing where the
/// decision cannot be answered by mixing.
#[component]
pub fn ByHand(
    /// The sitting.
    play: Play,
    /// Which decision.
    at: usize,
) -> impl IntoView {
    let asked = play.asked(at);
    let by_hand = asked.by_hand.as_ref()?;
    let to = Place::Mix(by_hand.material().clone(), Some(by_hand.usage().into()));
    let mixed = play.mixed(at);
    let says = if mixed.is_some() {
        "Mix another"
    } else {
        "Mix it by hand"
    };
    let taken = mixed.map(|mix| {
        let verdict = mix.verdict;
        view! {
            <p data-test="mixed">
                "Handed over at the bench: "
                <span class=format!("verdict {}", class(verdict))>{icon(shape(verdict))} {word(verdict)}</span>
            </p>
            <button
                type="button"
                class="button"
                data-test="answer-with-mix"
                on:click=move |_| play.give_mixed(at, &mix)
            >
                "Answer with this mix"
            </button>
        }
    });
    Some(view! {
        <section class="by-hand" data-test="by-hand">
            <h2 class="stage-label">"Or show it at the bench"</h2>
            <p class="hint">"Mix it, hand it over, and come back: the mix is then judged in the place of an option."</p>
            {taken}
            <a class="button button-quiet" href=to.fragment() data-test="mix-it">{says}</a>
        </section>
    })
}

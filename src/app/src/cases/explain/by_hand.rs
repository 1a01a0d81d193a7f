//! A decision that was answered with a mix: what the model says of it.

use super::super::play::Asked;
use crate::parts::sources::SourceNotes;
use clinic::case::ByHand;
use leptos::prelude::*;

/// The verdict on the mix; nothing where an option was the answer.
pub fn mixed(asked: &Asked, answer: &[String]) -> impl IntoView + use<> {
    let replay = ByHand::replay(answer)?;
    let judged = asked.by_hand.as_ref()?.verdict(replay)?;
    let line = |label: &'static str, says: String| {
        (!says.is_empty()).then(|| view! { <p><strong>{label}</strong> {says}</p> })
    };
    Some(view! {
        <section class="why" data-test="mixed-why">
            <h3 class="stage-label">"Your mix"</h3>
            <p>{judged.cause.clone()} " " {judged.marks} " of 100."</p>
            {line("To mend it: ", judged.mend.clone())}
            {line("Never: ", judged.never.clone())}
            <p class="hint">{judged.label.clone()}</p>
            <SourceNotes ids=judged.sources.clone() />
        </section>
    })
}

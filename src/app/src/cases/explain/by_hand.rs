//! A decision that was answered with a mix: what the model says of it.

use super::super::play::Asked;
use crate::parts::sources::SourceNotes;
use clinic::{case::ByHand, mixing::made::Line};
use leptos::prelude::*;

/// What was made, beside what is wanted.
fn made(lines: Vec<Line>) -> impl IntoView {
    let row = |line: Line| {
        view! {
            <tr>
                <th scope="row">{line.what}</th>
                <td>{line.done}</td>
                <td>{line.wanted}</td>
            </tr>
        }
    };
    view! {
        <div class="table-frame" tabindex="0" role="region" aria-label="What was made">
            <table class="numbers made" data-test="mixed-made">
                <thead><tr>
                    <th scope="col"><span class="unseen">"What"</span></th>
                    <th scope="col">"Made"</th>
                    <th scope="col">"Wanted"</th>
                </tr></thead>
                <tbody>{lines.into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
}

/// The verdict on the mix; nothing where an option was the answer.
pub fn mixed(asked: &Asked, answer: &[String]) -> impl IntoView + use<> {
    let replay = ByHand::replay(answer)?;
    let by_hand = asked.by_hand.as_ref()?;
    let judged = by_hand.verdict(replay)?;
    let also = judged
        .also
        .iter()
        .map(|it| view! { <li>{it.sentence.clone()}</li> });
    let also: Vec<_> = also.collect();
    let also = (!also.is_empty()).then(|| view! { <ul class="mb-also">{also}</ul> });
    let line = |label: &'static str, says: String| {
        (!says.is_empty()).then(|| view! { <p><strong>{label}</strong> {says}</p> })
    };
    Some(view! {
        <section class="why" data-test="mixed-why">
            <h3 class="stage-label">"Your mix"</h3>
            <p>{judged.marks} " of 100."</p>
            {also}
            {made(by_hand.made(replay))}
            {line("To mend it: ", judged.mend.clone())}
            {line("Never: ", judged.never.clone())}
            <p class="hint">{judged.label.clone()}</p>
            <SourceNotes ids=judged.sources.clone() />
        </section>
    })
}

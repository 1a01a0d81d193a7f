//! A question that was answered: the verdict, the right answer beside the own
//! one, the reason with its source, and what to study next.

mod answers;
mod study;

pub use self::study::study_link;

use crate::{
    cases::reasons,
    parts::{
        icon::{Icon, icon},
        verdict::class,
    },
};
use ::study::question::{Answer, Question, Verdict};
use leptos::prelude::*;

/// The verdict: shape, word and colour.
pub fn judged(verdict: &Verdict) -> impl IntoView + use<> {
    let shape = match (verdict.right, verdict.harm) {
        (true, _) => Icon::Right,
        (false, true) => Icon::Unsafe,
        (false, false) => Icon::Wrong,
    };
    let partly = !verdict.right && verdict.per_cent > 0;
    let class = class(super::given::verdict(verdict));
    view! {
        <div class=format!("judged {class}")>
            <p class="judged-word verdict" id="verdict" tabindex="-1" data-test="verdict">
                {icon(shape)} {verdict.says.clone()}
            </p>
            {partly.then(|| view! { <p class="judged-sum">{verdict.per_cent} " % of the mark"</p> })}
        </div>
    }
}

/// The right answer beside the own one, why, and what to study next.
pub fn explained(question: &Question, answer: Option<&Answer>) -> impl IntoView + use<> {
    let links: Vec<_> = question.study.iter().filter_map(study_link).collect();
    let next = (!links.is_empty()).then(|| {
        view! {
            <section class="study" data-test="study-next">
                <h2 class="stage-label">"Study next"</h2>
                <ul class="rows">{links}</ul>
            </section>
        }
    });
    view! {
        {answers::answers(question, answer)}
        <section class="q-why" data-test="why">
            <h2 class="stage-label">"Why"</h2>
            {reasons(&question.reasons)}
        </section>
        {next}
    }
}

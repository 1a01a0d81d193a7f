//! A tray was laid: what is wrong with it, and the right one by stages.

use super::{
    super::{play::Asked, upright},
    reasons::reasons,
    tray_faults::faults,
};
use clinic::case::{Choice, Decision, Form};
use leptos::prelude::*;

/// What is wrong with a laid tray, then the tray as it should be.
pub fn compared(asked: &Asked, answer: &[String]) -> impl IntoView + use<> {
    view! {
        {faults(asked, answer)}
        <section class="target" data-test="target">
            <h3 class="stage-label">"The tray in order of use"</h3>
            {stages(asked)}
        </section>
    }
}

/// The right tray by stages; each thing says on a tap why it is there.
pub fn stages(decision: &Decision) -> impl IntoView + use<> {
    let Form::Tray { target, titles, .. } = &decision.form else {
        return None;
    };
    let stage = |(title, ids): (&String, &Vec<String>)| {
        let things = ids.iter().filter_map(|id| decision.choice(id)).map(thing);
        (!ids.is_empty()).then(|| {
            view! {
                <li class="tray-stage">
                    <h4 class="stage-label">{title.clone()}</h4>
                    <ul class="target-things">{things.collect_view()}</ul>
                </li>
            }
        })
    };
    let all = titles.iter().zip(&target.stages).map(stage);
    Some(view! { <div class="tray"><ol class="tray-stages">{all.collect_view()}</ol></div> })
}

fn thing(choice: &Choice) -> impl IntoView + use<> {
    view! {
        <li>
            <details class="target-thing" name="target-thing">
                <summary>
                    {upright::laid(&choice.shows)}
                    <span class="laid-name">{choice.label.clone()}</span>
                </summary>
                <div class="target-why">{reasons(&choice.reasons)}</div>
            </details>
        </li>
    }
}

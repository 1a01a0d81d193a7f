//! What the patient is told, and what is often said and wrong.

use super::fold::Fold;
use catalogue::procedures::{Advice, Procedure, WrongWay};
use leptos::prelude::*;

/// What the patient is told after a procedure.
#[component]
pub fn AdviceList(
    /// The procedure.
    procedure: &'static Procedure,
) -> impl IntoView {
    let said = |advice: &'static Advice| {
        view! {
            <li>
                <q>{advice.say.as_str()}</q>
                <span class="because">{advice.because.as_str()}</span>
            </li>
        }
    };
    let wrong = |way: &'static WrongWay| {
        view! {
            <li>
                <q>{way.way.as_str()}</q>
                <span class="because">{way.because.as_str()}</span>
            </li>
        }
    };
    view! {
        <ul class="advice">{procedure.advice.iter().map(said).collect_view()}</ul>
        {(!procedure.wrong_advice.is_empty())
            .then(|| {
                view! {
                    <Fold title="Often said, and wrong">
                        <ul class="advice advice-wrong">
                            {procedure.wrong_advice.iter().map(wrong).collect_view()}
                        </ul>
                    </Fold>
                }
            })}
    }
}

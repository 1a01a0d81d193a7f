//! What the patient is told, and what is often said and wrong.

use super::{condition, fold::Fold, within::within};
use crate::taught::catalogue;
use catalogue::procedures::{Advice, Procedure, WrongWay};
use leptos::prelude::*;

/// What the patient is told after a procedure, set-ups included.
#[component]
pub fn AdviceList(
    /// The procedure.
    procedure: &'static Procedure,
) -> impl IntoView {
    let all = within(catalogue(), &procedure.id);
    let said: Vec<_> = all.iter().flat_map(|it| &it.advice).map(said).collect();
    let wrong: Vec<_> = all
        .iter()
        .flat_map(|it| &it.wrong_advice)
        .map(wrong)
        .collect();
    view! {
        <ul class="advice">{said}</ul>
        {(!wrong.is_empty())
            .then(|| {
                view! {
                    <Fold title="Often said, and wrong">
                        <ul class="advice advice-wrong">{wrong}</ul>
                    </Fold>
                }
            })}
    }
}

fn said(advice: &'static Advice) -> impl IntoView {
    let whom = advice.when.as_ref().map(|when| {
        view! { <span class="whom">"For: " {condition::words(catalogue(), when)}</span> }
    });
    view! {
        <li>
            {whom} <q>{advice.say.as_str()}</q>
            <span class="because">{advice.because.as_str()}</span>
        </li>
    }
}

fn wrong(way: &'static WrongWay) -> impl IntoView {
    view! {
        <li>
            <q>{way.way.as_str()}</q>
            <span class="because">{way.because.as_str()}</span>
        </li>
    }
}

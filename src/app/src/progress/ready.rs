//! Readiness for a form like ours: shown only where enough is known, as a band,
//! in words that claim no more.

use crate::{
    parts::{
        fold::Fold,
        icon::{Icon, icon},
    },
    place::Place,
    questions::{Questions, Studied},
};
use leptos::prelude::*;
use study::mastery::{Mastery, Readiness, Target};

/// How many questions the form has that readiness is about.
const ITEMS: usize = 100;

/// How ready a student is who stands like this.
pub fn forecast(questions: Questions, studied: &Studied, mastery: &Mastery) -> Readiness {
    let target = Target {
        items: ITEMS,
        percent: u32::from(studied.plan.pass),
    };
    Readiness::of(questions.items(), mastery, target, studied.today)
}

/// The section of readiness, with the programme's per cent to pass.
pub fn readiness(pass: u8, readiness: &Readiness) -> impl IntoView + use<> {
    let band = readiness.band.map(|band| {
        view! { <p class="q-band" data-test="band">{capital(band.words())}</p> }
    });
    // Without a band the first sentence says so, and the fold says what is lacking.
    let most = if readiness.band.is_some() {
        usize::MAX
    } else {
        1
    };
    let words = readiness.words.iter().take(most);
    let words = words
        .map(|words| view! { <p>{words.clone()}</p> })
        .collect_view();
    let (met, all) = (
        readiness.gates.iter().filter(|gate| gate.met).count(),
        readiness.gates.len(),
    );
    let gates = readiness.gates.iter().map(|gate| {
        let (mark, says) = if gate.met {
            (Icon::Right, "Met")
        } else {
            (Icon::Missing, "Not yet")
        };
        view! { <li>{icon(mark)} <span>{says} ": " {gate.words.clone()}</span></li> }
    });
    let gates = gates.collect_view();
    let number = readiness.rounded.map(|number| {
        view! { <p>"In numbers, rounded to 5: " {number} " %."</p> }
    });
    view! {
        <section class="group" data-test="readiness">
            <h2>"Readiness"</h2>
            {band}
            <div class="prose">{words}</div>
            <Fold title=format!("What it needs: {met} of {all} met") test="gates">
                <ul class="q-gates">{gates}</ul>
                {number}
                <p>
                    "The pass mark is that of your programme, " {pass} " %. "
                    <a href=Place::Forms(String::new()).fragment()>"Change it with a practice form"</a>
                    "."
                </p>
            </Fold>
        </section>
    }
}

fn capital(words: &str) -> String {
    crate::parts::capital::capital(words)
}

//! A case to order: what it has to be about, how hard, and what the patient has
//! to have.

use crate::{
    browser::{address::Address, chance},
    parts::{
        announce::announcer,
        notice::{Notice, Tone},
        page::Page,
        wanted::{booked, choose, flags, level_of, levels},
    },
    place::Place,
    taught::{catalogue, clinic},
};
use clinic::case::Wanted;
use leptos::prelude::*;

/// How many patients a seed is drawn from: short enough to be read aloud.
const SEEDS: u64 = 1_000_000;

/// The screen.
#[component]
pub fn OrderScreen() -> impl IntoView {
    let (clinic, announcer) = (clinic(), announcer());
    let address: Address = expect_context();
    let wanted = RwSignal::new(Wanted::default());
    let none = RwSignal::new(false);
    let draw = move |_| {
        let seed = chance::bits() % SEEDS;
        let drawn = wanted.with_untracked(|wanted| clinic.case_to_order(wanted, seed));
        none.set(drawn.is_none());
        match drawn {
            Some(case) => address.go(Place::Case(case.frame, case.seed, case.with)),
            None => announcer.say("No case fits all of that."),
        }
    };
    let nothing = move || {
        none.get().then(|| {
            view! {
                <Notice tone=Tone::Attention>
                    <p data-test="order-none">
                        "No case fits all of that. Leave one of them open and draw again."
                    </p>
                </Notice>
            }
        })
    };
    let order = move |change: fn(&mut Wanted, Option<&str>)| {
        move |value: String| {
            none.set(false);
            wanted.update(|wanted| change(wanted, Some(&*value).filter(|it| !it.is_empty())));
        }
    };
    view! {
        <Page title="A case to order" over="Cases" up=Place::Cases.fragment()>
            <p class="lead">"Say what the case has to be. What you leave open can be anything."</p>
            <div class="order-form">
                {choose("Booked for", "order-procedure", booked(), order(|w, v| w.booked = v.map(Into::into)))}
                {choose("Mainly about", "order-competency", competencies(), order(|w, v| w.competency = v.map(Into::into)))}
                {choose("How hard", "order-level", levels(), order(|w, v| w.level = v.and_then(level_of)))}
                {choose("The patient has", "order-with", flags(), order(|w, v| w.with = v.map(Into::into)))}
            </div>
            <p class="hint">"How hard is an estimate of our own, from how much has to be seen and how close the wrong options are."</p>
            {nothing}
            <div class="case-go">
                <button type="button" class="button" data-test="order-draw" on:click=draw>"Draw a case"</button>
            </div>
        </Page>
    }
}

/// The competencies that some frame mainly shows.
fn competencies() -> Vec<(String, String)> {
    let all = catalogue().competencies.iter();
    let shown = all.filter(|it| {
        catalogue()
            .cases
            .iter()
            .any(|frame| frame.competency == it.id)
    });
    shown
        .map(|it| (it.id.to_string(), it.name.clone()))
        .collect()
}

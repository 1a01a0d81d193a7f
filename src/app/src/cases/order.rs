//! A case to order: what it has to be about, how hard, and what the patient has
//! to have.

use crate::{
    browser::{address::Address, chance},
    parts::{
        announce::announcer,
        level::level,
        notice::{Notice, Tone},
        page::Page,
    },
    place::Place,
    taught::{catalogue, clinic},
};
use catalogue::{
    cases::Level,
    findings::{Finding, Known, Scale},
    rules::Conclusion,
};
use clinic::case::Wanted;
use leptos::prelude::*;

/// How many patients a seed is drawn from: short enough to be read aloud.
const SEEDS: u64 = 1_000_000;

const LEVELS: [Level; 3] = [Level::Basic, Level::Core, Level::Demanding];

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
                {choose("How hard", "order-level", levels(), order(|w, v| w.level = v.and_then(|v| LEVELS.get(v.parse::<usize>().ok()?).copied())))}
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

/// One thing that can be asked for, or left open.
fn choose(
    label: &'static str,
    hook: &'static str,
    options: Vec<(String, String)>,
    choose: impl Fn(String) + 'static,
) -> impl IntoView {
    let option = |(value, says)| view! { <option value=value>{says}</option> };
    view! {
        <label class="field">
            <span>{label}</span>
            <select data-test=hook on:change=move |event| choose(event_target_value(&event))>
                <option value="">"Anything"</option>
                {options.into_iter().map(option).collect_view()}
            </select>
        </label>
    }
}

/// The procedures that some frame is booked for.
fn booked() -> Vec<(String, String)> {
    let all = catalogue().procedures.iter();
    let booked = all.filter(|it| catalogue().cases.iter().any(|frame| frame.booked == it.id));
    booked
        .map(|it| (it.id.to_string(), it.name.clone()))
        .collect()
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

fn levels() -> Vec<(String, String)> {
    let all = LEVELS.iter().enumerate();
    all.map(|(at, it)| (at.to_string(), level(*it).to_owned()))
        .collect()
}

/// The flags of a chart from which it follows that a substance is avoided:
/// allergies and sensitivities.
fn flags() -> Vec<(String, String)> {
    let avoids = |finding: &&Finding| {
        catalogue().rules.iter().any(|rule| {
            rule.then
                .iter()
                .any(|it| matches!(it, Conclusion::Avoid { .. }))
                && rule
                    .when
                    .expr()
                    .atoms()
                    .iter()
                    .any(|atom| atom.finding() == Some(&finding.id))
        })
    };
    let charted =
        |it: &&Finding| it.known == Known::Chart && matches!(it.scale, Scale::Flag { .. });
    let found = catalogue().findings.iter().filter(charted).filter(avoids);
    found
        .map(|it| (it.id.to_string(), it.name.clone()))
        .collect()
}

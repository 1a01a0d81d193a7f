//! The choices of a case, a mix, a number and a form.

use super::picked::{LENGTHS, Picked};
use crate::{
    parts::{
        choice::{Choice, Choosable},
        wanted::{booked, choose, flags, level_of, levels},
    },
    questions,
    taught::catalogue,
};
use class::{forms::WHOLE, task::Order};
use clinic::{
    mixing::{Offer, steps_of},
    numbers::exercises::Family,
};
use leptos::prelude::*;

/// What a case has to be; what is left open can be anything.
#[component]
pub fn CaseFields(
    /// What was chosen.
    picked: Picked,
) -> impl IntoView {
    let change = move |change: fn(&mut Order, Option<String>)| {
        move |value: String| {
            let value = Some(value).filter(|it| !it.is_empty());
            picked.order.update(|order| change(order, value));
        }
    };
    let frames = catalogue().cases.iter();
    let frames = frames.map(|it| (it.id.to_string(), it.title.clone()));
    view! {
        <div class="dk-fields">
            {choose("Case", "assign-frame", frames.collect(), change(|o, v| o.frame = v))}
            {choose("The patient has", "assign-with", flags(), change(|o, v| o.with = v))}
            {choose("How hard", "assign-level", levels(), change(|o, v| {
                o.level = v.as_deref().and_then(level_of);
            }))}
            {choose("Booked for", "assign-booked", booked(), change(|o, v| o.booked = v))}
        </div>
        <p class="hint">
            "With a case chosen, what it is booked for follows from it. Left open, every seat draws its own kind of case."
        </p>
    }
}

/// Which material is mixed, and for what.
#[component]
pub fn MixFields(
    /// What was chosen.
    picked: Picked,
) -> impl IntoView {
    let offers: Vec<Offer> = catalogue()
        .materials
        .iter()
        .filter_map(|it| steps_of(catalogue(), &it.id, None).ok())
        .collect();
    let materials = offers.iter();
    let materials = materials.map(|it| (it.material.to_string(), it.name.clone()));
    let materials = listed(materials.collect(), picked.material);
    let offers = StoredValue::new_local(offers);
    let uses = move || {
        let material = picked.material.get();
        let uses = offers.with_value(|all| {
            let mut all = all.iter();
            let offer = all.find(|it| it.material.as_str() == material)?;
            // The usual use needs no name, which leaves room for a code to be typed.
            let mut uses = offer.uses.clone();
            uses.first_mut()?.0 = String::new();
            Some(uses)
        });
        listed(uses.unwrap_or_default(), picked.usage)
    };
    view! {
        <div class="dk-fields">
            <label class="field">
                <span>"Material"</span>
                <select
                    data-test="assign-material"
                    on:change=move |event| {
                        picked.usage.set(String::new());
                        picked.material.set(event_target_value(&event));
                    }
                >
                    <option value="">"Choose"</option>
                    {materials}
                </select>
            </label>
            <label class="field">
                <span>"Mixed for"</span>
                <select
                    data-test="assign-usage"
                    disabled=move || picked.material.with(String::is_empty)
                    on:change=move |event| picked.usage.set(event_target_value(&event))
                >
                    {uses}
                </select>
            </label>
        </div>
        <p class="hint">
            "Made by hand at the bench, against the clock, without one, or in words, as the student needs. Each seat has its own room and its own moment. You see the same mix: it is made again here from what the hand did."
        </p>
    }
}

/// Which numbers are worked out.
#[component]
pub fn NumberFields(
    /// What was chosen.
    picked: Picked,
) -> impl IntoView {
    let groups = catalogue().competencies.iter().map(|competency| {
        let own = Family::ALL.into_iter();
        let own = own.filter(|it| it.competency() == competency.id);
        let own = own.map(|it| (it.id().to_owned(), it.name().to_owned()));
        (competency.name.clone(), own.collect::<Vec<_>>())
    });
    let groups = groups.filter(|(_, own)| !own.is_empty());
    let groups = groups.map(|(name, own)| {
        view! { <optgroup label=name>{listed(own, picked.number)}</optgroup> }
    });
    view! {
        <div class="dk-fields">
            <label class="field">
                <span>"Numbers"</span>
                <select
                    data-test="assign-number"
                    on:change=move |event| picked.number.set(event_target_value(&event))
                >
                    {groups.collect_view()}
                </select>
            </label>
        </div>
        <p class="hint">"Typed as it is worked out. In the report, answers stand by the slip that leads to them, where it is a known one."</p>
    }
}

/// How long a practice form is, and over what.
#[component]
pub fn FormFields(
    /// What was chosen.
    picked: Picked,
) -> impl IntoView {
    questions::prepare();
    let lengths = LENGTHS.map(|it| Choosable::new(it.to_string(), it.to_string()));
    let own = catalogue().competencies.iter();
    let own = own.map(|it| (it.id.to_string(), it.name.clone()));
    let whole = (WHOLE.to_owned(), "The whole blueprint".to_owned());
    let blueprints = std::iter::once(whole).chain(own).collect();
    view! {
        <Choice
            legend="Questions"
            options=lengths.to_vec()
            chosen=Signal::derive(move || picked.questions.get().to_string())
            choose=move |value: String| picked.questions.set(value.parse().unwrap_or(LENGTHS[1]))
            test="assign-length"
        />
        <div class="dk-fields">
            <label class="field">
                <span>"Over"</span>
                <select
                    data-test="assign-blueprint"
                    on:change=move |event| picked.blueprint.set(event_target_value(&event))
                >
                    {listed(blueprints, picked.blueprint)}
                </select>
            </label>
        </div>
        <p class="hint">"Answers can be changed until the form is handed in, and are explained at its end."</p>
    }
}

/// Options of a list, with the one that is chosen.
fn listed(all: Vec<(String, String)>, chosen: RwSignal<String>) -> impl IntoView {
    let now = chosen.get_untracked();
    let option = move |(value, says): (String, String)| {
        let selected = value == now;
        view! { <option value=value selected=selected>{says}</option> }
    };
    all.into_iter().map(option).collect_view()
}

//! Changing the patient: one control for each finding the procedure asks about.

use super::supposing;
use crate::{
    browser::address::Address,
    parts::{
        notice::{Notice, Tone},
        order::in_order,
    },
    place::{Place, Supposed, View},
    taught::{catalogue, clinic},
};
use catalogue::{
    findings::{Finding, Known, Scale},
    ids::FindingId,
    procedures::Procedure,
};
use leptos::prelude::*;

/// The controls for the supposed patient. What is chosen goes into the
/// address, so that it survives a reload and can be passed on.
#[component]
pub fn Chips(
    /// The procedure.
    procedure: &'static Procedure,
    /// The side of it that is shown.
    view: View,
    /// The patient as supposed so far.
    supposed: Signal<Supposed>,
) -> impl IntoView {
    let address: Address = expect_context();
    let suppose = Callback::new(move |next| {
        address.amend(Place::Procedure(procedure.id.clone(), view, next));
    });
    view! { <PatientControls procedure supposed suppose /> }
}

/// The controls for a patient who is supposed at any place.
#[component]
pub fn PatientControls(
    /// The procedure.
    procedure: &'static Procedure,
    /// The patient as supposed so far.
    #[prop(into)]
    supposed: Signal<Supposed>,
    /// Told the patient as supposed from now on.
    suppose: Callback<Supposed>,
) -> impl IntoView {
    let suppose = Callback::new(move |(finding, value): (FindingId, Option<String>)| {
        let mut next = supposed.get_untracked();
        next.retain(|(each, _)| *each != finding);
        next.extend(value.map(|value| (finding, value)));
        suppose.run(next);
    });
    let clinic = clinic();
    let impossible = move || {
        let patient = supposed.with(|supposed| supposing::patient(&clinic, supposed));
        let because = clinic.impossible(&patient)?.to_string();
        Some(view! {
            <Notice tone=Tone::Attention><p>"There is no such patient. " {because}</p></Notice>
        })
    };
    let findings = supposing::asked(catalogue(), &procedure.id);
    let controls: Vec<_> = findings
        .into_iter()
        .map(|finding| control(procedure, finding, supposed, suppose))
        .collect();
    (!controls.is_empty()).then(|| {
        view! {
            <fieldset class="patient" data-test="patient">
                <legend class="stage-label">"For a patient like this"</legend>
                <div class="patient-controls">{controls}</div>
                <div role="status">{impossible}</div>
            </fieldset>
        }
    })
}

type Suppose = Callback<(FindingId, Option<String>)>;

fn control(
    procedure: &'static Procedure,
    finding: &'static Finding,
    supposed: Signal<Supposed>,
    suppose: Suppose,
) -> AnyView {
    let value = Memo::new(move |_| {
        supposed.with(|supposed| {
            let mut all = supposed.iter();
            all.find(|(id, _)| *id == finding.id)
                .map(|(_, value)| value.clone())
        })
    });
    match &finding.scale {
        Scale::Flag { .. } => flag(finding, value, suppose).into_any(),
        Scale::Words(words) => {
            let usual = words.first().map(|word| word.id.clone());
            let options = words
                .iter()
                .map(|word| (word.id.clone(), word.says.clone()))
                .collect();
            select(finding, usual, options, value, suppose).into_any()
        }
        Scale::Number { unit, usual, .. } => {
            let mut numbers = supposing::telling_values(catalogue(), &procedure.id, finding);
            if finding.known == Known::Chart {
                numbers.push(*usual);
                in_order(&mut numbers, |a, b| a < b);
                numbers.dedup();
            }
            let options = numbers
                .into_iter()
                .map(|number| (number.to_string(), format!("{number} {unit}")))
                .collect();
            select(finding, Some(usual.to_string()), options, value, suppose).into_any()
        }
    }
}

fn flag(finding: &'static Finding, value: Memo<Option<String>>, suppose: Suppose) -> impl IntoView {
    let set = move || value.with(|value| value.as_deref() == Some("yes"));
    let toggle = move |_| {
        let next = (!set()).then(|| "yes".to_string());
        suppose.run((finding.id.clone(), next));
    };
    view! {
        <label class="chip">
            <input
                type="checkbox"
                prop:checked=set
                on:change=toggle
                data-test=format!("finding-{}", finding.id)
            />
            <span>{finding.name.as_str()}</span>
        </label>
    }
}

/// What stands for a finding that the chart does not hold.
fn not_yet(known: Known) -> Option<&'static str> {
    match known {
        Known::Chart => None,
        Known::Opening => Some("not opened yet"),
        Known::Chosen => Some("not settled yet"),
        Known::Derived => Some("not known"),
    }
}

/// A list of values. Where nothing is chosen, the chart says the usual one; what
/// only the opened tooth shows is then not known.
fn select(
    finding: &'static Finding,
    usual: Option<String>,
    mut options: Vec<(String, String)>,
    value: Memo<Option<String>>,
    suppose: Suppose,
) -> impl IntoView {
    let usual = match not_yet(finding.known) {
        None => usual.unwrap_or_default(),
        Some(words) => {
            options.insert(0, (String::new(), words.into()));
            String::new()
        }
    };
    let shown = {
        let usual = usual.clone();
        move || value.get().unwrap_or_else(|| usual.clone())
    };
    let choose = move |event| {
        let chosen = event_target_value(&event);
        let next = (chosen != usual).then_some(chosen);
        suppose.run((finding.id.clone(), next));
    };
    let options: Vec<_> = options
        .into_iter()
        .map(|(id, says)| view! { <option value=id>{says}</option> })
        .collect();
    view! {
        <label class="select" class:select-set=move || value.with(Option::is_some)>
            <span>{finding.name.as_str()}</span>
            <select
                prop:value=shown
                on:change=choose
                data-test=format!("finding-{}", finding.id)
            >
                {options}
            </select>
        </label>
    }
}

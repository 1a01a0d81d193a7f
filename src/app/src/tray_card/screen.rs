//! The card as it will be printed, with the choice of its paper.

use super::{cautions::Cautions, paper::Paper, steps::Steps, tray::Laid};
use crate::{
    browser::{address::Address, printer},
    cards::applied,
    parts::{
        choice::{Choice, Choosable},
        icon::{Icon, icon},
        page::Page,
    },
    place::{Place, Supposed, View},
    procedures::{supposed_patient, supposed_words},
    shell::NotHere,
    taught::{catalogue, clinic},
};
use catalogue::{ids::ProcedureId, procedures::Procedure};
use leptos::prelude::*;

/// The screen of a tray card.
#[component]
pub fn TrayCardScreen(
    /// The procedure.
    id: ProcedureId,
    /// Where the reader is, with the paper and the patient.
    place: Signal<Place>,
) -> impl IntoView {
    let Some(procedure) = catalogue().procedure(&id) else {
        return view! { <NotHere what="procedure" /> }.into_any();
    };
    let address: Address = expect_context();
    let chosen = Memo::new(move |_| match place.get() {
        Place::TrayCard(_, paper, patient) => (paper, patient),
        _ => (Paper::default(), Supposed::new()),
    });
    let paper = Signal::derive(move || chosen.with(|(paper, _)| paper.value().to_string()));
    let take = move |value: String| {
        let patient = chosen.with_untracked(|(_, patient)| patient.clone());
        let paper = Paper::from_value(&value);
        address.amend(Place::TrayCard(procedure.id.clone(), paper, patient));
    };
    let patient = Memo::new(move |_| chosen.with(|(_, patient)| patient.clone()));
    let set_up = Place::Procedure(id, View::SetUp, patient.get_untracked()).fragment();
    let options = Paper::ALL.map(|paper| Choosable::new(paper.value(), paper.label()));
    view! {
        <Page
            title=format!("Tray card: {}", procedure.short)
            over=format!("{}, set-up", procedure.short)
            up=set_up
        >
            <div class="print-choices">
                <Choice legend="Paper" options=options.into() chosen=paper choose=take test="paper" />
                <button type="button" class="button" data-test="print" on:click=move |_| printer::print()>
                    {icon(Icon::Print)} "Print"
                </button>
                <p class="hint">
                    "It is for the patient that the set-up supposes. Change the patient there, and the card follows."
                </p>
            </div>
            <article class=move || format!("tray-card paper-{}", paper.get()) data-test="tray-card">
                {move || patient.with(|patient| face(procedure, patient))}
            </article>
        </Page>
    }
    .into_any()
}

/// What stands on the card.
fn face(procedure: &'static Procedure, supposed: &Supposed) -> impl IntoView + use<> {
    let clinic = clinic();
    let patient = supposed_patient(&clinic, supposed);
    let tray = clinic.tray(&procedure.id, &patient);
    let steps = clinic.steps(&procedure.id, &patient);
    let whom = match supposed_words(catalogue(), supposed) {
        words if words.is_empty() => "The usual patient".to_string(),
        words => format!("Patient: {}", words.join("; ")),
    };
    let card = applied().card().get();
    let card = card.map(|card| format!(" · With the preference card: {}", card.name));
    let changes = tray.changes.clone();
    let pairs = tray.must_before.clone();
    view! {
        <header class="tc-head">
            <h2>{procedure.name.as_str()}</h2>
            <p>{whom} {card}</p>
        </header>
        <Laid stages=tray.stages />
        <Cautions procedure changes pairs />
        <Steps steps />
        <footer class="tc-foot">
            "For study. The dentist diagnoses and chooses; local law, the practice's protocol and the material's instructions for use come first. Trayward"
        </footer>
    }
}

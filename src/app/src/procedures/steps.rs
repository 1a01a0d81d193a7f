//! The steps of a procedure, by who acts.

use super::{around::Around, chips::Chips, supposing};
use crate::{
    cards::WithCard,
    parts::{
        choice::{Choice, Choosable},
        steps::StepList,
    },
    place::{ClassPlace, Place, Supposed, View},
    taught::clinic,
};
use catalogue::procedures::{Actor, Procedure};
use leptos::prelude::*;

/// The steps side of a procedure.
#[component]
pub fn Steps(
    /// The procedure.
    procedure: &'static Procedure,
    /// The patient the reader supposes.
    supposed: Signal<Supposed>,
) -> impl IntoView {
    let clinic = clinic();
    let voice = RwSignal::new(String::from("all"));
    let steps = move || {
        let patient = supposed.with(|supposed| supposing::patient(&clinic, supposed));
        let mut steps = clinic.steps(&procedure.id, &patient);
        let voice = voice.get();
        steps.retain(|placed| heard(placed.step.who, &voice));
        view! { <StepList steps /> }
    };
    let options = vec![
        Choosable::new("all", "Both voices"),
        Choosable::new("assistant", "Assistant"),
        Choosable::new("dentist", "Dentist"),
    ];
    view! {
        <div class="with-patient">
            <Chips procedure view=View::Steps supposed />
            <div>
                <h2 class="unseen">"The steps"</h2>
                <WithCard />
                <Choice
                    legend="Show"
                    options
                    chosen=voice
                    choose=move |value| voice.set(value)
                    test="voice"
                />
                {steps}
                <p>
                    <a
                        href=Place::Class(ClassPlace::CheckOff(procedure.id.clone())).fragment()
                        data-test="check-off"
                    >
                        "Check-off sheet for hands-on assessment"
                    </a>
                </p>
                <Around procedure />
            </div>
        </div>
    }
}

/// Whether a step belongs to the voice that is shown. What both do together
/// belongs to each.
fn heard(who: Actor, voice: &str) -> bool {
    match who {
        Actor::Team => true,
        Actor::Dentist => voice != "assistant",
        Actor::Assistant => voice != "dentist",
    }
}

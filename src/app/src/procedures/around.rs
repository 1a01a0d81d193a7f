//! What stands round the steps: when the procedure is chosen, its hazards, and
//! what is written down.

use crate::{
    glossary::WordsFor,
    parts::{fold::Fold, sources::SourceNotes},
};
use catalogue::{glossary::See, procedures::Procedure};
use leptos::prelude::*;

/// Folded lists after the steps.
#[component]
pub fn Around(
    /// The procedure.
    procedure: &'static Procedure,
) -> impl IntoView {
    view! {
        <div class="around">
            {list("When the dentist chooses it", &procedure.indications)}
            {list("Hazards to the patient and the team", &procedure.hazards)}
            {list("What is written in the record", &procedure.records)}
            <WordsFor what=See::Procedure(procedure.id.clone()) />
            <SourceNotes ids=procedure.sources.clone() />
        </div>
    }
}

fn list(title: &'static str, lines: &'static [String]) -> impl IntoView {
    (!lines.is_empty()).then(|| {
        view! {
            <Fold title>
                <ul>{lines.iter().map(|line| view! { <li>{line.as_str()}</li> }).collect_view()}</ul>
            </Fold>
        }
    })
}

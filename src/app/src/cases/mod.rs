//! Cases: patients to practise with.

mod list;

pub use list::{CasesScreen, level};

use crate::{parts::page::Page, place::Place, shell::NotHere, taught::catalogue};
use catalogue::ids::CaseId;
use leptos::prelude::*;

/// The screen of one case.
#[component]
pub fn CaseScreen(
    /// Its frame.
    frame: CaseId,
    /// The seed its patient is drawn from.
    seed: u64,
) -> impl IntoView {
    let Some(frame) = catalogue().case(&frame) else {
        return view! { <NotHere what="case" /> }.into_any();
    };
    view! {
        <Page title=frame.title.as_str() over="Cases" up=Place::Cases.fragment()>
            <p>"Patient " {seed} " cannot be seen yet: cases are still being set up."</p>
        </Page>
    }
    .into_any()
}

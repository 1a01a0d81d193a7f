//! Cases: patients to practise with.

mod list;

pub use list::{CasesScreen, level};

use crate::{place::Place, shell::NotHere, taught::catalogue};
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
    let _ = (catalogue().case(&frame), seed, Place::Cases);
    view! { <NotHere what="case" /> }
}

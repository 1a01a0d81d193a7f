//! Cases: patients to practise with.
//!
//! - `list`: all cases, and what was done of each
//! - `play`, `scene`, `draft`: a sitting at a case, read from the record
//! - `player`: one case on screen, from its opening to its debrief
//! - `decide`: a decision that waits for its answer, a file for each form
//! - `explain`: a decision that was answered
//!
//! Nothing here decides what is right: it asks [`clinic`].

mod chart;
mod debrief;
mod decide;
mod draft;
mod explain;
mod list;
mod opening;
mod play;
mod player;
mod progress;
mod scene;
mod sheets;
mod study;
mod tooth;
mod upright;

pub use list::{CasesScreen, level};

use crate::{
    shell::NotHere,
    taught::{catalogue, clinic},
};
use catalogue::ids::CaseId;
use leptos::prelude::*;
use player::Player;

/// The screen of one case.
#[component]
pub fn CaseScreen(
    /// Its frame.
    frame: CaseId,
    /// The seed its patient is drawn from.
    seed: u64,
) -> impl IntoView {
    let frame = catalogue().case(&frame);
    match frame.and_then(|frame| clinic().case(frame, seed)) {
        Some(case) => view! { <Player case /> }.into_any(),
        None => view! { <NotHere what="case" /> }.into_any(),
    }
}

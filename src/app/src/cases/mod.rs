//! Cases: patients to practise with.
//!
//! - `list`: all cases, and what was done of each
//! - `order`: a case drawn to what the student asks for
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
mod order;
mod play;
mod player;
mod progress;
mod scene;
mod sheets;
mod study;
mod tooth;
mod upright;

pub use decide::{Axis, Drag, moved, ordinal};
pub use explain::reasons;
pub use list::{CasesScreen, next_seed};
pub use order::OrderScreen;
pub use play::{Sought, answered, verdict};
pub use upright::laid as laid_drawing;

use crate::{
    cards,
    log::log,
    shell::NotHere,
    taught::{self, catalogue, clinic},
};
use catalogue::ids::{CaseId, FindingId};
use leptos::prelude::*;
use player::Player;

/// The screen of one case. A case under way keeps the card that it was started
/// with, whatever card is in use by now.
#[component]
pub fn CaseScreen(
    /// Its frame.
    frame: CaseId,
    /// The seed its patient is drawn from.
    seed: u64,
    /// What the patient has to have beyond the frame.
    with: Option<FindingId>,
) -> impl IntoView {
    let Some(frame) = catalogue().case(&frame) else {
        return view! { <NotHere what="case" /> }.into_any();
    };
    let sought = Sought::new(frame.id.as_str(), seed, with.as_ref());
    let begun = log().memo(move |events| sought.latest(events).map(|it| it.card));
    let in_use = cards::applied().card();
    let card = Memo::new(move |_| match begun.get() {
        Some(kept) => kept.and_then(|text| cards::read(&text, catalogue()).ok()),
        None => in_use.get(),
    });
    let played = move || {
        taught::provide_card(card.get());
        match clinic().case_with(frame, seed, with.as_ref()) {
            Some(case) => view! { <Player case /> }.into_any(),
            None => view! { <NotHere what="case" /> }.into_any(),
        }
    };
    view! { {played} }.into_any()
}

//! A sitting: questions for five, ten or twenty minutes.
//!
//! - `ahead`: on Today, what is due and what is coming
//! - `opening`: what a sitting would be made of
//! - `queue`: which question comes next
//! - `play`, `player`: a sitting under way, from the record
//! - `ended`: what was learnt and what is next

mod ahead;
mod ended;
mod opening;
mod play;
mod player;
mod queue;

pub use ahead::Ahead;

use crate::{
    place::SittingAt,
    questions::{Ready, prepare},
};
use leptos::prelude::*;

/// The screen of a sitting, to be begun or under way.
#[component]
pub fn SittingScreen(
    /// Which sitting.
    at: SittingAt,
) -> impl IntoView {
    prepare();
    match at {
        SittingAt::New(minutes) => view! { <opening::Opening minutes /> }.into_any(),
        SittingAt::Kept(id) => view! {
            <Ready show=move |questions| view! { <player::Player id questions /> } />
        }
        .into_any(),
    }
}

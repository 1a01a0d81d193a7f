//! A drawn tray: what it is for, what does not belong, what is missing. The
//! evidence is shown when all three are answered.

mod ask;
mod seen;
mod sitting;

use crate::{
    parts::{assigned::belongs_to, page::Page},
    place::Place,
    shell::NotHere,
    taught::standard,
};
use ask::Ask;
use leptos::prelude::*;
use seen::Seen;
use sitting::Sitting;

/// The screen of a drawn tray.
#[component]
pub fn ReadingExerciseScreen(
    /// The seed it is drawn by.
    seed: u64,
) -> impl IntoView {
    let Some(exercise) = standard().tray_reading(seed) else {
        return view! { <NotHere what="tray" /> }.into_any();
    };
    let sitting = Sitting::open(exercise);
    let scene = sitting.scene();
    Effect::new(move |before: Option<Option<usize>>| {
        let now = scene.get();
        if before.is_some_and(|before| before != now) {
            sitting::arrive();
        }
        now
    });
    let shown = move || match scene.get() {
        Some(at) => view! { <Ask sitting at /> }.into_any(),
        None => view! { <Seen sitting /> }.into_any(),
    };
    let (over, up) = belongs_to(sitting.id(), "Reading a tray", &Place::Reading(Vec::new()));
    view! {
        <Page title="A tray to be read" over up>
            {shown}
        </Page>
    }
    .into_any()
}

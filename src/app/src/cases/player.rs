//! One case on screen.

use super::{
    debrief::Debrief, decide::Decide, explain::Explain, opening::Opening, play::Play,
    progress::Progress, scene::Scene, sheets::Sheets,
};
use crate::{
    browser::{focus, scroll},
    cards::CardNote,
    parts::assigned::belongs_to,
    place::Place,
};
use clinic::case::Case;
use leptos::prelude::*;

/// A case, at the scene where the record has it.
#[component]
pub fn Player(
    /// The case.
    case: Case,
) -> impl IntoView {
    let play = Play::open(case);
    let scene = play.scene();
    Effect::new(move |before: Option<Scene>| {
        let now = scene.get();
        if before.is_some_and(|before| before != now) {
            arrive(now);
        }
        now
    });
    move || match scene.get() {
        Scene::Opening => view! { <Opening play /> }.into_any(),
        Scene::Decide(at) => view! { <Decide play at /> }.into_any(),
        Scene::Explain(at) => view! { <Explain play at /> }.into_any(),
        Scene::Debrief => view! { <Debrief play /> }.into_any(),
    }
}

/// A new scene begins at its top, with focus on what it is about.
fn arrive(scene: Scene) {
    scroll::to_top();
    focus::first(match scene {
        Scene::Explain(_) => "#verdict",
        _ => "#main h1",
    });
}

/// What frames every decision: the way back, the parts of the visit, and what
/// lies ready to be looked up.
#[component]
pub fn Visit(
    /// The sitting.
    play: Play,
    /// The decision that is on screen.
    at: usize,
    /// What is on screen.
    children: Children,
) -> impl IntoView {
    let (case, asked) = (play.case(), play.asked(at));
    document().set_title(&format!("{} · {} · Trayward", asked.name, case.title));
    let (over, up) = belongs_to(play.id(), "Cases", &Place::Cases);
    view! {
        <article class="page case" data-test=format!("decision-{}", asked.id)>
            <header class="case-head">
                <a class="page-up" href=up data-test="up">{over}</a>
                <Sheets play at />
                <p class="case-title"><CardNote /></p>
                <Progress part=asked.part() />
            </header>
            {children()}
        </article>
    }
}

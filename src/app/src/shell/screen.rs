//! From a place to its screen.

use super::elsewhere::Elsewhere;
use crate::{
    about::AboutScreen,
    bench::BenchScreen,
    browser::focus,
    cards::{CardScreen, CardsScreen, WishScreen},
    cases::{CaseScreen, CasesScreen, OrderScreen},
    items::{ItemScreen, ItemsScreen},
    place::{Place, Supposed},
    procedures::{LessonScreen, ProcedureScreen, ProceduresScreen},
    reading::{ReadingExerciseScreen, ReadingScreen},
    record::RecordScreen,
    today::TodayScreen,
};
use leptos::prelude::*;

/// The screen of a place. It is drawn afresh when its ground changes, and
/// focus then moves to its heading.
#[component]
pub fn Screen(
    /// Where the reader is.
    place: Signal<Place>,
) -> impl IntoView {
    let ground = Memo::new(move |_| place.with(Place::ground));
    let supposed = Memo::new(move |_| match place.get() {
        Place::Procedure(_, _, supposed) => supposed,
        _ => Supposed::new(),
    });
    Effect::new(move |before: Option<()>| {
        ground.track();
        // On arrival from outside, focus stays at the top of the page.
        if before.is_some() {
            focus::heading();
        }
    });
    move || match ground.get() {
        Place::Today => view! { <TodayScreen /> }.into_any(),
        Place::Procedures => view! { <ProceduresScreen /> }.into_any(),
        Place::Procedure(id, view, _) => {
            let supposed = supposed.into();
            view! { <ProcedureScreen id view supposed /> }.into_any()
        }
        Place::Items => view! { <ItemsScreen /> }.into_any(),
        Place::Item(id) => view! { <ItemScreen id /> }.into_any(),
        Place::Lesson(id) => view! { <LessonScreen id /> }.into_any(),
        Place::Cases => view! { <CasesScreen /> }.into_any(),
        Place::Order => view! { <OrderScreen /> }.into_any(),
        Place::Case(frame, seed, with) => view! { <CaseScreen frame seed with /> }.into_any(),
        Place::Reading(_) => view! { <ReadingScreen place /> }.into_any(),
        Place::ReadingExercise(seed) => view! { <ReadingExerciseScreen seed /> }.into_any(),
        Place::Cards => view! { <CardsScreen /> }.into_any(),
        Place::Card(id, ..) => view! { <CardScreen id place /> }.into_any(),
        Place::Wish(id) => view! { <WishScreen id /> }.into_any(),
        Place::Bench => view! { <BenchScreen /> }.into_any(),
        Place::Record => view! { <RecordScreen /> }.into_any(),
        Place::About => view! { <AboutScreen /> }.into_any(),
        Place::Unknown(_) => view! { <Elsewhere /> }.into_any(),
    }
}

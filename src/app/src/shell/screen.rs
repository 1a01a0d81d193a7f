//! From a place to its screen.

use super::elsewhere::Elsewhere;
use crate::{
    areas::{Area, Draw, Stopped},
    book::{Arrival, Book},
    browser::focus,
    parts::{
        notice::{Notice, Tone},
        page::Page,
    },
    place::Place,
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
    let areas = Areas::new(expect_context());
    let stage = Memo::new(move |_| match ground.with(Area::of) {
        None => Stage::First,
        Some(area) => areas.stage(area),
    });
    Effect::new(move |before: Option<()>| {
        ground.track();
        stage.track();
        // On arrival from outside, focus stays at the top of the page.
        if before.is_some() {
            focus::heading();
        }
    });
    move || {
        let ground = ground.get();
        focus::leave();
        match stage.get() {
            Stage::First if ground == Place::Today => view! { <TodayScreen /> }.into_any(),
            Stage::First => view! { <Elsewhere /> }.into_any(),
            Stage::Here(area) => areas.draw(area, ground, place),
            Stage::Awaited => view! { <Awaited /> }.into_any(),
            Stage::Stopped(why, area) => {
                let again = move || areas.try_again(area);
                view! { <NotFetched why again /> }.into_any()
            }
        }
    }
}

/// What can be shown of a place now.
#[derive(Clone, PartialEq, Eq)]
enum Stage {
    /// The first module draws it.
    First,
    /// Something of it is on its way.
    Awaited,
    /// All of it is here.
    Here(Area),
    /// Something of it did not come.
    Stopped(String, Area),
}

/// An area that was sent for; none as long as it is on its way.
type Sent = Option<Result<Draw, Stopped>>;

/// The areas as they arrive.
#[derive(Clone, Copy)]
struct Areas {
    book: Book,
    known: RwSignal<Vec<(Area, Sent)>>,
}

impl Areas {
    fn new(book: Book) -> Self {
        Self {
            book,
            known: RwSignal::new(Vec::new()),
        }
    }

    /// What can be shown of an area; sends for it where that was not done.
    fn stage(self, area: Area) -> Stage {
        let known = self.known.with(|all| {
            let mut all = all.iter();
            all.find(|(each, _)| *each == area)
                .map(|(_, here)| here.clone())
        });
        match (known, self.book.arrival().get()) {
            (None, _) => {
                self.send_for(area);
                Stage::Awaited
            }
            (Some(Some(Err(Stopped(why)))), _) | (_, Arrival::Stopped(why)) => {
                Stage::Stopped(why, area)
            }
            (Some(Some(Ok(_))), Arrival::Here) => Stage::Here(area),
            _ => Stage::Awaited,
        }
    }

    /// The screen of a place in an area that is here.
    fn draw(self, area: Area, ground: Place, place: Signal<Place>) -> AnyView {
        let draw = self.known.with_untracked(|all| {
            let mut here = all.iter().filter(|(each, _)| *each == area);
            here.find_map(|(_, here)| here.clone()?.ok())
        });
        draw.map_or_else(|| ().into_any(), |draw| draw(ground, place))
    }

    fn send_for(self, area: Area) {
        leptos::task::spawn_local(async move {
            self.note(area, None);
            let here = area.open().await;
            self.note(area, Some(here));
        });
    }

    fn note(self, area: Area, here: Sent) {
        self.known.update(|all| {
            all.retain(|(each, _)| *each != area);
            all.push((area, here));
        });
    }

    fn try_again(self, area: Area) {
        if matches!(self.book.arrival().get_untracked(), Arrival::Stopped(_)) {
            self.book.send_for();
        }
        self.send_for(area);
    }
}

/// Stands where a screen will be in a moment.
#[component]
fn Awaited() -> impl IntoView {
    let with_packs = expect_context::<Book>().with_packs();
    let says = move || {
        if with_packs.get() {
            "Putting the packs in use together with what is built in…"
        } else {
            "Getting this ready…"
        }
    };
    view! {
        <div class="page" aria-busy="true" data-test="awaited">
            <p class="lead">{says}</p>
        </div>
    }
}

/// Says that something did not come, and offers to try again.
#[component]
fn NotFetched(
    /// What did not come, as a sentence.
    why: String,
    /// Tries again.
    again: impl Fn() + Send + 'static,
) -> impl IntoView {
    view! {
        <Page title="Not here yet">
            <Notice tone=Tone::Attention>
                <p data-test="not-fetched">{why}</p>
                <p>
                    "Everything is kept for use without a connection once it has all arrived. Until then: check the connection and try again."
                </p>
                <div class="actions">
                    <button type="button" class="button" data-test="try-again" on:click=move |_| again()>
                        "Try again"
                    </button>
                </div>
            </Notice>
        </Page>
    }
}

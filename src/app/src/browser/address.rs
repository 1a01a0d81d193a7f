//! The address bar: which place the fragment names, and how far down the
//! reader was when coming back to it.

use crate::place::Place;
use leptos::{ev, prelude::*};
use wasm_bindgen::JsValue;
use web_sys::{History, ScrollRestoration};

/// The place in the address, kept up to date, and the ways to change it.
#[derive(Clone, Copy)]
pub struct Address {
    place: RwSignal<Place>,
    visits: StoredValue<Visits>,
}

/// No browser keeps as many entries; a number above it is not ours.
const MOST_VISITS: usize = 10_000;

/// How far down each visited entry of the history was left. Entries are told
/// apart by a number that is kept with them in the browser's history.
#[derive(Default)]
struct Visits {
    last: usize,
    current: usize,
    depths: Vec<f64>,
    /// Whether the reader came back to a place further down.
    down: bool,
}

impl Address {
    /// Listens to the address from now on.
    pub fn watch() -> Self {
        let address = Self {
            place: RwSignal::new(read()),
            visits: StoredValue::new(Visits::default()),
        };
        if let Some(history) = history() {
            // The screen is drawn after the browser would have scrolled.
            let _ = history.set_scroll_restoration(ScrollRestoration::Manual);
        }
        address.arrive();
        window_event_listener(ev::scroll, move |_| address.note_depth());
        window_event_listener(ev::hashchange, move |_| {
            let depth = address.arrive();
            address.place.set(read());
            request_animation_frame(move || window().scroll_to_with_x_and_y(0.0, depth));
        });
        address
    }

    /// The place, for reading in a view.
    pub fn place(self) -> Signal<Place> {
        self.place.into()
    }

    /// Goes to a place, as a link to it would.
    #[expect(clippy::unused_self, reason = "places are the address's to change")]
    pub fn go(self, place: Place) {
        // A hash is always a place of this page; setting it cannot fail.
        let _ = window().location().set_hash(&place.fragment());
    }

    /// Changes the address without a new entry in the history, for what
    /// changes while the reader stays on one screen.
    pub fn amend(self, place: Place) {
        if let Some(history) = history() {
            let state = history.state().unwrap_or(JsValue::NULL);
            let _ = history.replace_state_with_url(&state, "", Some(&place.fragment()));
        }
        self.place.set(place);
    }

    /// Whether the reader has come back to a place further down on the screen,
    /// which can be shown only when all above it is there.
    pub fn comes_back_down(self) -> bool {
        self.visits.with_value(|visits| visits.down)
    }

    /// Notes which entry of the history this is, and gives the depth at which
    /// it was last left.
    fn arrive(self) -> f64 {
        let known = history()
            .and_then(|history| history.state().ok())
            .and_then(|state| state.as_string()?.parse::<usize>().ok())
            .filter(|number| *number < MOST_VISITS);
        let mut depth = 0.0;
        self.visits.update_value(|visits| {
            visits.current = known.unwrap_or(visits.last + 1);
            visits.last = visits.last.max(visits.current);
            depth = visits.depths.get(visits.current).copied().unwrap_or(0.0);
            visits.down = depth > 0.0;
        });
        if known.is_none()
            && let Some(history) = history()
        {
            let number = self.visits.with_value(|visits| visits.current.to_string());
            let _ = history.replace_state(&number.into(), "");
        }
        depth
    }

    fn note_depth(self) {
        let depth = window().scroll_y().unwrap_or(0.0);
        self.visits.update_value(|visits| {
            let current = visits.current;
            if visits.depths.len() <= current {
                visits.depths.resize(current + 1, 0.0);
            }
            visits.depths[current] = depth;
        });
    }
}

fn history() -> Option<History> {
    window().history().ok()
}

fn read() -> Place {
    Place::from_fragment(&window().location().hash().unwrap_or_default())
}

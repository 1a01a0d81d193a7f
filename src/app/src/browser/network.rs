//! Whether there is a connection.

use leptos::{ev, prelude::*};

/// Whether the browser believes it is connected, kept up to date.
pub fn connected() -> Signal<bool> {
    let believes = || web_sys::window().is_none_or(|window| window.navigator().on_line());
    let connected = RwSignal::new(believes());
    window_event_listener(ev::online, move |_| connected.set(true));
    window_event_listener(ev::offline, move |_| connected.set(false));
    connected.into()
}

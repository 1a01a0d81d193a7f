//! A new version of the page: the worker says that it is there, the reader
//! says when to use it.

use leptos::prelude::*;

const READY: &str = "trayward:update-ready";
const USE: &str = "trayward:use-update";

/// Whether a new version waits.
pub fn ready() -> Signal<bool> {
    let ready = RwSignal::new(false);
    window_event_listener_untyped(READY, move |_| ready.set(true));
    ready.into()
}

/// Takes the new version into use.
pub fn use_it() {
    if let Ok(event) = web_sys::CustomEvent::new(USE) {
        // Nobody can cancel this event.
        let _ = window().dispatch_event(&event);
    }
}

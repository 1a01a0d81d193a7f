//! Where the keyboard and the screen reader are.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{FocusOptions, HtmlElement};

/// Moves focus to the heading of the screen, once it is there, without scrolling.
pub fn heading() {
    first("#main h1");
}

/// Gives up focus within the screen, before another takes its place. A browser
/// that has to take it from an element it removes lays out both screens first,
/// which takes a slow phone a tenth of a second.
pub fn leave() {
    let held = document().query_selector("#main :focus").ok().flatten();
    if let Some(element) = held.and_then(|held| held.dyn_into::<HtmlElement>().ok()) {
        // An element that does not let go loses focus when it is removed.
        let _ = element.blur();
    }
}

/// Moves focus to the first element that a selector finds, in the next frame,
/// without scrolling. The element needs a tabindex if it is not a control.
pub fn first(selector: impl Into<String>) {
    let selector = selector.into();
    request_animation_frame(move || {
        let found = document().query_selector(&selector).ok().flatten();
        if let Some(element) = found.and_then(|found| found.dyn_into::<HtmlElement>().ok()) {
            let options = FocusOptions::new();
            options.set_prevent_scroll(true);
            // A detached element takes no focus, and none is needed.
            let _ = element.focus_with_options(&options);
        }
    });
}

//! How far down the reader is.

use super::focus;
use leptos::prelude::*;
use web_sys::Element;

/// Shows the top of the page.
pub fn to_top() {
    request_animation_frame(|| window().scroll_to_with_x_and_y(0.0, 0.0));
}

/// Shows the first element that a selector finds, and moves focus to it, in
/// the next frame.
pub fn to(selector: String) {
    request_animation_frame(move || {
        if let Some(found) = document().query_selector(&selector).ok().flatten() {
            found.scroll_into_view();
            focus::first(selector);
        }
    });
}

/// Brings an element into view inside the box that scrolls sideways round it,
/// in the next frame, without moving the page.
pub fn into_box(frame: Element, selector: String) {
    request_animation_frame(move || {
        let Some(found) = frame.query_selector(&selector).ok().flatten() else {
            return;
        };
        let (outer, inner) = (
            frame.get_bounding_client_rect(),
            found.get_bounding_client_rect(),
        );
        let mut by = 0.0;
        if inner.right() > outer.right() {
            by = inner.right() - outer.right() + inner.width();
        } else if inner.left() < outer.left() {
            by = inner.left() - outer.left() - inner.width();
        }
        shift(&frame, by);
    });
}

/// Scrolls a box sideways by so many pixels.
pub fn shift(frame: &Element, by: f64) {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a distance on a screen is far below the range of i32"
    )]
    frame.set_scroll_left(frame.scroll_left() + by as i32);
}

//! Saying to whatever watches the page that parts of the screen are still to
//! come, so that it is judged or printed only when it is whole.

use leptos::prelude::document;
use std::cell::Cell;

/// The mark on the page's body.
const MARK: &str = "data-unfinished";

thread_local! {
    static OPEN: Cell<u32> = const { Cell::new(0) };
}

/// The page is marked as unfinished as long as one of these lives.
pub struct Unfinished(());

impl Unfinished {
    /// From now on.
    pub fn new() -> Self {
        count(|open| open + 1);
        Self(())
    }
}

impl Drop for Unfinished {
    fn drop(&mut self) {
        count(|open| open.saturating_sub(1));
    }
}

fn count(change: impl Fn(u32) -> u32) {
    let open = OPEN.with(|open| {
        open.set(change(open.get()));
        open.get()
    });
    let Some(body) = document().body() else {
        return;
    };
    // The mark is a help to those who watch; without it the page is the same.
    let _ = match open {
        0 => body.remove_attribute(MARK),
        _ => body.set_attribute(MARK, ""),
    };
}

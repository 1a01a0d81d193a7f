//! Whether the browser has promised to keep what the page stores.

use leptos::{prelude::*, task::spawn_local};
use wasm_bindgen_futures::JsFuture;

/// How safe the stored record is from the browser's own tidying.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kept {
    /// Not known yet.
    Asking,
    /// The browser keeps it until the reader deletes it.
    Promised,
    /// The browser may clear it when the device runs out of room.
    NotPromised,
    /// The browser cannot be asked.
    Unknown,
}

/// What the browser says now.
pub fn look(kept: RwSignal<Kept>) {
    ask(kept, false);
}

/// Asks the browser to keep what is stored, unless it has promised already.
pub fn request(kept: RwSignal<Kept>) {
    if kept.get_untracked() != Kept::Promised {
        ask(kept, true);
    }
}

fn ask(kept: RwSignal<Kept>, persist: bool) {
    let Some(window) = web_sys::window() else {
        return;
    };
    // Only a secure page has a storage manager.
    if !window.is_secure_context() {
        return kept.set(Kept::Unknown);
    }
    let manager = window.navigator().storage();
    let promise = if persist {
        manager.persist()
    } else {
        manager.persisted()
    };
    let Ok(promise) = promise else {
        return kept.set(Kept::Unknown);
    };
    spawn_local(async move {
        kept.set(match JsFuture::from(promise).await {
            Ok(answer) if answer.is_truthy() => Kept::Promised,
            Ok(_) => Kept::NotPromised,
            Err(_) => Kept::Unknown,
        });
    });
}

//! The built-in sources, fetched once where packs are written.

use crate::{areas::Stopped, book::Book};
use catalogue::source::Files;
use leptos::prelude::*;
use std::cell::Cell;

thread_local! {
    // There is one build of the page, and it has one set of sources.
    static KNOWN: Cell<Option<&'static Files>> = const { Cell::new(None) };
}

/// The built-in sources as they arrive: none yet, or why they did not come.
pub type Arriving = Signal<Option<Result<&'static Files, String>>>;

/// Sends for the built-in sources where they are not here yet.
pub fn sources() -> Arriving {
    let arriving = RwSignal::new(KNOWN.get().map(Ok));
    if KNOWN.get().is_none() {
        let book: Book = expect_context();
        leptos::task::spawn_local(async move {
            let came = match book.sources().await {
                Ok(bytes) => Files::unpack(&bytes),
                Err(Stopped(sentence)) => Err(sentence),
            };
            let came = came.map(|files| -> &'static Files {
                let files: &'static Files = Box::leak(Box::new(files));
                KNOWN.set(Some(files));
                files
            });
            // The screen may be gone by now.
            let _ = arriving.try_set(Some(came));
        });
    }
    arriving.into()
}

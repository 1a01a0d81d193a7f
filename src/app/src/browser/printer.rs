//! The printer.

use leptos::{ev, prelude::*};

/// Opens the browser's own dialogue for printing.
pub fn print() {
    // A browser that cannot print says so itself.
    let _ = window().print();
}

/// Shows a list whole while it is printed: paper has no button for the rest.
pub fn whole_on_paper(shown: RwSignal<usize>, count: Signal<usize>) {
    let before = StoredValue::new(None);
    let open = window_event_listener(ev::beforeprint, move |_| {
        before.set_value(Some(shown.get_untracked()));
        shown.set(count.get_untracked().max(shown.get_untracked()));
    });
    let close = window_event_listener(ev::afterprint, move |_| {
        if let Some(before) = before.get_value() {
            shown.set(before);
        }
    });
    on_cleanup(move || {
        open.remove();
        close.remove();
    });
}

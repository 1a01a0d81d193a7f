//! The printer.

/// Opens the browser's own dialogue for printing.
pub fn print() {
    // A browser that cannot print says so itself.
    let _ = leptos::prelude::window().print();
}

//! Taking the record along as a file; offered wherever it may be lost.

use crate::{
    browser::{clock, files},
    log::log,
    parts::announce::announcer,
};
use leptos::prelude::*;

/// The button that exports the whole record.
#[component]
pub fn ExportButton() -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let export = move |_| {
        let name = format!("trayward-record-{}.txt", clock::iso_day(clock::now()));
        announcer.say(match files::download(&name, &log.export()) {
            Ok(()) => format!("Exported as {name}."),
            Err(sentence) => sentence,
        });
    };
    view! {
        <button type="button" class="button" data-test="export" on:click=export>
            "Export the record"
        </button>
    }
}

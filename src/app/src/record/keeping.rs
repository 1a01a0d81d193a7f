//! Keeping the record: where it is, how safe it is, how to take it along.

use crate::{
    browser::{files, persistence::Kept},
    log::log,
    parts::{
        announce::announcer,
        notice::{Notice, Tone},
    },
    shell::ExportButton,
};
use leptos::{prelude::*, task::spawn_local};
use record::Imported;

/// The section.
#[component]
pub fn Keeping() -> impl IntoView {
    view! {
        <section class="keeping" data-test="keeping">
            <h2>"Keeping it"</h2>
            <StorageState />
            <SetAside />
            <div class="actions">
                <ExportButton />
                <Import />
            </div>
        </section>
    }
}

/// Where the record is and how safe it is there.
#[component]
fn StorageState() -> impl IntoView {
    let log = log();
    let kept = log.kept();
    let events = log.memo(<[_]>::len);
    let says = move || match kept.get() {
        Kept::Promised => "The browser has promised to keep it until you delete it.",
        Kept::NotPromised => {
            "The browser may clear it when the device runs out of room. Export it now and then."
        }
        Kept::Asking => "The browser is being asked whether it will keep it.",
        Kept::Unknown => {
            "The browser cannot be asked whether it will keep it. Export it now and then."
        }
    };
    view! {
        <p data-test="storage-state">
            "Your record is in this browser: " {move || entries(events.get())} ". " {says}
        </p>
    }
}

/// Stored parts that could not be read.
#[component]
fn SetAside() -> impl IntoView {
    let reports = log().reports();
    move || {
        let lines: Vec<_> = reports
            .get()
            .into_iter()
            .map(|report| view! { <p data-test="set-aside">{report.to_string()}</p> })
            .collect();
        (!lines.is_empty()).then(|| view! { <Notice tone=Tone::Attention>{lines}</Notice> })
    }
}

/// Taking in a file that was exported.
#[component]
fn Import() -> impl IntoView {
    let (log, announcer) = (log(), announcer());
    let outcome = RwSignal::new(None::<Result<String, String>>);
    let take = move |event: web_sys::Event| {
        let Some(file) = files::chosen(&event) else {
            return;
        };
        spawn_local(async move {
            let taken = match files::read(&file).await {
                Ok(bytes) => log
                    .import(&bytes)
                    .map(|imported| says(&imported))
                    .map_err(|error| error.to_string()),
                Err(sentence) => Err(sentence),
            };
            let (Ok(sentence) | Err(sentence)) = &taken;
            announcer.say(sentence.clone());
            outcome.set(Some(taken));
        });
    };
    let shown = move || {
        outcome.get().map(|taken| {
            let tone = if taken.is_ok() {
                Tone::Plain
            } else {
                Tone::Attention
            };
            let (Ok(sentence) | Err(sentence)) = taken;
            view! { <Notice tone><p data-test="import-outcome">{sentence}</p></Notice> }
        })
    };
    view! {
        <label class="button button-quiet file-button">
            <input type="file" class="unseen" data-test="import" on:change=take />
            "Import a record"
        </label>
        {shown}
    }
}

fn entries(count: usize) -> String {
    match count {
        1 => "1 entry".into(),
        many => format!("{many} entries"),
    }
}

fn says(imported: &Imported) -> String {
    match (imported.new, imported.known) {
        (0, _) => "Nothing new: all of it was here already.".into(),
        (new, 0) => format!("Added: {}.", entries(new)),
        (new, known) => format!("Added: {}. Here already: {}.", entries(new), entries(known)),
    }
}

//! Notices over every screen: what is not saved, and a new version.

use super::export::ExportButton;
use crate::{
    book::Book,
    browser::update,
    log::log,
    parts::notice::{Notice, Tone},
    place::{ClassPlace, Place, WritePlace},
};
use leptos::prelude::*;

/// The notices that hold now.
#[component]
pub fn Notices() -> impl IntoView {
    view! {
        <div class="notices" role="status">
            <Unsaved />
            <NewVersion />
            <SetAside />
        </div>
    }
}

/// Said at once when the storage is full or forbidden.
#[component]
fn Unsaved() -> impl IntoView {
    let log = log();
    let unsaved = log.unsaved();
    move || {
        unsaved.get().map(|unsaved| {
            view! {
                <Notice tone=Tone::Attention>
                    <p data-test="unsaved">{unsaved.to_string()}</p>
                    <div class="actions">
                        <ExportButton />
                        <button
                            type="button"
                            class="button button-quiet"
                            data-test="retry"
                            on:click=move |_| log.retry()
                        >
                            "Try to save again"
                        </button>
                    </div>
                </Notice>
            }
        })
    }
}

/// Packs in use that the page had to open without.
#[component]
fn SetAside() -> impl IntoView {
    let aside = expect_context::<Book>().aside();
    move || {
        let aside = aside.get();
        (!aside.is_empty()).then(|| {
            view! {
                <Notice tone=Tone::Attention>
                    {aside.into_iter().map(|says| view! { <p data-test="set-aside">{says}</p> }).collect_view()}
                    <p>
                        "Everything built in is here. "
                        <a href=Place::Class(ClassPlace::Write(WritePlace::Packs)).fragment()>"Packs"</a>
                    </p>
                </Notice>
            }
        })
    }
}

/// A new version waits for the reader.
#[component]
fn NewVersion() -> impl IntoView {
    let ready = update::ready();
    move || {
        ready.get().then(|| {
            view! {
                <Notice tone=Tone::Plain>
                    <p data-test="update-ready">"A new version is ready. Nothing is lost by using it."</p>
                    <div class="actions">
                        <button
                            type="button"
                            class="button"
                            data-test="use-update"
                            on:click=move |_| update::use_it()
                        >
                            "Use the new version"
                        </button>
                    </div>
                </Notice>
            }
        })
    }
}

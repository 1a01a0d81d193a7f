//! Reading hand-ins: pasted lines, files, the camera. What cannot be taken is
//! named, and the rest kept.

mod outcomes;
mod reader;
mod scanner;

use super::{grading::Progress, way::of_set};
use crate::{assignments::clinic_with, browser::files, place::ClassPlace};
use class::handin::SELF_REPORTED;
use leptos::prelude::*;
use outcomes::Outcomes;
use reader::{Reader, lines_of};
use std::rc::Rc;

/// The screen.
#[component]
pub fn CollectScreen(
    /// The id of the assignment.
    id: String,
) -> impl IntoView {
    of_set(id.clone(), ClassPlace::Collect(id.clone()), |assignment| {
        let clinic = clinic_with(assignment.card.as_deref())?;
        let reader = Reader::new(id, assignment, Rc::new(clinic));
        let body = view! {
            <p class="hint prose" data-test="self-reported">{SELF_REPORTED}</p>
            <Ingoing reader />
            <Progress going=reader.going doing="Reading hand-ins" />
            <Outcomes reader />
        };
        Ok(body.into_any())
    })
}

/// The ways in.
#[component]
fn Ingoing(reader: Reader) -> impl IntoView {
    let pasted = RwSignal::new(String::new());
    let over = RwSignal::new(false);
    let paste = move |_| {
        let lines = pasted.with_untracked(|text| lines_of(text));
        if !lines.is_empty() {
            pasted.set(String::new());
            reader.fault.set(None);
            reader.take(lines);
        }
    };
    let chosen = move |event: web_sys::Event| reader.take_files(files::given(&event));
    let dropped = move |event: web_sys::DragEvent| {
        event.prevent_default();
        over.set(false);
        reader.take_files(files::given(&event));
    };
    view! {
        <div class="dk-ways-in">
            <section
                class="dk-drop"
                class:dk-over=move || over.get()
                data-test="drop"
                on:dragover=move |event| {
                    event.prevent_default();
                    over.set(true);
                }
                on:dragleave=move |_| over.set(false)
                on:drop=dropped
            >
                <h2 class="stage-label">"Files"</h2>
                <p>"Drop as many files as you like here, or choose them."</p>
                <label class="button file-button">
                    <input type="file" multiple class="unseen" data-test="hand-in-files" on:change=chosen />
                    "Choose files"
                </label>
            </section>
            <section class="dk-paste">
                <h2 class="stage-label">"Links or codes"</h2>
                <label class="field">
                    <span>"Paste them here, one a line"</span>
                    <textarea
                        rows="4"
                        spellcheck="false"
                        data-test="hand-in-lines"
                        prop:value=move || pasted.get()
                        on:input=move |event| pasted.set(event_target_value(&event))
                    ></textarea>
                </label>
                <button type="button" class="button" data-test="read-lines" on:click=paste>
                    "Read them"
                </button>
            </section>
            <scanner::Scanner reader />
        </div>
    }
}

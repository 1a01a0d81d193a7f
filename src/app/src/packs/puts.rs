//! Putting a pack in use and out of use. The page opens afresh for it: the whole
//! catalogue is another one then.

use super::{checks::is_in_use, kept, used, writing::Writing};
use crate::parts::{announce::announcer, notice::Fault};
use leptos::prelude::*;

/// Opens the page afresh where it is.
pub fn reopen() {
    // Without a window there is nothing to open.
    let _ = window().location().reload();
}

/// Whether the pack is in use, and the way there and back.
#[component]
pub fn PutInUse(
    /// The pack.
    writing: Writing,
) -> impl IntoView {
    let announcer = announcer();
    let fault = RwSignal::new(None::<String>);
    let used_at_all = move || writing.pack.with(|pack| used::text(pack.id()).is_some());
    let as_it_is = move || writing.pack.with(is_in_use);
    let says = move || {
        let version = writing.pack.with(|pack| pack.version);
        if as_it_is() {
            format!("In use, version {version}: its things stand among the built-in ones.")
        } else if used_at_all() {
            "In use as it was before your last changes.".to_owned()
        } else {
            "Not in use on this device.".to_owned()
        }
    };
    let stop = move |sentence: String| {
        announcer.say(sentence.clone());
        fault.set(Some(sentence));
    };
    let put = move |_| {
        if writing.checks.passed().is_none() {
            return stop(
                "It can be put in use when the checks have run and find nothing wrong.".to_owned(),
            );
        }
        let mut pack = writing.pack.get_untracked();
        match kept::give_out(&mut pack).and_then(|()| kept::put_in_use(&pack)) {
            Ok(()) => reopen(),
            Err(sentence) => stop(sentence),
        }
    };
    let out = move |_| {
        let id = writing.pack.with_untracked(|pack| pack.id().to_owned());
        match used::remove(&id) {
            Ok(()) => reopen(),
            Err(error) => stop(kept::unkept(&error)),
        }
    };
    view! {
        <div class="in-use" data-test="pack-in-use">
            <p>{says}</p>
            {move || {
                (!as_it_is())
                    .then(|| {
                        view! {
                            <button type="button" class="button" data-test="use-pack" on:click=put>
                                {if used_at_all() { "Use the changes" } else { "Put it in use" }}
                            </button>
                        }
                    })
            }}
            {move || {
                used_at_all()
                    .then(|| {
                        view! {
                            <button
                                type="button"
                                class="button button-quiet"
                                data-test="use-pack-not"
                                on:click=out
                            >
                                "Put it out of use"
                            </button>
                        }
                    })
            }}
        </div>
        <Fault says=fault test="use-fault" />
        <p class="hint prose">
            "Assignments belong to the lessons they were set with. One that is set while the pack is in use needs the same version of it on each student's device."
        </p>
    }
}

//! Choosing what is set. What is chosen is kept at every step, so that a
//! reload or another errand loses nothing.

mod add;
mod draft;
mod kind;
mod rules;
mod tasks;

use super::kept;
use crate::{
    browser::{address::Address, chance, clock},
    parts::{announce::announcer, notice::Fault, page::Page},
    place::{ClassPlace, Place},
};
use draft::Draft;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn AssignScreen() -> impl IntoView {
    let (draft, announcer) = (Draft::open(), announcer());
    let address: Address = expect_context();
    let fault = RwSignal::new(None::<String>);
    let set = move |_| {
        let mut assignment = draft.get();
        if assignment.tasks.is_empty() {
            let sentence = "Put at least one task in first.".to_owned();
            announcer.say(sentence.clone());
            fault.set(Some(sentence));
            return;
        }
        // The low half of fresh chance: a seed has 32 bits.
        assignment.seed = u32::try_from(chance::bits() & u64::from(u32::MAX)).unwrap_or(0);
        match kept::keep_set(&assignment, clock::now().utc_ms) {
            Ok(id) => {
                kept::drop_draft();
                address.go(Place::Class(ClassPlace::Issued(id)));
            }
            Err(why) => {
                announcer.say(why.to_string());
                fault.set(Some(why.to_string()));
            }
        }
    };
    view! {
        <Page title="Set an assignment" over="Class" up=Place::Class(ClassPlace::Desk).fragment()>
            <div class="dk-assign">
                <tasks::Tasks draft />
                <rules::Rules draft />
            </div>
            <Fault says=fault test="assign-fault" />
            <div class="actions">
                <button type="button" class="button" data-test="set-it" on:click=set>"Set it"</button>
            </div>
            <p class="hint">
                "Once set it does not change: hand-ins are graded by what was set. You see it as a student does before you hand it out."
            </p>
        </Page>
    }
}

//! Labels for seats. They stay on this device.

use super::kept;
use crate::{
    browser::{clock, files},
    parts::{announce::announcer, notice::Fault, page::Page},
    place::{ClassPlace, Place},
};
use class::{
    assignment::Seat,
    roster::{self, MOST_LETTERS, Roster},
};
use leptos::{prelude::*, task::spawn_local};

/// Offers a roster as a file to keep.
fn save(roster: &Roster) -> Result<(), String> {
    let name = format!("roster-{}.txt", clock::iso_day(clock::now()));
    files::download(&name, &roster::write(roster))
}

/// The roster that a file holds.
async fn taken_in(file: &web_sys::File) -> Result<Roster, String> {
    let bytes = files::read(file).await?;
    roster::read(&bytes).map_err(|error| error.to_string())
}

/// The screen.
#[component]
pub fn RosterScreen() -> impl IntoView {
    let announcer = announcer();
    let (first, wrong) = match kept::roster() {
        Ok(roster) => (roster, None),
        Err(why) => (Roster::default(), Some(why)),
    };
    let roster = RwSignal::new(first);
    let fault = RwSignal::new(wrong);
    let keep = move |change: &dyn Fn(&mut Roster)| {
        roster.update(|roster| change(roster));
        if let Err(why) = roster.with_untracked(kept::keep_roster) {
            fault.set(Some(why.to_string()));
        }
    };
    let typed = RwSignal::new(String::new());
    let add = move |event: web_sys::SubmitEvent| {
        event.prevent_default();
        let label = typed.get_untracked();
        let free = roster.with_untracked(Roster::free);
        if let Some(seat) = free.filter(|_| !label.trim().is_empty()) {
            keep(&|roster| roster.set(seat, &label));
            typed.set(String::new());
            announcer.say(format!("Seat {} is labelled.", seat.0));
        }
    };
    let row = move |seat: Seat| {
        let label = roster.with_untracked(|roster| roster.label(seat));
        view! {
            <li class="dk-seat">
                <label class="field">
                    <span>"Seat " {seat.0}</span>
                    <input
                        type="text"
                        maxlength=MOST_LETTERS
                        autocomplete="off"
                        value=label
                        data-test=format!("label-{}", seat.0)
                        on:change=move |event| {
                            let label = event_target_value(&event);
                            keep(&|roster| roster.set(seat, &label));
                        }
                    />
                </label>
            </li>
        }
    };
    let save = move |_| fault.set(roster.with_untracked(save).err());
    let take_in = move |event: web_sys::Event| {
        let Some(file) = files::chosen(&event) else {
            return;
        };
        spawn_local(async move {
            let read = taken_in(&file).await;
            if let Ok(read) = &read {
                keep(&|roster| *roster = read.clone());
            }
            fault.try_set(read.as_ref().err().cloned());
            announcer.say(read.map_or_else(|why| why, |_| "The roster was taken in.".into()));
        });
    };
    let rows = Memo::new(move |_| roster.with(Roster::seats));
    view! {
        <Page title="Who sits where" over="Class" up=Place::Class(ClassPlace::Desk).fragment()>
            <p class="lead">
                "Labels for seats, for your eyes: they stay on this device. No code carries them, and no file leaves with them unless you ask for it."
            </p>
            <Fault says=fault test="roster-fault" />
            <ol class="dk-seats" data-test="seats">
                <For each=move || rows.get() key=|seat| *seat children=row />
            </ol>
            <form on:submit=add>
                <label class="field">
                    <span>
                        "Label of the next free seat, "
                        {move || roster.with(Roster::free).map_or_else(String::new, |seat| seat.0.to_string())}
                    </span>
                    <input
                        type="text"
                        maxlength=MOST_LETTERS
                        autocomplete="off"
                        data-test="new-label"
                        prop:value=move || typed.get()
                        on:input=move |event| typed.set(event_target_value(&event))
                    />
                </label>
                <div class="actions">
                    <button type="submit" class="button" data-test="add-label">"Label it"</button>
                    <button type="button" class="button button-quiet" data-test="save-roster" on:click=save>
                        "Save as a file"
                    </button>
                    <label class="button button-quiet file-button">
                        <input type="file" class="unseen" data-test="take-roster" on:change=take_in />
                        "Take in a file"
                    </label>
                </div>
            </form>
        </Page>
    }
}

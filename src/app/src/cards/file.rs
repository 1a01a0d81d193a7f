//! Cards as files: one is saved to be passed on, one from elsewhere is taken in
//! once it has passed every check.

use super::{own::cards, text};
use crate::{
    browser::{address::Address, files},
    parts::{
        announce::announcer,
        notice::{Notice, Tone},
    },
    place::Place,
    taught::catalogue,
};
use catalogue::preference::Card;
use leptos::{prelude::*, task::spawn_local};

/// The button that saves a card as a file.
#[component]
pub fn SaveAsFile(
    /// The card.
    card: Signal<Card>,
) -> impl IntoView {
    let announcer = announcer();
    let save = move |_| {
        let card = card.get_untracked();
        let name = format!("trayward-card-{}.json", card.id);
        announcer.say(match files::download(&name, &text::write(&card)) {
            Ok(()) => format!("Saved as {name}."),
            Err(sentence) => sentence,
        });
    };
    view! {
        <button type="button" class="button button-quiet" data-test="save-card" on:click=save>
            "Save it as a file"
        </button>
    }
}

/// The button that takes in a card from a file.
#[component]
pub fn TakeIn() -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let address: Address = expect_context();
    let catalogue = catalogue();
    let faults = RwSignal::new(Vec::<String>::new());
    let take = move |event: web_sys::Event| {
        let Some(file) = files::chosen(&event) else {
            return;
        };
        spawn_local(async move {
            let read = match files::read(&file).await {
                Ok(bytes) => text::read(&String::from_utf8_lossy(&bytes), catalogue),
                Err(sentence) => Err(vec![sentence]),
            };
            match read {
                Ok(card) => {
                    let id = cards.copy(&card, card.name.clone());
                    announcer.say(format!("Taken in: {}.", card.name));
                    address.go(Place::Card(id, None, Vec::new()));
                }
                Err(found) => {
                    announcer.say(format!("The card was not taken in. {}", found.join(" ")));
                    faults.set(found);
                }
            }
        });
    };
    let wrong = move || {
        let faults = faults.get();
        (!faults.is_empty()).then(|| {
            let lines = faults.into_iter().map(|it| view! { <li>{it}</li> });
            view! {
                <Notice tone=Tone::Attention>
                    <p>"The card was not taken in; nothing was changed."</p>
                    <ul data-test="card-faults">{lines.collect_view()}</ul>
                </Notice>
            }
        })
    };
    view! {
        <label class="button button-quiet file-button">
            <input type="file" class="unseen" data-test="take-card" on:change=take />
            "Take in a card from a file"
        </label>
        {wrong}
    }
}

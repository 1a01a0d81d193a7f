//! All cards: those in the record, and the examples.

use super::{applied::applied, file::TakeIn, own::cards};
use crate::{
    parts::{
        announce::announcer,
        icon::{Icon, icon},
        notice::{Notice, Tone},
        page::Page,
    },
    place::Place,
    taught::catalogue,
};
use catalogue::preference::Card;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn CardsScreen() -> impl IntoView {
    view! {
        <Page title="Preference cards" over="Procedures" up=Place::Procedures.fragment()>
            <p class="lead">
                "One dentist wants it this way, another that way. A card holds what one of them, or one practice's protocol, wants done differently from the standard set-up."
            </p>
            <InUse />
            <Own />
            <section class="group">
                <h2 class="stage-label">"Examples"</h2>
                <ul class="rows">{catalogue().cards.iter().map(|card| row(card, true)).collect_view()}</ul>
            </section>
            <section class="group">
                <h2 class="stage-label">"A card of your own"</h2>
                <div class="actions">
                    <NewCard />
                    <TakeIn />
                </div>
            </section>
        </Page>
    }
}

/// Which card is in use, and the way back to the standard.
#[component]
fn InUse() -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let in_use = applied().in_use();
    let back = move |_| {
        cards.use_none();
        announcer.say("No card is in use. Set-ups and cases go by the standard.");
    };
    move || {
        match in_use.get() {
        Some(card) => view! {
            <div class="in-use" data-test="card-in-use">
                <p><span class="stage-label">"In use"</span> " " <strong>{card.name}</strong></p>
                <button type="button" class="button button-quiet" data-test="use-none" on:click=back>
                    "Back to the standard"
                </button>
            </div>
        }
        .into_any(),
        None => view! {
            <p class="hint" data-test="card-in-use">
                "No card is in use: set-ups and cases go by the standard."
            </p>
        }
        .into_any(),
    }
    }
}

/// The cards in the record.
#[component]
fn Own() -> impl IntoView {
    let own = cards().own();
    move || {
        let own = own.get();
        let rows: Vec<_> = own.cards.iter().map(|card| row(card, false)).collect();
        let aside: Vec<_> = own
            .set_aside
            .into_iter()
            .map(|(id, faults)| {
                let faults = faults.join(" ");
                view! {
                    <Notice tone=Tone::Attention>
                        <p data-test="card-set-aside">
                            "A card is kept but cannot be used (" {id} "). " {faults}
                        </p>
                    </Notice>
                }
            })
            .collect();
        let some = (!rows.is_empty()).then(|| {
            view! {
                <section class="group">
                    <h2 class="stage-label">"On this device"</h2>
                    <ul class="rows">{rows}</ul>
                </section>
            }
        });
        view! { {some} {aside} }
    }
}

fn row(card: &Card, example: bool) -> impl IntoView + use<> {
    let to = Place::Card(card.id.clone(), None, Vec::new()).fragment();
    let id = card.id.clone();
    let in_use = applied().in_use();
    let used = move || {
        let mine = in_use.with(|used| used.as_ref().is_some_and(|used| used.id == id));
        mine.then(|| view! { <span class="row-state">"In use"</span> })
    };
    let note = match (example, card.about.is_empty()) {
        (true, _) => format!("Example. {}", card.about),
        (false, false) => card.about.clone(),
        (false, true) => counted(card.wishes.len()),
    };
    view! {
        <li>
            <a class="row" href=to data-test=format!("card-{}", card.id)>
                <span class="row-name">{card.name.clone()}</span>
                <span class="row-note">{note} {used}</span>
                {icon(Icon::Onwards)}
            </a>
        </li>
    }
}

/// How many wishes, in words.
pub fn counted(wishes: usize) -> String {
    match wishes {
        0 => "No wishes yet".into(),
        1 => "1 wish".into(),
        many => format!("{many} wishes"),
    }
}

/// A new, empty card.
#[component]
fn NewCard() -> impl IntoView {
    let cards = cards();
    let address: crate::browser::address::Address = expect_context();
    let make = move |_| {
        let id = cards.copy(&Card::default(), "A card of my own".into());
        address.go(Place::Card(id, None, Vec::new()));
    };
    view! {
        <button type="button" class="button" data-test="new-card" on:click=make>"Begin an empty card"</button>
    }
}

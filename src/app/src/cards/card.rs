//! One card: what it asks for, what that changes, and what can be done with it.

use super::{
    applied::applied,
    difference::Difference,
    file::SaveAsFile,
    own::cards,
    text::{LONGEST_NAME, LONGEST_TEXT, MOST_WISHES},
    wish::{says, thing},
};
use crate::{
    browser::address::Address,
    packs::FromPack,
    parts::{
        announce::announcer,
        drawing::ItemDrawing,
        fold::Fold,
        icon::{Icon, icon},
        page::Page,
    },
    place::Place,
    shell::NotHere,
    taught::catalogue,
};
use catalogue::{
    ids::CardId,
    preference::{Card, Wish},
};
use leptos::prelude::*;

/// The screen of a card.
#[component]
pub fn CardScreen(
    /// The card.
    id: CardId,
    /// Where the reader is: over which procedure and for which patient the
    /// card is looked at.
    place: Signal<Place>,
) -> impl IntoView {
    let cards = cards();
    let example = cards.is_example(&id);
    let found = cards.find(id.clone());
    // The name in the heading may change while the reader stays.
    let name = Memo::new(move |_| found.with(|it| it.as_ref().map(|card| card.name.clone())));
    let card = Signal::derive(move || found.get().unwrap_or_default());
    move || {
        let Some(name) = name.get() else {
            return view! { <NotHere what="card" /> }.into_any();
        };
        let about = move || card.with(|card| card.about.clone());
        let from = example.then(|| view! { <FromPack kind="card" id=id.as_str() /> });
        view! {
            <Page title=name over="Preference cards" up=Place::Cards.fragment()>
                {example.then(|| view! { <p class="stage-label">"Example"</p> })}
                {from}
                <p class="lead" data-test="card-about">{about}</p>
                <Use card />
                <Wishes card example />
                <Difference card place />
                <Own card example />
            </Page>
        }
        .into_any()
    }
}

/// Puts the card in use, or goes back to the standard.
#[component]
fn Use(card: Signal<Card>) -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let in_use = applied().in_use();
    let used = Memo::new(move |_| {
        let id = card.with(|card| card.id.clone());
        in_use.with(|used| used.as_ref().is_some_and(|used| used.id == id))
    });
    let turn = move |_| {
        if used.get_untracked() {
            cards.use_none();
            announcer.say("No card is in use.");
        } else {
            cards.put_in_use(&card.with_untracked(|card| card.id.clone()));
            announcer.say("The card is in use: set-ups and cases follow it.");
        }
    };
    let says = move || {
        if used.get() {
            "In use: set-ups and new cases follow it. A case under way keeps the card it was begun with."
        } else {
            "Not in use."
        }
    };
    view! {
        <div class="in-use" data-test="in-use">
            <p>{says}</p>
            <button
                type="button"
                class=move || if used.get() { "button button-quiet" } else { "button" }
                data-test="use-card"
                on:click=turn
            >
                {move || if used.get() { "Back to the standard" } else { "Put it in use" }}
            </button>
        </div>
    }
}

/// What the card asks for, in sentences.
#[component]
fn Wishes(card: Signal<Card>, example: bool) -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let one = move |(place, wish): (usize, Wish)| {
        let item = thing(&wish).and_then(|id| catalogue().item(id));
        let said = says(&wish);
        let off = (!example).then(|| {
            let said = said.clone();
            let take_off = move |_| {
                let id = card.with_untracked(|card| card.id.clone());
                cards.take_wish_off(&id, place);
                announcer.say(format!("Taken off: {said}."));
            };
            let name = format!("Take off: {}", says(&wish));
            view! {
                <button
                    type="button"
                    class="button button-quiet"
                    aria-label=name
                    title="Take off"
                    data-test=format!("take-off-{place}")
                    on:click=take_off
                >
                    {icon(Icon::Wrong)}
                </button>
            }
        });
        view! {
            <li class="wish-row" data-test=format!("wish-{place}")>
                <span class="wish-drawing">{item.map(|item| view! { <ItemDrawing item /> })}</span>
                <span class="wish-words">{said}"."</span>
                {off}
            </li>
        }
    };
    let rows = move || {
        let wishes = card.with(|card| card.wishes.clone());
        if wishes.is_empty() {
            return view! { <p class="hint">"No wishes yet: it is the standard."</p> }.into_any();
        }
        view! { <ul class="wishes">{wishes.into_iter().enumerate().map(one).collect_view()}</ul> }
            .into_any()
    };
    let more = move || {
        let room = card.with(|card| card.wishes.len() < MOST_WISHES);
        let to = Place::Wish(card.with(|card| card.id.clone())).fragment();
        (room && !example).then(|| {
            view! { <a class="button" href=to data-test="add-wish">"Add a wish"</a> }
        })
    };
    view! {
        <section class="group">
            <h2 class="stage-label">"What it asks for"</h2>
            {rows}
            <div class="actions">{more}</div>
        </section>
    }
}

/// What can be done with the card as a whole.
#[component]
fn Own(card: Signal<Card>, example: bool) -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let address: Address = expect_context();
    let copy = move |_| {
        let card = card.get_untracked();
        let name = if example {
            card.name.clone()
        } else {
            format!("{} (copy)", card.name)
        };
        let name = name.chars().take(LONGEST_NAME).collect();
        let id = cards.copy(&card, name);
        announcer.say("This is your own copy.");
        address.go(Place::Card(id, None, Vec::new()));
    };
    let says = if example {
        "Make it a card of my own"
    } else {
        "Copy it"
    };
    view! {
        <section class="group">
            <h2 class="stage-label">"The card itself"</h2>
            {(!example).then(|| view! { <Words card /> })}
            <div class="actions">
                <button type="button" class="button button-quiet" data-test="copy-card" on:click=copy>
                    {says}
                </button>
                <SaveAsFile card />
                {(!example).then(|| view! { <ThrowAway card /> })}
            </div>
        </section>
    }
}

/// Its name and what it is about.
#[component]
fn Words(card: Signal<Card>) -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let id = move || card.with_untracked(|card| card.id.clone());
    let name = move |event| {
        let name = event_target_value(&event).trim().to_owned();
        if name.is_empty() {
            announcer.say("A card needs a name. The old one stays.");
        } else {
            cards.change(&id(), |card| card.name = name);
        }
    };
    let about = move |event| {
        let about = event_target_value(&event).trim().to_owned();
        cards.change(&id(), |card| card.about = about);
    };
    view! {
        <Fold title="Name and purpose" test="card-words">
            <label class="field">
                <span>"Name. Never a person's."</span>
                <input
                    type="text"
                    maxlength=LONGEST_NAME.to_string()
                    data-test="card-name"
                    prop:value=move || card.with(|card| card.name.clone())
                    on:change=name
                />
            </label>
            <label class="field">
                <span>"What it is about, in a sentence"</span>
                <textarea
                    rows="2"
                    maxlength=LONGEST_TEXT.to_string()
                    data-test="card-about-field"
                    prop:value=move || card.with(|card| card.about.clone())
                    on:change=about
                ></textarea>
            </label>
        </Fold>
    }
}

/// Throws the card away, asked twice.
#[component]
fn ThrowAway(card: Signal<Card>) -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let address: Address = expect_context();
    let sure = RwSignal::new(false);
    let throw = move |_| {
        if sure.get_untracked() {
            cards.throw_away(&card.with_untracked(|card| card.id.clone()));
            announcer.say("The card is thrown away.");
            address.go(Place::Cards);
        } else {
            sure.set(true);
            announcer.say("Once more to throw it away.");
        }
    };
    view! {
        <button
            type="button"
            class="button button-quiet"
            data-test="throw-away"
            on:click=throw
            on:blur=move |_| sure.set(false)
        >
            {move || if sure.get() { "Really throw it away" } else { "Throw it away" }}
        </button>
    }
}

//! A wish is put on a card: its kind, what it is about, and then the sentence
//! it makes.

mod draft;
mod fields;
mod says;
mod things;

pub use says::{says, thing};

use super::{
    own::cards,
    text::{MOST_WISHES, wish_faults},
};
use crate::{
    browser::address::Address,
    parts::{
        announce::announcer,
        notice::{Notice, Tone},
        page::Page,
    },
    place::Place,
    shell::NotHere,
    taught::catalogue,
};
use catalogue::ids::CardId;
use draft::{Draft, Kind};
use leptos::prelude::*;

/// The screen on which a wish is added to an own card.
#[component]
pub fn WishScreen(
    /// The card.
    id: CardId,
) -> impl IntoView {
    let cards = cards();
    let card = cards.find(id.clone()).get_untracked();
    let Some(card) = card.filter(|_| !cards.is_example(&id)) else {
        return view! { <NotHere what="card" /> }.into_any();
    };
    let up = Place::Card(id.clone(), None, Vec::new()).fragment();
    if card.wishes.len() >= MOST_WISHES {
        return view! {
            <Page title="Add a wish" over=card.name up>
                <p>"The card is full: it holds " {MOST_WISHES} " wishes. Take one off first."</p>
            </Page>
        }
        .into_any();
    }
    let draft = RwSignal::new(Draft::default());
    view! {
        <Page title="Add a wish" over=card.name up>
            <div class="wish">
                <KindChoice draft />
                <things::Things draft />
                <fields::Fields draft />
                <Outcome draft id />
            </div>
        </Page>
    }
    .into_any()
}

/// What kind of wish.
#[component]
fn KindChoice(draft: RwSignal<Draft>) -> impl IntoView {
    let option = move |kind: Kind| {
        let checked = move || draft.with(|draft| draft.kind == Some(kind));
        view! {
            <label class="option">
                <input
                    type="radio"
                    name="kind"
                    data-test=format!("kind-{}", kind.word())
                    prop:checked=checked
                    on:change=move |_| draft.set(Draft::of(kind))
                />
                <span>{kind.label()}</span>
            </label>
        }
    };
    view! {
        <fieldset class="options">
            <legend class="stage-label">"What kind of wish?"</legend>
            {Kind::ALL.map(option).collect_view()}
        </fieldset>
    }
}

/// The sentence that the wish makes, what is wrong with it, and the button
/// that puts it on the card.
#[component]
fn Outcome(draft: RwSignal<Draft>, id: CardId) -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let catalogue = catalogue();
    let address: Address = expect_context();
    let wish = Memo::new(move |_| draft.with(Draft::wish));
    let faults = Memo::new(move |_| {
        let wish = wish.get();
        wish.map_or_else(Vec::new, |wish| wish_faults(&wish, catalogue))
    });
    let ready = move || wish.with(Option::is_some) && faults.with(Vec::is_empty);
    let put = move |_| {
        if let Some(wish) = wish.get_untracked() {
            announcer.say(format!("Put on the card: {}.", says(&wish)));
            cards.add_wish(&id, wish);
            address.go(Place::Card(id.clone(), None, Vec::new()));
        }
    };
    let sentence = move || wish.get().map(|wish| format!("{}.", says(&wish)));
    let wrong = move || {
        let faults = faults.get();
        (!faults.is_empty()).then(|| {
            view! {
                <Notice tone=Tone::Attention>
                    <p data-test="wish-faults">"This cannot be a wish: " {faults.join(" ")}</p>
                </Notice>
            }
        })
    };
    let chosen = move || draft.with(|draft| draft.kind.is_some());
    view! {
        <div hidden=move || !chosen()>
            <p class="wish-says" role="status" data-test="wish-says">{sentence}</p>
            {wrong}
            <div class="case-go">
                <button
                    type="button"
                    class="button"
                    data-test="wish-add"
                    disabled=move || !ready()
                    on:click=put
                >
                    "Put it on the card"
                </button>
            </div>
        </div>
    }
}

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
    browser::{address::Address, focus},
    parts::{
        announce::announcer,
        notice::{Notice, Tone},
        page::Page,
    },
    place::Place,
    shell::NotHere,
    taught::catalogue,
};
use catalogue::{ids::CardId, preference::Card};
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
        <Page title="Add a wish" over=card.name.clone() up>
            <div class="wish">
                <KindChoice draft />
                <things::Things draft />
                <fields::Fields draft />
                <Outcome draft card />
            </div>
        </Page>
    }
    .into_any()
}

/// What kind of wish. Once chosen, only that one stands there.
#[component]
fn KindChoice(draft: RwSignal<Draft>) -> impl IntoView {
    let announcer = announcer();
    let kind = Memo::new(move |_| draft.with(|draft| draft.kind));
    let option = move |kind: Kind| {
        let choose = move |_| {
            draft.set(Draft::of(kind));
            announcer.say(format!("{}.", kind.label()));
            focus::first("#main [data-test=\"kind-again\"]");
        };
        view! {
            <li>
                <button
                    type="button"
                    class="option"
                    data-test=format!("kind-{}", kind.word())
                    on:click=choose
                >
                    {kind.label()}
                </button>
            </li>
        }
    };
    let again = move |_| {
        draft.set(Draft::default());
        focus::first("#main .wish-kinds button");
    };
    let shown = move || {
        match kind.get() {
        None => view! { <ul class="options wish-kinds">{Kind::ALL.map(option).collect_view()}</ul> }
            .into_any(),
        Some(kind) => view! {
            <div class="slot-thing slot-words">
                <span class="slot-name" data-test="wish-kind">{kind.label()}</span>
                <button type="button" class="button button-quiet" data-test="kind-again" on:click=again>
                    "Another"
                </button>
            </div>
        }
        .into_any(),
    }
    };
    view! {
        <section class="slot">
            <h2 class="stage-label">"What kind of wish?"</h2>
            {shown}
        </section>
    }
}

/// The sentence that the wish makes, what is wrong with it, and the button
/// that puts it on the card.
#[component]
fn Outcome(draft: RwSignal<Draft>, card: Card) -> impl IntoView {
    let (cards, announcer) = (cards(), announcer());
    let catalogue = catalogue();
    let address: Address = expect_context();
    let wish = Memo::new(move |_| draft.with(Draft::wish));
    let (id, there) = (card.id, StoredValue::new(card.wishes));
    let faults = Memo::new(move |_| {
        let Some(wish) = wish.get() else {
            return Vec::new();
        };
        let mut faults = wish_faults(&wish, catalogue);
        if there.with_value(|there| there.contains(&wish)) {
            faults.push("it stands on the card already.".into());
        }
        faults
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

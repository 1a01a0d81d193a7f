//! A mix made by hand.
//!
//! - `session`, `kept`: the mix under way, and how it survives a reload
//! - `way`: against the clock, without one, or in words
//! - `before`: the room and the way, before the bench is opened
//! - `pad`, `picture`, `hand`: the mass as it is drawn and worked
//! - `moves`: what else can be done
//! - `moment`: the clock and the dentist
//! - `judged`: the verdict
//! - `task`: a mix that an assignment asks for
//!
//! Nothing here decides how a mix behaves: it asks [`clinic::mixing`].

mod before;
mod hand;
mod judged;
mod kept;
mod moment;
mod moves;
mod pad;
mod picture;
mod session;
mod task;
mod way;

use crate::{
    parts::{fold::Fold, mixing::MixingCard, page::Page},
    place::Place,
    shell::NotHere,
    taught::{catalogue, standard},
};
use before::Before;
use catalogue::ids::ItemId;
use clinic::mixing::{Mix, Room, steps_of};
use judged::Judged;
use leptos::prelude::*;
use moment::MomentLine;
use moves::Moves;
use pad::Pad;
use session::{Session, Stage};

pub use session::handed_over;
pub use task::MixTask;

/// The screen on which a material is mixed.
#[component]
pub fn MixScreen(
    /// The material.
    material: ItemId,
    /// What it is mixed for; its usual use where none is named.
    usage: Option<String>,
) -> impl IntoView {
    let known = steps_of(catalogue(), &material, usage.as_deref()).and_then(|offer| {
        let clean = Mix::new(catalogue(), &material, Some(&offer.usage), Room::usual())?;
        Ok((offer, clean))
    });
    let Ok((offer, clean)) = known else {
        return view! { <NotHere what="material to mix" /> }.into_any();
    };
    let wanted = standard().wanted(&offer);
    let title = offer.name.clone();
    let session = Session::open(offer, wanted, clean);
    let mixing = catalogue()
        .material(&material)
        .and_then(|it| it.mixing.as_ref());
    view! {
        <Page title over="Bench" up=Place::Bench.fragment()>
            <Board session />
            {mixing
                .map(|mixing| {
                    view! {
                        <Fold title="How it is mixed" test="how-it-is-mixed">
                            <MixingCard mixing />
                        </Fold>
                    }
                })}
        </Page>
    }
    .into_any()
}

/// The bench: the mass, the moment, what is seen, and what can be done.
#[component]
fn Board(
    /// The mix.
    session: Session,
) -> impl IntoView {
    let offer = session.offer();
    let uses = offer.uses.iter().find(|(id, _)| *id == offer.usage);
    let for_what = uses.map(|(_, name)| format!("For: {name}"));
    let below = move || match session.stage.get() {
        Stage::Before => view! { <Before session /> }.into_any(),
        Stage::Open => view! { <Moves session /> }.into_any(),
        Stage::Handed => view! { <Judged session /> }.into_any(),
    };
    view! {
        <div class="mb" data-test="mix-screen">
            <div class="mb-bench">
                <p class="hint mb-for">{for_what}</p>
                <Pad session />
                <MomentLine session />
                <Seen session />
            </div>
            <div class="mb-moves">{below}</div>
        </div>
    }
}

/// What is seen, in words, and what was said last. Both keep their room, so
/// that nothing moves under a hand that works.
#[component]
fn Seen(
    /// The mix.
    session: Session,
) -> impl IntoView {
    let seen = Memo::new(move |_| session.look.with(|look| look.sentence.clone()));
    let beside = Memo::new(move |_| {
        session.turn.track();
        session.with(Mix::beside)
    });
    view! {
        <div class="mb-words" class:mb-open=move || session.stage.get() == Stage::Open>
            <p class="mb-seen" data-test="mix-seen">{seen}</p>
            <p class="mb-beside hint" data-test="mix-beside">
                {move || {
                    let beside = beside.get();
                    if beside.is_empty() { String::new() } else { format!("Beside it: {beside}.") }
                }}
            </p>
            <p class="mb-said" data-test="mix-said">{session.said}</p>
        </div>
    }
}

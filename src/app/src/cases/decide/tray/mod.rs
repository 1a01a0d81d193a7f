//! A tray is laid: things are taken from those at hand and lie on the drawn
//! tray in the order in which they were laid.

mod at_hand;
mod laid;
mod laying;
mod moves;

use crate::{cases::play::Play, parts::answer::AnswerButton};
use at_hand::AtHand;
use laid::Laid;
use laying::Laying;
use leptos::prelude::*;
use moves::Moves;

/// The tray over the things at hand.
#[component]
pub fn DecideTray(
    /// The sitting.
    play: Play,
    /// Which decision.
    at: usize,
) -> impl IntoView {
    let laying = Laying::new(play, at);
    let ready = Signal::derive(move || laying.count() > 0);
    view! {
        <div class="laying">
            <Laid laying />
            <Moves laying />
        </div>
        <AtHand laying />
        <AnswerButton ready give=move || play.give(at) />
    }
}

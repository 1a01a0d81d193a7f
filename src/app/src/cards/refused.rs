//! Wishes of the card that applies which a set-up does not grant.

use super::wish::says;
use crate::{
    parts::{
        notice::{Notice, Tone},
        sources::SourceNotes,
    },
    taught::clinic,
};
use clinic::preference::Refusal;
use leptos::prelude::*;

/// The refused wishes, each with the rule. Nothing where all are granted.
#[component]
pub fn RefusedWishes(
    /// The refusals of a tray.
    refused: Vec<Refusal>,
) -> impl IntoView {
    let card = clinic().for_ever().card();
    let one = move |refusal: Refusal| {
        let wish = card.and_then(|card| card.wishes.get(refusal.wish));
        view! {
            <li data-test=format!("refused-{}", refusal.wish)>
                <p>{wish.map(says)} ": refused. " {refusal.reason.because}</p>
                <SourceNotes ids=refusal.reason.sources />
            </li>
        }
    };
    (!refused.is_empty()).then(move || {
        view! {
            <Notice tone=Tone::Attention>
                <p><strong>"The card asks for what this patient or this procedure does not allow."</strong></p>
                <ul data-test="refused">{refused.into_iter().map(one).collect_view()}</ul>
            </Notice>
        }
    })
}

//! The tray of a procedure, derived for the patient the reader supposes.

use super::{chips::Chips, supposing};
use crate::{
    cards::{RefusedWishes, WithCard, applied},
    parts::{
        announce::announcer,
        fold::Fold,
        icon::{Icon, icon},
        item_link,
        tray::TrayView,
    },
    place::{Place, Supposed, View},
    taught::clinic,
    tray_card::Paper,
};
use catalogue::{ids::ItemId, procedures::Procedure};
use clinic::tray::Tray;
use leptos::prelude::*;

/// The set-up side of a procedure.
#[component]
pub fn SetUp(
    /// The procedure.
    procedure: &'static Procedure,
    /// The patient the reader supposes.
    supposed: Signal<Supposed>,
) -> impl IntoView {
    let clinic = clinic();
    let tray = move || {
        let patient = supposed.with(|supposed| supposing::patient(&clinic, supposed));
        clinic.tray(&procedure.id, &patient)
    };
    let (announcer, card) = (announcer(), applied().card());
    // The first tray is seen; only what follows a change of patient is said.
    Effect::new(move |before: Option<()>| {
        supposed.track();
        // Read, not only tracked: a memo that nobody reads never changes.
        card.with(|_| ());
        if before.is_some() {
            announcer.say(spoken(&untrack(tray)));
        }
    });
    let drawn = move || {
        let tray = tray();
        let (pairs, refused) = (tray.must_before.clone(), tray.refused.clone());
        view! { <RefusedWishes refused /> <TrayView tray /> <OrderNotes pairs /> }
    };
    let card =
        move || Place::TrayCard(procedure.id.clone(), Paper::default(), supposed.get()).fragment();
    view! {
        <div class="with-patient">
            <Chips procedure view=View::SetUp supposed />
            <div>
                <h2 class="unseen">"The tray"</h2>
                <WithCard />
                <p class="hint">
                    "Laid from the steps, in order of use. Tap a thing to see why it is there."
                </p>
                {drawn}
                <p class="actions">
                    <a class="button button-quiet" href=card data-test="tray-card">
                        {icon(Icon::Print)} "Tray card, to print"
                    </a>
                </p>
            </div>
        </div>
    }
}

/// What a tray holds, in one sentence.
fn spoken(tray: &Tray) -> String {
    let items: usize = tray.stages.iter().map(|stage| stage.items.len()).sum();
    let changes = tray.changes.len();
    match changes {
        0 => format!("The tray now has {items} things."),
        1 => format!("The tray now has {items} things; 1 is not as in the standard set-up."),
        _ => {
            format!("The tray now has {items} things; {changes} are not as in the standard set-up.")
        }
    }
}

/// Pairs whose order matters, folded.
#[component]
fn OrderNotes(pairs: Vec<(ItemId, ItemId, String)>) -> impl IntoView {
    let pair = |(first, then, because): &(ItemId, ItemId, String)| {
        view! {
            <div class="slip">
                <dt>{item_link::name(first)} " before " {item_link::name(then)}</dt>
                <dd>{because.clone()}</dd>
            </div>
        }
    };
    (!pairs.is_empty()).then(|| {
        view! {
            <Fold title="Where the order matters">
                <dl class="slips">{pairs.iter().map(pair).collect_view()}</dl>
            </Fold>
        }
    })
}

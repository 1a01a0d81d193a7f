//! What to heed: hazards, what this patient changes, and what comes before what.

use crate::{
    parts::{item_link, within::within},
    taught::catalogue,
};
use catalogue::{ids::ItemId, procedures::Procedure};
use clinic::tray::Change;
use leptos::prelude::*;

/// The cautions of a card.
#[component]
pub fn Cautions(
    /// The procedure.
    procedure: &'static Procedure,
    /// What the patient changes.
    changes: Vec<Change>,
    /// What has to come before what, with the reason.
    pairs: Vec<(ItemId, ItemId, String)>,
) -> impl IntoView {
    let mut lines: Vec<String> = changes.iter().map(changed).collect();
    for line in within(catalogue(), &procedure.id)
        .iter()
        .flat_map(|it| &it.hazards)
    {
        if !lines.contains(line) {
            lines.push(line.clone());
        }
    }
    let before = |(first, then, because): &(ItemId, ItemId, String)| {
        let names = (item_link::name(first), item_link::name(then));
        format!("{} before {}: {because}", names.0, names.1)
    };
    lines.extend(pairs.iter().map(before));
    let lines: Vec<_> = lines
        .into_iter()
        .map(|line| view! { <li>{line}</li> })
        .collect();
    (!lines.is_empty()).then(|| {
        view! {
            <section class="tc-cautions">
                <h3>"Heed"</h3>
                <ul>{lines}</ul>
            </section>
        }
    })
}

fn changed(change: &Change) -> String {
    let from = item_link::name(&change.from);
    match &change.to {
        Some(to) => format!(
            "{} instead of {from}: {}",
            item_link::name(to),
            change.reason.because
        ),
        None => format!("No {from}: {}", change.reason.because),
    }
}

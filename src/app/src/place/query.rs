//! What stands after the `?` of a fragment.

use super::Supposed;
use crate::find::words;
use catalogue::ids::{FindingId, ItemId};

/// What names the procedure a card is looked at over.
pub(super) const OVER: &str = "procedure";

/// What names the paper of a tray card, and says that names are hidden.
pub(super) const PAPER: &str = "paper";
pub(super) const HIDDEN: &str = "names=hidden";

/// What was typed into the boxes of a tool, by their ids.
pub(super) fn entered(query: &str) -> Vec<(String, String)> {
    let pairs = query.split('&').filter_map(|pair| pair.split_once('='));
    pairs
        .map(|(id, typed)| (id.into(), words::decoded(typed)))
        .collect()
}

/// A query of bare ids.
pub(super) fn listed(query: &str) -> Vec<ItemId> {
    let ids = query.split('&').filter(|id| !id.is_empty());
    ids.map(ItemId::from).collect()
}

/// Adds a query to a fragment; nothing where there is nothing to add.
pub(super) fn add_query(text: &mut String, parts: impl Iterator<Item = String>) {
    for (index, part) in parts.enumerate() {
        text.push(if index == 0 { '?' } else { '&' });
        text.push_str(&part);
    }
}

pub(super) fn pairs(patient: &Supposed) -> impl Iterator<Item = String> {
    let pair = |(finding, value): &(FindingId, String)| format!("{finding}={value}");
    patient.iter().map(pair)
}

/// The findings of a query; what is no pair is passed over.
pub(super) fn supposed(query: &str) -> Supposed {
    query
        .split('&')
        .filter_map(|pair| pair.split_once('='))
        .map(|(finding, value)| (finding.into(), value.into()))
        .collect()
}

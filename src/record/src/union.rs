//! Merging: the union of two sets of events. Being a union it does not matter
//! what comes first, what comes together, or what comes twice.

use crate::event::Event;

/// The union of two sets of events, in event order.
pub fn union(a: &[Event], b: &[Event]) -> Vec<Event> {
    let mut all: Vec<Event> = a.iter().chain(b).cloned().collect();
    all.sort();
    all.dedup();
    all
}

/// Those of `more` that are not in `known` (which is in event order), each
/// once, in event order.
pub(crate) fn new_among(known: &[Event], mut more: Vec<Event>) -> Vec<Event> {
    more.retain(|event| known.binary_search(event).is_err());
    more.sort();
    more.dedup();
    more
}

/// Adds events that are known to be new, keeping event order.
pub(crate) fn insert(known: &mut Vec<Event>, new: Vec<Event>) {
    let in_order = match (known.last(), new.first()) {
        (Some(last), Some(first)) => last < first,
        _ => true,
    };
    known.extend(new);
    if !in_order {
        known.sort();
    }
}

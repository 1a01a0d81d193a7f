//! Events that only a later version understands.

use std::collections::BTreeMap;

use crate::event::Event;
use crate::what::What;

/// How many events of each kind this version keeps without understanding.
pub fn unknown_kinds(events: &[Event]) -> BTreeMap<String, usize> {
    let mut kinds = BTreeMap::new();
    for event in events {
        if let What::Unknown(it) = &event.what {
            *kinds.entry(it.kind().to_owned()).or_insert(0) += 1;
        }
    }
    kinds
}

//! The settings as they stand.

use std::collections::BTreeMap;

use crate::event::Event;
use crate::what::What;

/// Each setting with the value it was last given, last in event order.
pub fn settings(events: &[Event]) -> BTreeMap<String, String> {
    let mut values = BTreeMap::new();
    for event in events {
        if let What::SettingChanged(it) = &event.what {
            values.insert(it.key.clone(), it.value.clone());
        }
    }
    values
}

//! The packs in use on this device, as they were put in use: whatever is
//! written in a pack afterwards waits until it is put in use again. Only texts
//! here: what they say is read behind a door of `areas`.

use crate::browser::storage::BrowserStore;
use record::{Store, StoreError};

/// What the key of a pack in use starts with; its id follows.
const USED: &str = "trayward/packs/used/";

/// The packs in use, each as the file it travels as. A storage that lets nobody
/// in has none.
pub fn texts() -> Vec<String> {
    let Ok(mut keys) = BrowserStore.keys() else {
        return Vec::new();
    };
    keys.retain(|key| key.starts_with(USED));
    keys.sort();
    let text = |key: String| BrowserStore.get(&key).ok().flatten();
    keys.into_iter().filter_map(text).collect()
}

/// A pack as it was put in use; none where it is not in use.
pub fn text(id: &str) -> Option<String> {
    BrowserStore.get(&format!("{USED}{id}")).ok().flatten()
}

/// Puts a pack in use from the next opening of the page on.
///
/// # Errors
/// When the storage is full or lets nobody in.
pub fn put(id: &str, text: &str) -> Result<(), StoreError> {
    BrowserStore.put(&format!("{USED}{id}"), text)
}

/// Puts a pack out of use from the next opening of the page on.
///
/// # Errors
/// When the storage lets nobody in.
pub fn remove(id: &str) -> Result<(), StoreError> {
    BrowserStore.remove(&format!("{USED}{id}"))
}

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
    by_id().into_iter().map(|(_, text)| text).collect()
}

/// The packs in use as files to lay beside the page, each with its path.
pub fn beside() -> Vec<(String, Vec<u8>)> {
    let file = |(id, text): (String, String)| (lies(&id), text.into_bytes());
    by_id().into_iter().map(file).collect()
}

/// Where a pack lies beside the page.
pub fn lies(id: &str) -> String {
    format!("packs/{id}.json")
}

fn by_id() -> Vec<(String, String)> {
    let Ok(mut keys) = BrowserStore.keys() else {
        return Vec::new();
    };
    keys.sort();
    let pack = |key: String| {
        let text = BrowserStore.get(&key).ok().flatten()?;
        Some((key.strip_prefix(USED)?.to_owned(), text))
    };
    keys.into_iter().filter_map(pack).collect()
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

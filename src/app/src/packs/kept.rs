//! The packs that this device keeps to be written in. They stand beside the
//! record, which is the student's, and are read by the one reader of packs.

use super::used;
use crate::browser::storage::BrowserStore;
use class::pack::{self, Pack};
use record::{Store, StoreError};

/// What the key of a kept pack starts with; its id follows.
const KEPT: &str = "trayward/packs/kept/";

/// What the key of the content that was last given out starts with.
const OUT: &str = "trayward/packs/out/";

/// A pack that this device keeps.
pub struct Kept {
    /// Its id.
    pub id: String,
    /// The pack, or the sentences that say why it cannot be read.
    pub pack: Result<Pack, Vec<String>>,
}

/// Why something could not be kept: a sentence for the instructor.
pub fn unkept(error: &StoreError) -> String {
    match error {
        StoreError::Full => "This browser's storage is full: what you write is not kept. Save the pack as a file, then make room by taking packs away that you do not need.",
        _ => "This browser does not let the page store anything: what you write is lost when the page is closed. Save the pack as a file.",
    }
    .to_owned()
}

/// All packs that are kept, by their titles.
///
/// # Errors
/// A sentence where the storage lets nobody in.
pub fn all() -> Result<Vec<Kept>, String> {
    let keys = BrowserStore.keys().map_err(|error| unkept(&error))?;
    let ids = keys.iter().filter_map(|key| key.strip_prefix(KEPT));
    let mut all: Vec<Kept> = ids.filter_map(one).collect();
    all.sort_by_cached_key(|kept| {
        let title = kept.pack.as_ref().map(|pack| pack.title().to_lowercase());
        (title.unwrap_or_default(), kept.id.clone())
    });
    Ok(all)
}

/// One pack; none where nothing is kept of it.
pub fn one(id: &str) -> Option<Kept> {
    let text = BrowserStore.get(&format!("{KEPT}{id}")).ok()??;
    Some(Kept {
        id: id.to_owned(),
        pack: pack::read(text.as_bytes()),
    })
}

/// Keeps a pack.
///
/// # Errors
/// A sentence where it could not be kept.
pub fn keep(pack: &Pack) -> Result<(), String> {
    BrowserStore
        .put(&format!("{KEPT}{}", pack.id()), &pack.write())
        .map_err(|error| unkept(&error))
}

/// Takes a pack away, out of use as well.
///
/// # Errors
/// A sentence where the storage lets nobody in.
pub fn take_away(id: &str) -> Result<(), String> {
    used::remove(id)
        .and_then(|()| BrowserStore.remove(&format!("{KEPT}{id}")))
        .and_then(|()| BrowserStore.remove(&format!("{OUT}{id}")))
        .map_err(|error| unkept(&error))
}

/// The pack as it is given out: where anything was written since it was given out
/// last, it is the next version. The kept one follows.
///
/// # Errors
/// A sentence where that could not be kept.
pub fn give_out(pack: &mut Pack) -> Result<(), String> {
    let key = format!("{OUT}{}", pack.id());
    let now = format!("{:08x}", pack.content_checksum());
    let before = BrowserStore.get(&key).map_err(|error| unkept(&error))?;
    if before.as_ref() == Some(&now) {
        return Ok(());
    }
    if before.is_some() {
        pack.version = pack.version.saturating_add(1);
    }
    keep(pack)?;
    BrowserStore.put(&key, &now).map_err(|error| unkept(&error))
}

/// Notes that a pack came from outside as it is, so that giving it on unchanged
/// leaves its version.
pub fn came_from_outside(pack: &Pack) {
    // Where that fails, the next version is one too high, which harms nobody.
    let key = format!("{OUT}{}", pack.id());
    let _ = BrowserStore.put(&key, &format!("{:08x}", pack.content_checksum()));
}

/// The pack as it is in use on this device; none where it is not.
pub fn in_use(id: &str) -> Option<Pack> {
    used::text(id).and_then(|text| pack::read(text.as_bytes()).ok())
}

/// Puts a pack in use from the next opening of the page on.
///
/// # Errors
/// A sentence where it could not be kept.
pub fn put_in_use(pack: &Pack) -> Result<(), String> {
    used::put(pack.id(), &pack.write()).map_err(|error| unkept(&error))
}

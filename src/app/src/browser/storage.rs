//! The browser's local storage as a store for the record.

use gloo_storage::{LocalStorage, Storage};
use record::{Store, StoreError};
use wasm_bindgen::{JsCast, JsValue};

/// The local storage of this page's origin.
#[derive(Clone, Copy, Debug)]
pub struct BrowserStore;

/// The storage itself. Where the browser forbids it, asking for it already
/// throws, so it is asked for here before the library takes it for granted.
fn raw() -> Result<web_sys::Storage, StoreError> {
    let window = web_sys::window().ok_or(StoreError::Forbidden)?;
    match window.local_storage() {
        Ok(Some(_)) => Ok(LocalStorage::raw()),
        Ok(None) => Err(StoreError::Forbidden),
        Err(thrown) => Err(reason(&thrown)),
    }
}

/// What a thrown value says, by the names the standard gives.
fn reason(thrown: &JsValue) -> StoreError {
    let Some(exception) = thrown.dyn_ref::<web_sys::DomException>() else {
        return StoreError::Other("an unknown fault".into());
    };
    match exception.name().as_str() {
        "QuotaExceededError" | "NS_ERROR_DOM_QUOTA_REACHED" => StoreError::Full,
        "SecurityError" => StoreError::Forbidden,
        name => StoreError::Other(name.into()),
    }
}

impl Store for BrowserStore {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        let storage = raw()?;
        let count = storage.length().map_err(|thrown| reason(&thrown))?;
        (0..count)
            .filter_map(|index| storage.key(index).map_err(|e| reason(&e)).transpose())
            .collect()
    }

    fn get(&self, key: &str) -> Result<Option<String>, StoreError> {
        raw()?.get_item(key).map_err(|thrown| reason(&thrown))
    }

    fn put(&self, key: &str, text: &str) -> Result<(), StoreError> {
        raw()?.set_item(key, text).map_err(|thrown| reason(&thrown))
    }

    fn remove(&self, key: &str) -> Result<(), StoreError> {
        raw()?.remove_item(key).map_err(|thrown| reason(&thrown))
    }
}

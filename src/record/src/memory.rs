//! A store that lives only in memory: for tests, and for a page to which the
//! browser forbids storage.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use crate::store::{Store, StoreError};

/// Texts in memory. Clones share one content, like two tabs of one browser.
#[derive(Debug, Clone, Default)]
pub struct MemoryStore(Arc<Mutex<Inner>>);

#[derive(Debug, Default)]
struct Inner {
    texts: BTreeMap<String, String>,
    room: Option<usize>,
    forbidden: bool,
}

impl MemoryStore {
    /// An empty store with room for anything.
    pub fn new() -> Self {
        Self::default()
    }

    /// From now on the store holds at most `bytes` of keys and texts together;
    /// `None` lifts the limit. What is already there stays.
    pub fn limit(&self, bytes: Option<usize>) {
        self.inner().room = bytes;
    }

    /// From now on every use is refused, or allowed again.
    pub fn forbid(&self, forbidden: bool) {
        self.inner().forbidden = forbidden;
    }

    fn inner(&self) -> MutexGuard<'_, Inner> {
        // The content is whole between any two calls, so a panic elsewhere
        // cannot have left it half-written.
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn allowed(&self) -> Result<MutexGuard<'_, Inner>, StoreError> {
        let inner = self.inner();
        if inner.forbidden {
            return Err(StoreError::Forbidden);
        }
        Ok(inner)
    }
}

impl Store for MemoryStore {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        Ok(self.allowed()?.texts.keys().cloned().collect())
    }

    fn get(&self, key: &str) -> Result<Option<String>, StoreError> {
        Ok(self.allowed()?.texts.get(key).cloned())
    }

    fn put(&self, key: &str, text: &str) -> Result<(), StoreError> {
        let mut inner = self.allowed()?;
        if let Some(room) = inner.room {
            let others: usize = inner
                .texts
                .iter()
                .filter(|(other, _)| *other != key)
                .map(|(other, text)| other.len() + text.len())
                .sum();
            if others + key.len() + text.len() > room {
                return Err(StoreError::Full);
            }
        }
        inner.texts.insert(key.to_owned(), text.to_owned());
        Ok(())
    }

    fn remove(&self, key: &str) -> Result<(), StoreError> {
        self.allowed()?.texts.remove(key);
        Ok(())
    }
}

//! Where segments are kept: a few texts under keys, as in a browser's local
//! storage. The page implements [`Store`] over the real one.

use core::fmt;

/// Keeps texts under keys.
///
/// `put` must be all or nothing: when it fails, what stood under the key
/// still stands there.
pub trait Store {
    /// All keys in the store, also those that are not the record's.
    ///
    /// # Errors
    /// [`StoreError`] when the store cannot be read.
    fn keys(&self) -> Result<Vec<String>, StoreError>;

    /// The text under `key`, if any.
    ///
    /// # Errors
    /// [`StoreError`] when the store cannot be read.
    fn get(&self, key: &str) -> Result<Option<String>, StoreError>;

    /// Puts `text` under `key`.
    ///
    /// # Errors
    /// [`StoreError`] when the text could not be kept.
    fn put(&self, key: &str, text: &str) -> Result<(), StoreError>;

    /// Removes `key`. The record itself never does.
    ///
    /// # Errors
    /// [`StoreError`] when the key could not be removed.
    fn remove(&self, key: &str) -> Result<(), StoreError>;
}

impl<S: Store + ?Sized> Store for Box<S> {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        (**self).keys()
    }
    fn get(&self, key: &str) -> Result<Option<String>, StoreError> {
        (**self).get(key)
    }
    fn put(&self, key: &str, text: &str) -> Result<(), StoreError> {
        (**self).put(key, text)
    }
    fn remove(&self, key: &str) -> Result<(), StoreError> {
        (**self).remove(key)
    }
}

/// Why a store did not do what it was asked. Shown to the student as it reads.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum StoreError {
    /// No room is left.
    Full,
    /// The browser does not let this page store anything.
    Forbidden,
    /// Anything else, in the store's own words.
    Other(String),
}

impl fmt::Display for StoreError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Full => f.write_str("The browser's storage for this page is full."),
            Self::Forbidden => f.write_str("The browser does not let this page store anything."),
            Self::Other(text) => write!(f, "The browser could not store the record ({text})."),
        }
    }
}

impl core::error::Error for StoreError {}

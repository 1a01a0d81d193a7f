//! Which packs the page was opened with, and what comes from them.

use class::{
    bank::Version,
    pack::provenance::{Origin, Provenance},
};
use leptos::prelude::*;

/// A pack that the page was opened with.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Used {
    /// The pack.
    pub origin: Origin,
    /// The checksum of all that it says.
    pub checksum: u32,
}

/// What the page was opened with. Cheap to copy.
#[derive(Clone, Copy)]
pub struct InUse(StoredValue<Inner>);

struct Inner {
    built_in: Version,
    used: Vec<Used>,
    from: Provenance,
}

impl InUse {
    /// Makes it known to all views below.
    pub fn provide(built_in: Version, used: Vec<Used>, from: Provenance) {
        let inner = Inner {
            built_in,
            used,
            from,
        };
        provide_context(Self(StoredValue::new(inner)));
    }

    /// The bank of the built-in catalogue alone.
    pub fn built_in(self) -> Version {
        self.0.with_value(|inner| inner.built_in)
    }

    /// The packs that the page was opened with.
    pub fn used(self) -> Vec<Used> {
        self.0.with_value(|inner| inner.used.clone())
    }

    /// The pack that a thing comes from, by the name of its kind (`procedure`,
    /// `instrument` …) and its id; none where it is built in.
    pub fn origin(self, kind: &str, id: &str) -> Option<Origin> {
        self.0
            .with_value(|inner| inner.from.origin(kind, id).cloned())
    }
}

/// What the page was opened with.
pub fn in_use() -> InUse {
    expect_context()
}

//! What comes from which pack.

use super::Pack;
use catalogue::source::Read;
use std::collections::BTreeMap;

/// A pack as a reader is told of it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Origin {
    /// Its id.
    pub id: String,
    /// What it is called.
    pub title: String,
    /// The version of its content.
    pub version: u32,
}

impl From<&Pack> for Origin {
    fn from(pack: &Pack) -> Self {
        Self {
            id: pack.id().to_owned(),
            title: pack.title().to_owned(),
            version: pack.version,
        }
    }
}

/// Which pack each thing comes from; what is built in is not in it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Provenance {
    packs: Vec<Origin>,
    things: BTreeMap<(&'static str, String), usize>,
}

impl Provenance {
    /// From where things were written to the pack that the file is of.
    pub(super) fn of(read: &Read, packs: &[&Pack]) -> Self {
        let mut things = BTreeMap::new();
        for (kind, ids) in read.catalogue.kinds() {
            let files = read.written.get(kind).map_or(&[][..], Vec::as_slice);
            for (id, file) in ids.into_iter().zip(files) {
                if let Some(at) = packs.iter().position(|pack| pack.file(file).is_some()) {
                    things.insert((kind, id.to_owned()), at);
                }
            }
        }
        Self {
            packs: packs.iter().map(|pack| Origin::from(*pack)).collect(),
            things,
        }
    }

    /// The pack that a thing comes from, by its kind (`instrument`, `case` …)
    /// and its id; none where it is built in.
    pub fn origin(&self, kind: &str, id: &str) -> Option<&Origin> {
        let mut found = self.things.iter();
        let (_, at) = found.find(|((k, i), _)| *k == kind && i == id)?;
        self.packs.get(*at)
    }

    /// The packs, in the order in which they were laid.
    pub fn packs(&self) -> &[Origin] {
        &self.packs
    }

    /// How many things come from a pack, of one kind or of all.
    pub fn count(&self, pack: &str, kind: Option<&str>) -> usize {
        let of = |at: usize| self.packs.get(at).is_some_and(|origin| origin.id == pack);
        self.things
            .iter()
            .filter(|((k, _), at)| of(**at) && kind.is_none_or(|kind| *k == kind))
            .count()
    }
}

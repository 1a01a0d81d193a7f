//! Packs laid over the built-in sources, and the whole of it read and checked
//! by the one reader of content.

use super::{
    Pack,
    limits::{MOST_RULES, MOST_THINGS},
    provenance::Provenance,
};
use catalogue::{
    Catalogue,
    source::{Fault, Files, read_files},
};
use std::collections::BTreeMap;

/// A catalogue of built-in sources and packs.
#[derive(Clone, Debug, PartialEq)]
pub struct Over {
    /// The catalogue.
    pub catalogue: Catalogue,
    /// What comes from which pack.
    pub from: Provenance,
}

/// Lays packs over the built-in sources.
///
/// # Errors
/// Every file that stands where another stands already and does not say that it
/// replaces it, and every one that replaces what is not there.
pub fn lay(built_in: &Files, packs: &[&Pack]) -> Result<Files, Vec<Fault>> {
    let mut files = built_in.clone();
    let mut faults = Vec::new();
    let mut owners: BTreeMap<&str, &Pack> = BTreeMap::new();
    for pack in packs {
        for (path, file) in pack.files() {
            let there = built_in.get(path).is_some();
            let message = match (owners.get(path), there, file.replaces) {
                (Some(other), ..) => Some(format!(
                    "the pack “{}” has this file too; one device uses one of them: give one another name, or put one pack out of use",
                    other.title()
                )),
                (None, true, false) => Some(
                    "the built-in catalogue has this file; give it another name, or say that it replaces the built-in one".into(),
                ),
                (None, false, true) => Some(
                    "there is no built-in file that it could replace; say that it is an addition".into(),
                ),
                _ => None,
            };
            if let Some(message) = message {
                faults.push(Fault {
                    file: format!("content/{path}"),
                    line: 1,
                    column: 1,
                    message,
                });
                continue;
            }
            owners.insert(path, pack);
            files.lay(path, &file.text);
        }
    }
    if faults.is_empty() {
        Ok(files)
    } else {
        Err(faults)
    }
}

/// Reads and checks packs laid over the built-in sources.
///
/// # Errors
/// Every fault, with its place. A catalogue with a fault is never returned.
pub fn read(built_in: &Files, packs: &[&Pack]) -> Result<Over, Vec<Fault>> {
    let files = lay(built_in, packs)?;
    let read = read_files(&files)?;
    let from = Provenance::of(&read, packs);
    let faults: Vec<Fault> = packs
        .iter()
        .filter_map(|pack| too_many(pack, &from))
        .collect();
    if faults.is_empty() {
        Ok(Over {
            catalogue: read.catalogue,
            from,
        })
    } else {
        Err(faults)
    }
}

/// A fault where a pack holds more things than a device can reason about.
fn too_many(pack: &Pack, from: &Provenance) -> Option<Fault> {
    // What replaces a built-in file holds what was there besides.
    let replaces = |kind: &str| {
        let mut files = pack.files().filter(|(_, file)| file.replaces);
        files.any(|(path, _)| super::place::Kind::of(path).is_ok_and(|k| k.table() == Some(kind)))
    };
    let things = from.count(pack.id(), None);
    let rules = from.count(pack.id(), Some("rule"));
    let message = if things > MOST_THINGS {
        format!(
            "the pack “{}” holds {things} things; {MOST_THINGS} are the most",
            pack.title()
        )
    } else if rules > MOST_RULES && !replaces("rule") {
        format!(
            "the pack “{}” holds {rules} rules; {MOST_RULES} are the most",
            pack.title()
        )
    } else {
        return None;
    };
    Some(Fault {
        file: "content".into(),
        line: 1,
        column: 1,
        message,
    })
}

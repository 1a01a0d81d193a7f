//! The catalogue made known to all views: the built-in one, or one made of the
//! built-in sources and the packs in use, read by the reader of content and held
//! to its checks. A pack that does not pass is set aside, and the page goes on.

use super::in_use::{InUse, Used};
use crate::{cards::Applied, log::log, taught};
use catalogue::{Catalogue, outline::Outline, source::Files};
use class::{
    bank::Version,
    pack::{self, Pack, over, provenance::Origin, provenance::Provenance},
};
use leptos::prelude::*;

/// What came of opening the catalogue with packs.
pub struct Opened {
    /// What there is by name, where packs have changed it.
    pub outline: Option<Outline>,
    /// Which packs were set aside, each in a sentence with the first fault.
    pub aside: Vec<String>,
}

/// Opens the built-in catalogue.
///
/// # Errors
/// A sentence where it cannot be unpacked.
pub fn built_in(bytes: &[u8], owner: &Owner) -> Result<(), String> {
    let version = Version::of(bytes);
    let catalogue = catalogue::unpack(bytes)?;
    provide(
        owner,
        catalogue,
        version,
        version,
        Vec::new(),
        Provenance::default(),
    );
    Ok(())
}

/// Opens the catalogue with packs, each as the file it travels as.
///
/// # Errors
/// A sentence where not even the built-in catalogue can be opened.
pub fn with_packs(
    bytes: &[u8],
    sources: &[u8],
    texts: &[String],
    owner: &Owner,
) -> Result<Opened, String> {
    let mut aside = Vec::new();
    let mut packs = Vec::new();
    for text in texts {
        match pack::read(text.as_bytes()) {
            Ok(pack) => packs.push(pack),
            Err(faults) => aside.push(format!(
                "A pack that was in use cannot be read any more and is set aside. {}",
                faults.join(" ")
            )),
        }
    }
    let files = match Files::unpack(sources) {
        Ok(files) => files,
        Err(sentence) => {
            built_in(bytes, owner)?;
            aside.push(format!("The packs in use are set aside. {sentence}"));
            return Ok(Opened {
                outline: None,
                aside,
            });
        }
    };
    let (used, over) = those_that_pass(&files, &packs, &mut aside);
    let Some(over) = over else {
        built_in(bytes, owner)?;
        return Ok(Opened {
            outline: None,
            aside,
        });
    };
    let outline = Outline::of(&over.catalogue);
    let used: Vec<Used> = used
        .into_iter()
        .map(|pack| Used {
            origin: Origin::from(pack),
            checksum: pack.checksum(),
        })
        .collect();
    let own = Version::of(bytes);
    let version = pack::bank(own, used.iter().map(|used| used.checksum));
    provide(owner, over.catalogue, own, version, used, over.from);
    Ok(Opened {
        outline: Some(outline),
        aside,
    })
}

/// The packs that pass the checks together; those that do not are set aside one
/// after the other.
fn those_that_pass<'p>(
    files: &Files,
    packs: &'p [Pack],
    aside: &mut Vec<String>,
) -> (Vec<&'p Pack>, Option<over::Over>) {
    let all: Vec<&Pack> = packs.iter().collect();
    if all.is_empty() {
        return (all, None);
    }
    if let Ok(over) = over::read(files, &all) {
        return (all, Some(over));
    }
    let mut used: Vec<&Pack> = Vec::new();
    let mut last = None;
    for pack in all {
        used.push(pack);
        match over::read(files, &used) {
            Ok(over) => last = Some(over),
            Err(faults) => {
                used.pop();
                let first = faults.first().map(ToString::to_string);
                aside.push(format!(
                    "The pack “{}” does not pass the checks here any more and is set aside. {}",
                    pack.title(),
                    first.unwrap_or_default()
                ));
            }
        }
    }
    (used, last)
}

fn provide(
    owner: &Owner,
    catalogue: Catalogue,
    built_in: Version,
    version: Version,
    used: Vec<Used>,
    from: Provenance,
) {
    let catalogue = taught::keep(catalogue);
    owner.with(|| {
        provide_context(version);
        InUse::provide(built_in, used, from);
        taught::provide(catalogue, Applied::provide(log(), catalogue).card());
    });
}

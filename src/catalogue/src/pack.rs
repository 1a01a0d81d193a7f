//! The packed catalogue: one binary file that the page fetches beside the
//! program. It opens with a mark and a version, so that a page and a catalogue
//! of different builds never read one another wrongly.

use crate::{Catalogue, outline::Outline};
use serde::de::DeserializeOwned;

const MARK: &[u8] = b"TWc3";
const OUTLINE_MARK: &[u8] = b"TWo1";

/// Packs the catalogue.
pub fn pack(catalogue: &Catalogue) -> Vec<u8> {
    // Writing to memory cannot fail: every type of the schema has a known length.
    postcard::to_extend(catalogue, MARK.to_vec()).unwrap_or_default()
}

/// Unpacks what [`pack`] wrote.
///
/// # Errors
/// A sentence for the reader of the page, if the bytes are not a packed
/// catalogue of this version or are damaged.
pub fn unpack(bytes: &[u8]) -> Result<Catalogue, String> {
    read(bytes, MARK)
}

/// Packs the outline of a catalogue.
pub fn pack_outline(catalogue: &Catalogue) -> Vec<u8> {
    postcard::to_extend(&Outline::of(catalogue), OUTLINE_MARK.to_vec()).unwrap_or_default()
}

/// Unpacks what [`pack_outline`] wrote.
///
/// # Errors
/// A sentence for the reader of the page, if the bytes are not an outline of
/// this version or are damaged.
pub fn unpack_outline(bytes: &[u8]) -> Result<Outline, String> {
    read(bytes, OUTLINE_MARK)
}

fn read<T: DeserializeOwned>(bytes: &[u8], mark: &[u8]) -> Result<T, String> {
    let body = bytes
        .strip_prefix(mark)
        .ok_or("The catalogue file is not the one this page was built with. Reload the page.")?;
    postcard::from_bytes(body)
        .map_err(|_| "The catalogue file is damaged. Reload the page to fetch it again.".into())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn foreign_and_cut_files_are_refused_in_words() {
        let packed = pack(&Catalogue::default());
        assert_eq!(unpack(&packed), Ok(Catalogue::default()));
        assert!(unpack(b"").is_err());
        assert!(unpack(b"TWc0").is_err());
        assert!(unpack(&packed[..packed.len() - 1]).is_err());
        let outline = pack_outline(&Catalogue::default());
        assert_eq!(unpack_outline(&outline), Ok(Outline::default()));
        assert!(unpack_outline(&packed).is_err());
        assert!(unpack_outline(&outline[..outline.len() - 1]).is_err());
    }
}

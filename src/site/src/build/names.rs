//! Files named by what is in them, so that a name can be kept for ever.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

/// How many hexadecimal digits of the digest a name carries.
const DIGITS: usize = 16;

/// One finished file of the page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Asset {
    /// Its name in the folder of the page.
    pub name: String,
    /// Its final bytes: nothing changes them after the name is given.
    pub bytes: Vec<u8>,
    /// Its digest as browsers check it (`sha256-…`).
    pub integrity: String,
}

impl Asset {
    /// A file whose name carries the digest of its bytes: `stem-<digest>.extension`.
    pub fn hashed(stem: &str, extension: &str, bytes: impl Into<Vec<u8>>) -> Self {
        let bytes = bytes.into();
        let digest = digest(&bytes);
        Self {
            name: format!("{stem}-{digest}.{extension}"),
            ..Self::named("", bytes)
        }
    }

    /// A file that must keep its name whatever is in it.
    pub fn named(name: &str, bytes: impl Into<Vec<u8>>) -> Self {
        let bytes = bytes.into();
        let integrity = format!("sha256-{}", STANDARD.encode(Sha256::digest(&bytes)));
        Self {
            name: name.into(),
            bytes,
            integrity,
        }
    }
}

/// The digest that names carry.
pub fn digest(bytes: &[u8]) -> String {
    use std::fmt::Write as _;
    Sha256::digest(bytes)
        .iter()
        .take(DIGITS / 2)
        .fold(String::new(), |mut text, byte| {
            let _ = write!(text, "{byte:02x}");
            text
        })
}

/// Whether a file name carries the digest of its bytes, so that the bytes
/// behind the name never change.
pub fn is_hashed(name: &str) -> bool {
    name.rsplit_once('.')
        .and_then(|(stem, _)| stem.rsplit_once('-'))
        .is_some_and(|(_, digits)| {
            digits.len() == DIGITS && digits.bytes().all(|digit| digit.is_ascii_hexdigit())
        })
}

#[cfg(test)]
mod tests {
    use super::{Asset, is_hashed};

    /// SHA-256 of the empty string and of "abc": FIPS 180-4, examples.
    #[test]
    fn digests_are_those_of_the_standard() {
        assert_eq!(Asset::hashed("a", "js", "").name, "a-e3b0c44298fc1c14.js");
        let abc = Asset::hashed("a", "js", "abc");
        assert_eq!(abc.name, "a-ba7816bf8f01cfea.js");
        assert_eq!(
            abc.integrity,
            "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="
        );
    }

    #[test]
    fn other_bytes_get_another_name() {
        assert_ne!(
            Asset::hashed("a", "js", "x").name,
            Asset::hashed("a", "js", "y").name
        );
    }

    #[test]
    fn only_hashed_names_count_as_hashed() {
        assert!(is_hashed(&Asset::hashed("app", "wasm", "x").name));
        for plain in [
            "index.html",
            "sw.js",
            "a-b.js",
            "app-0123456789abcdeg.js",
            "app",
        ] {
            assert!(!is_hashed(plain), "{plain}");
        }
    }
}

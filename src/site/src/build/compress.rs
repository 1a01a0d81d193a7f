//! Smaller copies of a file, made once so that every host can send them.

use std::io::Write;
use std::path::Path;

use anyhow::{Context, Result};
use flate2::Compression;
use flate2::write::GzEncoder;

/// A way to make a file smaller, and how its copies are called.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Coding {
    /// Brotli, the smaller one.
    Brotli,
    /// Gzip, which everything understands.
    Gzip,
}

impl Coding {
    /// Both codings, the smaller first.
    pub const ALL: [Self; 2] = [Self::Brotli, Self::Gzip];

    /// What the copies' names end with.
    pub fn extension(self) -> &'static str {
        match self {
            Self::Brotli => "br",
            Self::Gzip => "gz",
        }
    }

    /// Whether a file of this name is a copy in this coding.
    pub fn is_of(self, name: &str) -> bool {
        Path::new(name)
            .extension()
            .is_some_and(|extension| extension == self.extension())
    }

    /// What HTTP calls it.
    pub fn token(self) -> &'static str {
        match self {
            Self::Brotli => "br",
            Self::Gzip => "gzip",
        }
    }

    /// The smallest copy that the coding gives.
    ///
    /// # Errors
    /// When memory cannot be written, which does not happen in practice.
    pub fn encode(self, bytes: &[u8]) -> Result<Vec<u8>> {
        let encoded = match self {
            Self::Brotli => {
                let mut out = Vec::new();
                let parameters = brotli::enc::BrotliEncoderParams {
                    quality: 11,
                    lgwin: 22,
                    size_hint: bytes.len(),
                    ..Default::default()
                };
                brotli::BrotliCompress(&mut &*bytes, &mut out, &parameters).map(|_| out)
            }
            Self::Gzip => {
                let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
                encoder.write_all(bytes).and_then(|()| encoder.finish())
            }
        };
        encoded.context("A file could not be compressed.")
    }
}

#[cfg(test)]
mod tests {
    use std::io::Read;

    use super::Coding;

    #[test]
    fn copies_give_back_the_bytes() {
        let bytes = "tray set-up ".repeat(500).into_bytes();
        let mut back = Vec::new();
        let brotli = Coding::Brotli.encode(&bytes).unwrap();
        brotli::Decompressor::new(&*brotli, 4096)
            .read_to_end(&mut back)
            .unwrap();
        assert_eq!(back, bytes);
        back.clear();
        let gzip = Coding::Gzip.encode(&bytes).unwrap();
        flate2::read::GzDecoder::new(&*gzip)
            .read_to_end(&mut back)
            .unwrap();
        assert_eq!(back, bytes);
        assert!(brotli.len() < bytes.len() / 10 && gzip.len() < bytes.len() / 10);
    }
}

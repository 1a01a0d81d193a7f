//! A ZIP archive whose files are stored as they are: what learning systems
//! take in. Made the same from the same files: the time of every file is the
//! earliest that the form knows.

use crate::wire::{bytes::Writer, check};
use core::fmt;

/// A file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct File {
    /// Its path within the archive, parted by `/`.
    pub path: String,
    /// What is in it.
    pub bytes: Vec<u8>,
}

impl File {
    /// A file with a text.
    pub fn text(path: &str, text: String) -> Self {
        Self {
            path: path.into(),
            bytes: text.into_bytes(),
        }
    }
}

/// Why no archive was made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ZipError {
    /// There are more files, or they are larger, than the form has room for.
    TooLarge,
    /// A path is empty, leads out of the archive, or stands twice.
    Path(String),
}

impl fmt::Display for ZipError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooLarge => {
                f.write_str("The package would be larger than its form allows. Set fewer tasks.")
            }
            Self::Path(path) => write!(f, "The package cannot hold a file of this name: {path}"),
        }
    }
}

impl core::error::Error for ZipError {}

/// 1 January 1980, in the form's own count.
const DAY: u16 = 1 << 5 | 1;

/// Says that names are UTF-8.
const UTF8: u16 = 1 << 11;

/// The version that reading it takes: 2.0.
const NEEDS: u16 = 20;

/// Writes an archive.
///
/// # Errors
/// [`ZipError`].
pub fn write(files: &[File]) -> Result<Vec<u8>, ZipError> {
    let mut out = Little::default();
    let mut central = Little::default();
    for (place, file) in files.iter().enumerate() {
        let twice = files[..place].iter().any(|f| f.path == file.path);
        if twice || !within(&file.path) {
            return Err(ZipError::Path(file.path.clone()));
        }
        let at = four(out.0.0.len())?;
        let (size, sum) = (four(file.bytes.len())?, check::crc32(&file.bytes));
        let name = two(file.path.len())?;
        let fields = |to: &mut Little| {
            to.two(NEEDS)
                .two(UTF8)
                .two(0)
                .two(0)
                .two(DAY)
                .four(sum)
                .four(size)
                .four(size)
                .two(name)
                .two(0);
        };
        out.four(0x0403_4b50);
        fields(&mut out);
        out.0.raw(file.path.as_bytes()).raw(&file.bytes);
        central.four(0x0201_4b50).two(NEEDS);
        fields(&mut central);
        central.two(0).two(0).two(0).four(0).four(at);
        central.0.raw(file.path.as_bytes());
    }
    let (count, at, size) = (
        two(files.len())?,
        four(out.0.0.len())?,
        four(central.0.0.len())?,
    );
    out.0.raw(&central.0.0);
    out.four(0x0605_4b50)
        .two(0)
        .two(0)
        .two(count)
        .two(count)
        .four(size)
        .four(at)
        .two(0);
    Ok(out.0.0)
}

fn two(count: usize) -> Result<u16, ZipError> {
    u16::try_from(count).map_err(|_| ZipError::TooLarge)
}

fn four(count: usize) -> Result<u32, ZipError> {
    u32::try_from(count).map_err(|_| ZipError::TooLarge)
}

/// Whether a path stays within the archive.
fn within(path: &str) -> bool {
    !path.contains(['\\', ':']) && path.split('/').all(|part| !matches!(part, "" | "." | ".."))
}

/// Writes numbers with the low byte first.
#[derive(Default)]
struct Little(Writer);

impl Little {
    fn two(&mut self, value: u16) -> &mut Self {
        self.0.raw(&value.to_le_bytes());
        self
    }

    fn four(&mut self, value: u32) -> &mut Self {
        self.0.raw(&value.to_le_bytes());
        self
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn paths_that_lead_out_are_refused() {
        for path in ["", "/a", "../a", "a/../b", "a//b", "c:\\a"] {
            let file = File::text(path, String::new());
            assert_eq!(write(&[file]), Err(ZipError::Path(path.into())));
        }
        let twice = File::text("a", String::new());
        assert!(write(&[twice.clone(), twice]).is_err());
    }
}

//! Packs: what an instructor writes beside the built-in catalogue, in the same
//! schema, read by the same reader and held to the same checks.
//!
//! - [`Pack`]: a header and files, and what may be put into it
//! - [`limits`]: how large and how deep a pack may be
//! - [`place`]: where in a pack a file may stand
//! - `form`: the one file that it travels as, and reading it with suspicion
//! - [`over`]: packs laid over the built-in sources, checked as a whole
//! - [`provenance`]: what comes from which pack
//! - [`difference`]: what a pack changes, thing by thing and line by line
//! - [`copy`]: one thing of the built-in sources as the start of another

pub mod copy;
pub mod difference;
mod form;
pub mod limits;
pub mod over;
pub mod place;
pub mod provenance;

use crate::bank::Version;
use std::collections::BTreeMap;

pub use form::{read, too_large};

/// A file of a pack.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PackFile {
    /// What is in it.
    pub text: String,
    /// Whether it stands in place of the built-in file with the same path.
    pub replaces: bool,
}

/// A pack.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Pack {
    id: String,
    title: String,
    /// The version of its content, counted by whoever gives it out.
    pub version: u32,
    /// The bank that it was written against.
    pub bank: Version,
    files: BTreeMap<String, PackFile>,
}

impl Pack {
    /// A pack without files.
    ///
    /// # Errors
    /// A sentence that says what is wrong with the id or the title.
    pub fn new(id: &str, title: &str, bank: Version) -> Result<Self, String> {
        let mut pack = Self {
            id: id.to_owned(),
            version: 1,
            bank,
            ..Self::default()
        };
        limits::id(id)?;
        pack.rename(title)?;
        Ok(pack)
    }

    /// Its id: lower-case words joined by hyphens. It tells packs apart.
    pub fn id(&self) -> &str {
        &self.id
    }

    /// What it is called.
    pub fn title(&self) -> &str {
        &self.title
    }

    /// Gives it another title.
    ///
    /// # Errors
    /// A sentence that says what is wrong with the title.
    pub fn rename(&mut self, title: &str) -> Result<(), String> {
        let title = title.trim();
        limits::title(title)?;
        title.clone_into(&mut self.title);
        Ok(())
    }

    /// Its files, in the order of their paths.
    pub fn files(&self) -> impl Iterator<Item = (&str, &PackFile)> {
        self.files.iter().map(|(path, file)| (path.as_str(), file))
    }

    /// One of its files.
    pub fn file(&self, path: &str) -> Option<&PackFile> {
        self.files.get(path)
    }

    /// Puts a file into it, in place of the one with this path.
    ///
    /// # Errors
    /// A sentence that says why it cannot hold the file; the pack is as before.
    pub fn put(&mut self, path: &str, file: PackFile) -> Result<(), String> {
        place::Kind::of(path)?;
        limits::text(path, &file.text)?;
        if !self.files.contains_key(path) && self.files.len() >= limits::MOST_FILES {
            return Err(format!(
                "A pack holds at most {} files; “{path}” is one too many.",
                limits::MOST_FILES
            ));
        }
        let before = self.files.get(path).map_or(0, |file| file.text.len());
        if self.size() - before + file.text.len() > limits::MOST_TEXT {
            return Err(format!(
                "With “{path}” the texts of the pack come to more than {} kB, which is the most.",
                limits::MOST_TEXT / 1000
            ));
        }
        self.files.insert(path.to_owned(), file);
        Ok(())
    }

    /// Takes a file out of it.
    pub fn remove(&mut self, path: &str) {
        self.files.remove(path);
    }

    /// How many bytes all its texts come to.
    pub fn size(&self) -> usize {
        self.files.values().map(|file| file.text.len()).sum()
    }

    /// The checksum of all that it says.
    pub fn checksum(&self) -> u32 {
        self.sum(self.version)
    }

    /// The checksum of all that it says but its version: whether anything was
    /// written since a version was given out.
    pub fn content_checksum(&self) -> u32 {
        self.sum(0)
    }

    fn sum(&self, version: u32) -> u32 {
        let mut bytes = Vec::new();
        // Each text with its length before it, so that no two packs say the same bytes.
        let mut put = |text: &str| {
            bytes.extend((text.len() as u64).to_le_bytes());
            bytes.extend(text.as_bytes());
        };
        put(&self.id);
        put(&self.title);
        put(&version.to_string());
        put(&self.bank.0.to_string());
        for (path, file) in &self.files {
            put(path);
            put(if file.replaces { "replaces" } else { "adds" });
            put(&file.text);
        }
        crate::checksum(&bytes)
    }
}

/// The version of the bank that packs make of the built-in one: it changes with
/// every pack in use and with every word in one, and is the built-in one without any.
pub fn bank(built_in: Version, packs: impl IntoIterator<Item = u32>) -> Version {
    let mut sums: Vec<u32> = packs.into_iter().collect();
    if sums.is_empty() {
        return built_in;
    }
    sums.sort_unstable();
    let bytes: Vec<u8> = [built_in.0]
        .into_iter()
        .chain(sums)
        .flat_map(u32::to_le_bytes)
        .collect();
    Version(crate::checksum(&bytes))
}

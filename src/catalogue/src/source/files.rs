//! The source files of a catalogue in memory: a path for each text. The folder
//! `content/` is one way to fill it; a packed file and a pack are others.

use super::fault::Fault;
use std::{
    collections::{BTreeMap, BTreeSet},
    fs,
    path::Path,
};

/// The mark and version that a packed file of sources opens with.
const MARK: &[u8] = b"TWs1";

/// Source files by their path below `content/`, such as `rules/depth.toml`.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Files {
    texts: BTreeMap<String, String>,
    /// Those that were laid over the others and replace none of them.
    added: BTreeSet<String>,
}

impl Files {
    /// Takes in every TOML and Markdown file below a folder.
    ///
    /// # Errors
    /// Every file and folder that cannot be read.
    pub fn read_folder(content: &Path) -> Result<Self, Vec<Fault>> {
        let mut files = Self::default();
        let mut faults = Vec::new();
        files.walk(content, "", &mut faults);
        if faults.is_empty() {
            Ok(files)
        } else {
            faults.sort();
            Err(faults)
        }
    }

    fn walk(&mut self, folder: &Path, below: &str, faults: &mut Vec<Fault>) {
        let mut failed = |name: &str, message: String| {
            faults.push(Fault {
                file: shown(name),
                line: 1,
                column: 1,
                message,
            });
        };
        let entries = match fs::read_dir(folder) {
            Ok(entries) => entries,
            Err(error) => {
                let message = format!("the folder cannot be read ({error}); it has to be there");
                return failed(below.trim_end_matches('/'), message);
            }
        };
        let mut folders = Vec::new();
        for path in entries.filter_map(|entry| Some(entry.ok()?.path())) {
            let last = path.file_name().unwrap_or_default().to_string_lossy();
            let name = format!("{below}{last}");
            if path.is_dir() {
                folders.push((path, format!("{name}/")));
            } else if path.extension().is_some_and(|e| e == "toml" || e == "md") {
                match fs::read_to_string(&path) {
                    Ok(text) => {
                        self.texts.insert(name, text);
                    }
                    Err(error) => {
                        let message = format!(
                            "cannot be read ({error}); the file has to be there, as UTF-8 text"
                        );
                        failed(&name, message);
                    }
                }
            }
        }
        for (path, below) in folders {
            self.walk(&path, &below, faults);
        }
    }

    /// The text of a file.
    pub fn get(&self, path: &str) -> Option<&str> {
        self.texts.get(path).map(String::as_str)
    }

    /// The path and the text of a file.
    pub(super) fn entry(&self, path: &str) -> Option<(&str, &str)> {
        let (path, text) = self.texts.get_key_value(path)?;
        Some((path, text))
    }

    /// Puts a text in place of what a file held.
    pub fn put(&mut self, path: &str, text: &str) {
        self.texts.insert(path.to_owned(), text.to_owned());
    }

    /// Every file, in the order of their paths.
    pub fn iter(&self) -> impl Iterator<Item = (&str, &str)> {
        self.texts
            .iter()
            .map(|(path, text)| (path.as_str(), text.as_str()))
    }

    /// Lays a file over the others. Where it replaces one it is read in its
    /// place; where not, after all that were there before, so that what it
    /// repeats is told of it and not of them.
    pub fn lay(&mut self, path: &str, text: &str) {
        if !self.texts.contains_key(path) {
            self.added.insert(path.to_owned());
        }
        self.put(path, text);
    }

    /// The files straight in a folder with an extension, in the order in which
    /// they are read.
    pub(super) fn within<'f>(&'f self, folder: &str, extension: &str) -> Vec<&'f str> {
        let straight = |path: &&str| {
            let name = path
                .strip_prefix(folder)
                .and_then(|it| it.strip_prefix('/'));
            let name = name.filter(|name| !name.contains('/'));
            name.and_then(|name| name.strip_suffix(extension)).is_some()
        };
        let paths = self.texts.keys().map(String::as_str);
        let mut found: Vec<&str> = paths.filter(straight).collect();
        found.sort_by_key(|path| self.added.contains(*path));
        found
    }

    /// The folders straight below a folder by name, in the order in which they
    /// are read.
    pub(super) fn folders<'f>(&'f self, folder: &str) -> Vec<&'f str> {
        let below = self.texts.keys().filter_map(|path| {
            let rest = path.strip_prefix(folder)?.strip_prefix('/')?;
            Some((self.added.contains(path), rest.split_once('/')?.0))
        });
        // A folder that was there stays in its place whatever is added to it.
        let mut first: BTreeMap<&str, bool> = BTreeMap::new();
        for (added, name) in below {
            let known = first.entry(name).or_insert(added);
            *known &= added;
        }
        let mut all: Vec<(bool, &str)> = first.into_iter().map(|(n, a)| (a, n)).collect();
        all.sort_unstable();
        all.into_iter().map(|(_, name)| name).collect()
    }

    /// Packs the files for the page.
    pub fn pack(&self) -> Vec<u8> {
        // Writing to memory cannot fail: texts have a known length.
        postcard::to_extend(&self.texts, MARK.to_vec()).unwrap_or_default()
    }

    /// Unpacks what [`Files::pack`] wrote.
    ///
    /// # Errors
    /// A sentence for the reader of the page, if the bytes are not packed
    /// sources of this version or are damaged.
    pub fn unpack(bytes: &[u8]) -> Result<Self, String> {
        let body = bytes.strip_prefix(MARK).ok_or(
            "The file of sources is not the one this page was built with. Reload the page.",
        )?;
        let texts = postcard::from_bytes(body)
            .map_err(|_| "The file of sources is damaged. Reload the page to fetch it again.")?;
        Ok(Self {
            texts,
            added: BTreeSet::new(),
        })
    }
}

/// A path as it is shown: from the folder named `content` on.
pub(super) fn shown(path: &str) -> String {
    if path.is_empty() {
        "content".into()
    } else {
        format!("content/{path}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_come_back_from_the_pack_and_damage_is_told() {
        let mut files = Files::default();
        files.put("rules/a.toml", "x = 1\n");
        files.put("procedures/b/lesson.md", "# B\n");
        let packed = files.pack();
        assert_eq!(Files::unpack(&packed), Ok(files));
        assert!(Files::unpack(b"TWs0").is_err());
        assert!(Files::unpack(&packed[..packed.len() - 1]).is_err());
    }

    #[test]
    fn files_are_found_by_their_folder() {
        let mut files = Files::default();
        for path in [
            "rules/b.toml",
            "rules/a.toml",
            "rules/a.md",
            "rules/c/d.toml",
            "rules.toml",
        ] {
            files.put(path, "");
        }
        let found = files.within("rules", ".toml");
        assert_eq!(found, ["rules/a.toml", "rules/b.toml"]);
        assert_eq!(files.folders("rules"), ["c"]);
        files.lay("rules/a.toml", "other");
        files.lay("rules/0.toml", "");
        files.lay("rules/0/d.toml", "");
        let found = files.within("rules", ".toml");
        assert_eq!(found, ["rules/a.toml", "rules/b.toml", "rules/0.toml"]);
        assert_eq!(files.folders("rules"), ["c", "0"]);
        assert_eq!(files.get("rules/a.toml"), Some("other"));
    }
}

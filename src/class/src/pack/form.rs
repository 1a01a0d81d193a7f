//! The one file that a pack travels as: JSON with the version of its form, the
//! header, the files and a checksum. It may come from anywhere, so nothing of it
//! is taken before all of it was looked at.

use super::{
    Pack, PackFile,
    limits::{MOST_BYTES, MOST_FILES, shown},
};
use crate::bank::Version;
use serde::{Deserialize, Serialize};

/// What every such file says it is.
const FORMAT: &str = "trayward-pack";

/// The version of the form that is written, and the newest that is read.
const FORM: u32 = 1;

/// What the file holds. The order is the order in which it is written.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Whole {
    format: String,
    form: u32,
    id: String,
    title: String,
    version: u32,
    bank: String,
    files: Vec<One>,
    checksum: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct One {
    path: String,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    replaces: bool,
    text: String,
}

/// What has to be known before anything else, whatever a newer form holds besides.
#[derive(Deserialize)]
struct Head {
    format: Option<String>,
    form: Option<u32>,
}

impl Pack {
    /// The one file that the pack travels as.
    pub fn write(&self) -> String {
        let files = self.files().map(|(path, file)| One {
            path: path.to_owned(),
            replaces: file.replaces,
            text: file.text.clone(),
        });
        let whole = Whole {
            format: FORMAT.to_owned(),
            form: FORM,
            id: self.id.clone(),
            title: self.title.clone(),
            version: self.version,
            bank: format!("{:08x}", self.bank.0),
            files: files.collect(),
            checksum: format!("{:08x}", self.checksum()),
        };
        // Texts and numbers always have a form in JSON.
        let mut text = serde_json::to_string_pretty(&whole).unwrap_or_default();
        text.push('\n');
        text
    }
}

/// Reads the file that a pack travels as.
///
/// # Errors
/// Sentences that say everything that stands against it. Nothing of a refused
/// pack is taken.
pub fn read(bytes: &[u8]) -> Result<Pack, Vec<String>> {
    if bytes.len() > MOST_BYTES {
        return Err(vec![too_large(bytes.len())]);
    }
    let text = std::str::from_utf8(bytes).map_err(|error| {
        vec![format!(
            "The file is no text: byte {} does not belong in one. Choose the file that the pack was saved as.",
            error.valid_up_to() + 1
        )]
    })?;
    let text = text.trim_start_matches('\u{feff}');
    let head: Head = serde_json::from_str(text).map_err(|error| vec![unreadable(&error)])?;
    if head.format.as_deref() != Some(FORMAT) {
        return Err(vec![
            "The file is not a pack of this page. Choose the file that a pack was saved as.".into(),
        ]);
    }
    if head.form.is_some_and(|form| form > FORM) {
        return Err(vec![
            "The pack was written by a newer version of this page. Reload the page to get the newest version, then open it again.".into(),
        ]);
    }
    let whole: Whole = serde_json::from_str(text).map_err(|error| vec![unreadable(&error)])?;
    take(whole)
}

/// What is said of a file that is too large to be read at all.
pub fn too_large(bytes: usize) -> String {
    format!(
        "The file has {} kB; a pack has {} kB at most. Nothing of it was read.",
        bytes.div_ceil(1024),
        MOST_BYTES / 1024
    )
}

fn unreadable(error: &serde_json::Error) -> String {
    let what = error.to_string();
    let what = what.split(" at line ").next().unwrap_or_default();
    format!(
        "The file cannot be read as a pack at line {}, column {}: {}. Choose the file that the pack was saved as, the whole of it.",
        error.line(),
        error.column(),
        shown(what)
    )
}

fn take(whole: Whole) -> Result<Pack, Vec<String>> {
    let mut faults = Vec::new();
    let bank = u32::from_str_radix(&whole.bank, 16).unwrap_or_else(|_| {
        faults.push(format!(
            "The pack says “{}” for the lessons it was written against, which is no such number.",
            shown(&whole.bank)
        ));
        0
    });
    let mut pack = match Pack::new(&whole.id, &whole.title, Version(bank)) {
        Ok(pack) => pack,
        Err(fault) => {
            faults.push(fault);
            return Err(faults);
        }
    };
    pack.version = whole.version.max(1);
    if whole.files.len() > MOST_FILES {
        faults.push(format!(
            "The pack holds {} files; {MOST_FILES} are the most.",
            whole.files.len()
        ));
        return Err(faults);
    }
    for One {
        path,
        replaces,
        text,
    } in whole.files
    {
        if pack.file(&path).is_some() {
            faults.push(format!("“{}” stands twice in the pack.", shown(&path)));
            continue;
        }
        if let Err(fault) = pack.put(&path, PackFile { text, replaces }) {
            faults.push(fault);
        }
    }
    if faults.is_empty() && whole.checksum != format!("{:08x}", pack.checksum()) {
        faults.push(
            "The pack is damaged: its checksum does not go with what is written. Get the file again; a pack is changed in the page, not in its file.".into(),
        );
    }
    if faults.is_empty() {
        Ok(pack)
    } else {
        Err(faults)
    }
}

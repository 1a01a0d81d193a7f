//! What is taught, read from content/, proved to hold, and packed for the page.

use std::path::Path;
use std::rc::Rc;

use anyhow::{Result, anyhow};
use catalogue::{
    Catalogue,
    source::{Files, read_files},
};
use clinic::Clinic;

use crate::complete;
use crate::repo::Repo;

/// Content without a fault.
pub struct Content {
    catalogue: Rc<Catalogue>,
    files: Files,
}

/// How far a proof over every patient that can be has gone.
pub struct Proof {
    /// How many combinations of findings it stands for.
    pub combinations: u128,
    /// How many patients had to be run for that.
    pub run: u64,
}

impl Content {
    /// Reads content/.
    ///
    /// # Errors
    /// Every fault of the files, one a line.
    pub fn read(repo: &Repo) -> Result<Self> {
        Self::read_folder(&repo.path("content"))
    }

    fn read_folder(folder: &Path) -> Result<Self> {
        let files = Files::read_folder(folder).map_err(|faults| faulty(&faults))?;
        let read = read_files(&files).map_err(|faults| faulty(&faults))?;
        Ok(Self {
            catalogue: Rc::new(read.catalogue),
            files,
        })
    }

    /// How much there is of each kind.
    pub fn counts(&self) -> Vec<(&'static str, usize)> {
        self.catalogue.counts()
    }

    /// Whether there is enough of each kind, nothing out of use and nothing typed twice.
    ///
    /// # Errors
    /// Everything that is missing, orphaned or retyped, one a line.
    pub fn complete(&self) -> Result<()> {
        match complete::faults(&self.catalogue) {
            faults if faults.is_empty() => Ok(()),
            faults => Err(faulty(&faults)),
        }
    }

    /// Runs every patient that can be through the rules.
    ///
    /// # Errors
    /// Every contradiction and gap, one a line, each with a patient who shows it.
    pub fn prove(&self) -> Result<Proof> {
        let report = Clinic::new(Rc::clone(&self.catalogue)).prove();
        if report.faults.is_empty() {
            Ok(Proof {
                combinations: report.combinations,
                run: report.run,
            })
        } else {
            Err(faulty(&report.faults))
        }
    }

    /// The file that the page fetches.
    pub fn pack(&self) -> Vec<u8> {
        catalogue::pack(&self.catalogue)
    }

    /// The file of sources, which the page fetches where packs are written or used.
    pub fn sources(&self) -> Vec<u8> {
        self.files.pack()
    }

    /// The file that the page fetches first: what there is, by name.
    pub fn outline(&self) -> Vec<u8> {
        catalogue::pack_outline(&self.catalogue)
    }
}

fn faulty(faults: &[impl ToString]) -> anyhow::Error {
    let lines: Vec<String> = faults.iter().map(ToString::to_string).collect();
    let count = match lines.len() {
        1 => "one fault".to_owned(),
        many => format!("{many} faults"),
    };
    let lines = lines.join("\n");
    anyhow!("{lines}\nThe content has {count}; nothing is built from it.")
}

#[cfg(test)]
mod tests {
    use super::{Content, faulty};

    #[test]
    fn every_fault_is_told_and_counted() {
        let told = faulty(&["content/a.toml:1:2: wrong", "content/b.toml:3:4: wrong"]).to_string();
        assert!(told.starts_with("content/a.toml:1:2: wrong\ncontent/b.toml:3:4: wrong\n"));
        assert!(told.contains("2 faults"));
        assert!(faulty(&["x"]).to_string().contains("one fault"));
    }

    #[test]
    fn a_folder_without_content_is_a_fault() {
        let folder = tempfile::tempdir().unwrap();
        assert!(Content::read_folder(folder.path()).is_err());
    }
}

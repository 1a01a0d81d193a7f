//! Where things are in the repository.

use std::path::{Path, PathBuf};

use anyhow::{Context, Result};

/// The repository that the tool works on.
#[derive(Debug, Clone)]
pub struct Repo {
    root: PathBuf,
    target: PathBuf,
}

impl Repo {
    /// Finds the repository that holds the current folder, or else the one
    /// that the tool was built from.
    ///
    /// # Errors
    /// When neither is there any more.
    pub fn find() -> Result<Self> {
        let here = std::env::current_dir().context("The current folder cannot be read.")?;
        let built_from = Path::new(env!("CARGO_MANIFEST_DIR"));
        let root = here
            .ancestors()
            .chain(built_from.ancestors())
            .find(|folder| folder.join("src/site").is_dir() && folder.join("index.html").is_file())
            .context("This is not inside the Trayward repository. Change into its folder first.")?
            .to_path_buf();
        let target = match std::env::var_os("CARGO_TARGET_DIR") {
            Some(folder) => here.join(folder),
            None => root.join("target"),
        };
        Ok(Self { root, target })
    }

    /// The folder that everything else is in.
    pub fn root(&self) -> &Path {
        &self.root
    }

    /// A path given from the root.
    pub fn path(&self, below: &str) -> PathBuf {
        self.root.join(below)
    }

    /// What is built for this computer.
    pub fn target(&self) -> &Path {
        &self.target
    }

    /// What is built for the page. A folder of its own, since another compiler
    /// may have to build it.
    pub fn wasm_target(&self) -> PathBuf {
        self.target.join("wasm")
    }

    /// Tools that the project fetches for itself.
    pub fn tools(&self) -> PathBuf {
        self.target.join("tools")
    }

    /// The finished page.
    pub fn dist(&self) -> PathBuf {
        self.root.join("dist")
    }

    /// The page as built while it is being written.
    pub fn dev_dist(&self) -> PathBuf {
        self.target.join("site-dev")
    }
}

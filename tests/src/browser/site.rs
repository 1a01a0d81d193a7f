//! The site as a host would serve it, and what may go wrong with a host.

use std::fs;
use std::path::PathBuf;
use std::process::Command;

use anyhow::{Context, Result, bail};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};
use tempfile::TempDir;

use super::process::{Program, free_port};
use super::settings;

/// A file of the page that a host may lose or damage.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Piece {
    /// The program.
    Wasm,
    /// What there is, by name.
    Outline,
    /// All that is taught.
    Catalogue,
    /// What brings both together.
    Loader,
    /// All styles.
    Style,
}

impl Piece {
    fn belongs(self, name: &str) -> bool {
        let (stem, extension) = match self {
            Self::Wasm => ("app-", ".wasm"),
            Self::Outline => ("outline-", ".bin"),
            Self::Catalogue => ("catalogue-", ".bin"),
            Self::Loader => ("loader-", ".js"),
            Self::Style => ("style-", ".css"),
        };
        name.starts_with(stem) && name.ends_with(extension)
    }
}

/// A copy of the built page, served on a port of its own.
#[derive(Debug)]
pub struct Site {
    server: Option<Program>,
    folder: TempDir,
    port: u16,
    under: String,
}

impl Site {
    /// Serves a fresh copy of the built page.
    ///
    /// # Errors
    /// When there is no built page or its server cannot start.
    pub async fn serve() -> Result<Self> {
        Self::serve_under("/").await
    }

    /// Serves a fresh copy below a path such as `/school/trayward/`.
    ///
    /// # Errors
    /// When there is no built page or its server cannot start.
    pub async fn serve_under(under: &str) -> Result<Self> {
        let folder = tempfile::tempdir().context("No folder can be made for the page.")?;
        let built = settings::path("TRAYWARD_DIST")?;
        for entry in fs::read_dir(&built).context("There is no built page.")? {
            let entry = entry?;
            fs::copy(entry.path(), folder.path().join(entry.file_name()))?;
        }
        let port = free_port()?;
        let mut site = Self {
            server: None,
            folder,
            port,
            under: under.into(),
        };
        site.start().await?;
        Ok(site)
    }

    /// The address of a place in the page, given by its fragment.
    pub fn url(&self, fragment: &str) -> String {
        format!("http://127.0.0.1:{}{}{fragment}", self.port, self.under)
    }

    /// Ends the server, so that nothing answers at the address.
    pub fn end(&mut self) {
        self.server = None;
    }

    /// Starts the server again at the same address.
    ///
    /// # Errors
    /// When the port has been taken in the meantime.
    pub async fn start(&mut self) -> Result<()> {
        let port = self.port.to_string();
        let mut command = Command::new(settings::path("TRAYWARD_SITE")?);
        command
            .args([
                "serve",
                "--as-built",
                "--port",
                &port,
                "--under",
                &self.under,
                "--out",
            ])
            .arg(self.folder.path());
        self.server = Some(Program::listening(&mut command, self.port).await?);
        Ok(())
    }

    /// The host loses a file.
    ///
    /// # Errors
    /// When the file is not there.
    pub fn lose(&self, piece: Piece) -> Result<()> {
        self.remove(&self.name(piece)?)
    }

    /// The host is given a file more, beside those of the page.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn lay(&self, name: &str, bytes: &[u8]) -> Result<()> {
        let path = self.path(name);
        if let Some(folder) = path.parent() {
            fs::create_dir_all(folder)?;
        }
        Ok(fs::write(path, bytes)?)
    }

    /// The host serves only the first half of a file.
    ///
    /// # Errors
    /// When the file is not there.
    pub fn cut_short(&self, piece: Piece) -> Result<()> {
        let name = self.name(piece)?;
        let bytes = fs::read(self.path(&name))?;
        self.replace(&name, &bytes[..bytes.len() / 2])
    }

    /// The host is given a new build: a page with another style, under another
    /// name, and the worker that goes with it. The old style is gone.
    ///
    /// # Errors
    /// When the page is not as this expects it.
    pub fn publish_new_build(&self) -> Result<()> {
        let old_style = self.name(Piece::Style)?;
        let mut css = fs::read(self.path(&old_style))?;
        let old_digest = integrity(&css);
        css.extend(b"/* another build */");
        let (new_style, new_digest) = (format!("style-{}.css", digits(&css)), integrity(&css));
        self.remove(&old_style)?;
        self.replace(&new_style, &css)?;

        let with_new_style = |text: &str| {
            text.replace(&old_style, &new_style)
                .replace(&old_digest, &new_digest)
        };
        let old_page = fs::read_to_string(self.path("index.html"))?;
        let new_page = with_new_style(&old_page);
        let old_worker = fs::read_to_string(self.path("sw.js"))?;
        let (_, build) = old_worker
            .split_once("BUILD = \"")
            .context("sw.js names no build.")?;
        let build = build.split('"').next().unwrap_or_default();
        let new_worker = with_new_style(&old_worker)
            .replace(
                &integrity(old_page.as_bytes()),
                &integrity(new_page.as_bytes()),
            )
            .replace(build, &digits(new_page.as_bytes()));
        if new_page == old_page || new_worker == old_worker {
            bail!("The new build is no different from the old one.");
        }
        self.replace("index.html", new_page.as_bytes())?;
        self.replace("sw.js", new_worker.as_bytes())
    }

    /// The name of a file on the host.
    ///
    /// # Errors
    /// When the host does not have it.
    pub fn name(&self, piece: Piece) -> Result<String> {
        fs::read_dir(self.folder.path())?
            .filter_map(|entry| entry.ok()?.file_name().into_string().ok())
            .find(|name| piece.belongs(name))
            .with_context(|| format!("The page has no file for its {piece:?}."))
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn remove(&self, name: &str) -> Result<()> {
        for ending in ["", ".br", ".gz"] {
            let path = self.path(&format!("{name}{ending}"));
            if path.exists() {
                fs::remove_file(path)?;
            }
        }
        Ok(())
    }

    fn replace(&self, name: &str, bytes: &[u8]) -> Result<()> {
        self.remove(name)?;
        Ok(fs::write(self.path(name), bytes)?)
    }
}

fn integrity(bytes: &[u8]) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(bytes)))
}

fn digits(bytes: &[u8]) -> String {
    format!("{:x}", Sha256::digest(bytes))[..16].to_owned()
}

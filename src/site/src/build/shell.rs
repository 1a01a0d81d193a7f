//! The shell: index.html, which paints before any script arrives, and the
//! loader that brings the program into it.

use std::fs;

use anyhow::{Context, Result, bail};

use super::names::Asset;
use super::template::fill;
use crate::repo::Repo;

/// What the browser may load and run: only our own files, and no code made
/// from text. Compiling WebAssembly has to be allowed by name.
pub const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; \
    style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; \
    manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'";

/// The files that the shell names, and those that come later.
pub struct Parts {
    /// All styles.
    pub style: Asset,
    /// The loader.
    pub loader: Asset,
    /// The JavaScript side of the program.
    pub glue: Asset,
    /// What loads the later parts of the program.
    pub link: Asset,
    /// The program, as far as the first screen needs it.
    pub wasm: Asset,
    /// The packed outline of the catalogue.
    pub outline: Asset,
    /// The packed catalogue.
    pub catalogue: Asset,
    /// The packed sources of the catalogue.
    pub sources: Asset,
    /// The later parts of the program.
    pub later: Vec<Asset>,
    /// The icon.
    pub icon: Asset,
    /// What the phone shows when the page is put on its home screen.
    pub manifest: Asset,
}

impl Parts {
    /// Every part, in the order in which the browser asks for them.
    pub fn each(&self) -> Vec<&Asset> {
        let first = [
            &self.style,
            &self.loader,
            &self.glue,
            &self.link,
            &self.wasm,
            &self.outline,
            &self.catalogue,
            &self.sources,
        ];
        let last = [&self.icon, &self.manifest];
        first.into_iter().chain(&self.later).chain(last).collect()
    }
}

/// A file of src/app/glue/.
///
/// # Errors
/// When it cannot be read.
pub fn glue_file(repo: &Repo, name: &str) -> Result<String> {
    read(repo, &format!("src/app/glue/{name}"))
}

/// The files that the loader fetches.
pub struct Fetched<'a> {
    /// The JavaScript side of the program.
    pub glue: &'a Asset,
    /// The program.
    pub wasm: &'a Asset,
    /// The packed outline of the catalogue.
    pub outline: &'a Asset,
    /// The packed catalogue.
    pub catalogue: &'a Asset,
    /// The packed sources of the catalogue.
    pub sources: &'a Asset,
}

/// The loader, which knows where the program and the catalogue are.
///
/// # Errors
/// When it cannot be read or has lost a gap.
pub fn loader(repo: &Repo, fetched: &Fetched) -> Result<Asset> {
    let text = fill(
        "src/app/glue/loader.js",
        &glue_file(repo, "loader.js")?,
        &[
            ("__GLUE__", &fetched.glue.name),
            ("__WASM__", &fetched.wasm.name),
            ("__OUTLINE__", &fetched.outline.name),
            ("__CATALOGUE__", &fetched.catalogue.name),
            ("__SOURCES__", &fetched.sources.name),
        ],
    )?;
    Ok(Asset::hashed("loader", "js", text))
}

/// The manifest, which knows where the icon is.
///
/// # Errors
/// When it cannot be read or has lost a gap.
pub fn manifest(repo: &Repo, icon: &Asset) -> Result<Asset> {
    let name = "manifest.webmanifest";
    let text = fill(name, &glue_file(repo, name)?, &[("__ICON__", &icon.name)])?;
    Ok(Asset::hashed("manifest", "webmanifest", text))
}

/// The page itself.
///
/// # Errors
/// When index.html cannot be read, or a gap in it is lost or unknown.
pub fn page(repo: &Repo, parts: &Parts) -> Result<Asset> {
    let Parts {
        style,
        loader,
        glue,
        link,
        wasm,
        outline,
        icon,
        manifest,
        ..
    } = parts;
    let text = fill(
        "index.html",
        &read(repo, "index.html")?,
        &[
            ("{{ policy }}", POLICY),
            ("{{ style.name }}", &style.name),
            ("{{ style.integrity }}", &style.integrity),
            ("{{ loader.name }}", &loader.name),
            ("{{ loader.integrity }}", &loader.integrity),
            ("{{ glue.name }}", &glue.name),
            ("{{ glue.integrity }}", &glue.integrity),
            ("{{ link.name }}", &link.name),
            ("{{ link.integrity }}", &link.integrity),
            ("{{ wasm.name }}", &wasm.name),
            ("{{ outline.name }}", &outline.name),
            ("{{ icon.name }}", &icon.name),
            ("{{ manifest.name }}", &manifest.name),
        ],
    )?;
    if let Some((_, rest)) = text.split_once("{{") {
        let gap = rest.split("}}").next().unwrap_or_default().trim();
        bail!("index.html: nothing is known to put in the gap “{gap}”.");
    }
    Ok(Asset::named("index.html", text))
}

fn read(repo: &Repo, name: &str) -> Result<String> {
    fs::read_to_string(repo.path(name)).with_context(|| format!("{name} cannot be read."))
}

#[cfg(test)]
mod tests {
    use super::POLICY;

    #[test]
    fn the_policy_allows_nothing_loose() {
        for loose in ["'unsafe-inline'", "'unsafe-eval'", "*", "http:", "https:"] {
            assert!(
                !POLICY.split([' ', ';']).any(|word| word == loose),
                "{loose}"
            );
        }
    }
}

//! Builds the page into a folder that any host can serve, below any path.
//!
//! Everything is made in memory first, each file named by its final bytes, so
//! a fault leaves the last good folder as it was.

pub mod compress;
pub mod names;
mod parts;
mod shelf;
pub mod shell;
mod style;
mod template;
mod wasm;
mod worker;

use std::fs;
use std::path::{Path, PathBuf};
use std::thread;
use std::time::{Duration, Instant};

use anyhow::{Context, Result, anyhow};

use crate::bench::sizes;
use crate::content::Content;
use crate::options::Options;
use crate::repo::Repo;
use compress::Coding;
use names::Asset;
use shell::{Fetched, Parts};

/// What the page is built for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mode {
    /// For readers: smallest bytes, kept for offline use.
    Finished,
    /// For writing the page: quick to build, never kept.
    Dev,
}

/// A page that has been written.
pub struct Built {
    /// The folder it is in.
    pub folder: PathBuf,
    mode: Mode,
    took: Duration,
    first_visit: Option<u64>,
}

impl Built {
    /// Says what was built, for a person.
    pub fn report(&self) {
        let seconds = self.took.as_secs_f32();
        println!("Built {} in {seconds:.1} s.", self.folder.display());
        if let Some(bytes) = self.first_visit {
            println!(
                "A first visit fetches {} kB (brotli).",
                bytes.div_ceil(1000)
            );
        }
        if self.mode == Mode::Dev {
            println!(
                "This build is for writing the page; `cargo site build` makes the finished one."
            );
        }
    }
}

/// Builds what the options ask for.
///
/// # Errors
/// The first thing that stands in the way.
pub fn build(repo: &Repo, options: &Options) -> Result<Built> {
    let (mode, usual) = if options.dev {
        (Mode::Dev, repo.dev_dist())
    } else {
        (Mode::Finished, repo.dist())
    };
    into_folder(repo, mode, options.out.as_deref().unwrap_or(&usual))
}

/// Builds the page into one folder.
///
/// # Errors
/// The first thing that stands in the way.
pub fn into_folder(repo: &Repo, mode: Mode, folder: &Path) -> Result<Built> {
    let begun = Instant::now();
    // Content first: its faults show in a second, the compiler's in a minute.
    let content = Content::read(repo)?;
    if mode == Mode::Finished {
        content.prove()?;
    }
    let program = wasm::compile(repo, mode)?;
    let assets = assemble(repo, mode, &content, program)?;
    let first_visit = match mode {
        Mode::Finished => {
            write_compressed(folder, &assets)?;
            Some(sizes::first_visit(&sizes::measure(folder)?))
        }
        Mode::Dev => {
            write(folder, &assets)?;
            None
        }
    };
    Ok(Built {
        folder: folder.to_path_buf(),
        mode,
        took: begun.elapsed(),
        first_visit,
    })
}

fn assemble(
    repo: &Repo,
    mode: Mode,
    content: &Content,
    program: wasm::Program,
) -> Result<Vec<Asset>> {
    let wasm = Asset::hashed("app", "wasm", program.wasm.clone());
    let linked = parts::link(program, &shell::glue_file(repo, "parts.js")?)?;
    let outline = Asset::hashed("outline", "bin", content.outline());
    let catalogue = Asset::hashed("catalogue", "bin", content.pack());
    let sources = Asset::hashed("sources", "bin", content.sources());
    let icon = Asset::hashed("icon", "svg", shell::glue_file(repo, "icon.svg")?);
    let fetched = Fetched {
        glue: &linked.glue,
        wasm: &wasm,
        outline: &outline,
        catalogue: &catalogue,
        sources: &sources,
    };
    let parts = Parts {
        style: Asset::hashed("style", "css", style::gather(repo)?),
        loader: shell::loader(repo, &fetched)?,
        manifest: shell::manifest(repo, &icon)?,
        glue: linked.glue,
        link: linked.link,
        wasm,
        outline,
        catalogue,
        sources,
        later: linked.parts,
        icon,
    };
    let page = shell::page(repo, &parts)?;
    let worker = match mode {
        Mode::Finished => worker::keeping(repo, &page, &parts.each())?,
        Mode::Dev => worker::retiring(repo)?,
    };
    let mut assets = vec![page, worker];
    assets.extend(parts.each().into_iter().cloned());
    Ok(assets)
}

fn write(folder: &Path, assets: &[Asset]) -> Result<()> {
    clear(folder)?;
    for asset in assets {
        write_file(&folder.join(&asset.name), &asset.bytes)?;
    }
    Ok(())
}

/// Writes every file with its smaller copies.
fn write_compressed(folder: &Path, assets: &[Asset]) -> Result<()> {
    let copies = thread::scope(|scope| {
        let workers: Vec<_> = assets
            .iter()
            .map(|asset| {
                scope.spawn(move || -> Result<_> {
                    let copy = |coding: Coding| coding.encode(&asset.bytes);
                    Ok((asset, copy(Coding::Brotli)?, copy(Coding::Gzip)?))
                })
            })
            .collect();
        workers
            .into_iter()
            .map(|worker| {
                worker
                    .join()
                    .unwrap_or_else(|_| Err(anyhow!("A file could not be compressed.")))
            })
            .collect::<Result<Vec<_>>>()
    })?;
    write(folder, assets)?;
    for (asset, brotli, gzip) in copies {
        for (coding, bytes) in [(Coding::Brotli, brotli), (Coding::Gzip, gzip)] {
            let name = format!("{}.{}", asset.name, coding.extension());
            write_file(&folder.join(name), &bytes)?;
        }
    }
    Ok(())
}

/// The folder beside the page that links to packs lead into.
const PACKS: &str = "packs";

/// Empties the folder of an earlier build, and refuses to empty any other.
fn clear(folder: &Path) -> Result<()> {
    fs::create_dir_all(folder)
        .with_context(|| format!("The folder {} cannot be made.", folder.display()))?;
    let entries: Vec<PathBuf> = fs::read_dir(folder)
        .with_context(|| format!("The folder {} cannot be read.", folder.display()))?
        .filter_map(|entry| Some(entry.ok()?.path()))
        .collect();
    if !entries.is_empty() && !folder.join("sw.js").is_file() {
        anyhow::bail!(
            "The folder {} holds something other than an earlier build, so it is left alone. \
             Name an empty folder with --out.",
            folder.display()
        );
    }
    // Packs that were laid beside the page are not the build's to remove.
    let own = |entry: &PathBuf| !(entry.is_dir() && entry.ends_with(PACKS));
    for entry in entries.into_iter().filter(own) {
        fs::remove_file(&entry)
            .with_context(|| format!("{} cannot be removed.", entry.display()))?;
    }
    Ok(())
}

fn write_file(path: &Path, bytes: &[u8]) -> Result<()> {
    fs::write(path, bytes).with_context(|| format!("{} cannot be written.", path.display()))
}

#[cfg(test)]
mod tests {
    use super::names::Asset;
    use super::{clear, write_compressed};

    #[test]
    fn each_file_gets_its_smaller_copies() {
        let folder = tempfile::tempdir().unwrap();
        let assets = [Asset::named("sw.js", "x".repeat(2000))];
        write_compressed(folder.path(), &assets).unwrap();
        let size = |name: &str| folder.path().join(name).metadata().unwrap().len();
        assert_eq!(size("sw.js"), 2000);
        assert!(size("sw.js.br") < 100);
        assert!(size("sw.js.gz") < 100);
    }

    #[test]
    fn a_folder_of_something_else_is_left_alone() {
        let folder = tempfile::tempdir().unwrap();
        let letter = folder.path().join("letter.txt");
        std::fs::write(&letter, "dear").unwrap();
        assert!(clear(folder.path()).is_err());
        assert!(letter.exists());
    }

    #[test]
    fn packs_beside_the_page_stay_where_they_are() {
        let folder = tempfile::tempdir().unwrap();
        let pack = folder.path().join("packs/ours.json");
        std::fs::create_dir(folder.path().join("packs")).unwrap();
        std::fs::write(&pack, "{}").unwrap();
        std::fs::write(folder.path().join("sw.js"), "x").unwrap();
        clear(folder.path()).unwrap();
        assert!(pack.exists() && !folder.path().join("sw.js").exists());
    }
}

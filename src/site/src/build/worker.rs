//! The service worker, with the list of files that make up one build.

use anyhow::Result;

use super::names::{Asset, digest};
use super::shell::glue_file;
use super::template::fill;
use crate::repo::Repo;

/// The name must not change: a browser that knows an older build asks for it.
const NAME: &str = "sw.js";

/// The worker that keeps this build for offline use.
///
/// # Errors
/// When its file cannot be read or has lost a gap.
pub fn keeping(repo: &Repo, page: &Asset, parts: &[&Asset]) -> Result<Asset> {
    let files = std::iter::once(("./", page))
        .chain(parts.iter().map(|part| (part.name.as_str(), *part)))
        .map(|(name, asset)| format!("  [\"{name}\", \"{}\"],\n", asset.integrity))
        .collect::<String>();
    let files = format!("[\n{files}]");
    let build = digest(files.as_bytes());
    let text = fill(
        "src/app/glue/worker.js",
        &glue_file(repo, "worker.js")?,
        &[("__BUILD__", &build), ("__FILES__", &files)],
    )?;
    Ok(Asset::named(NAME, text))
}

/// The worker that drops what an earlier build kept.
///
/// # Errors
/// When its file cannot be read.
pub fn retiring(repo: &Repo) -> Result<Asset> {
    Ok(Asset::named(NAME, glue_file(repo, "retire.js")?))
}

//! The service worker, with the list of files that make up one build.

use std::fmt::Write as _;

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
    let mut files = format!("[\n  [\"./\", \"{}\"],\n", page.integrity);
    for Asset {
        name, integrity, ..
    } in parts
    {
        // Writing to a text cannot fail.
        let _ = writeln!(files, "  [\"{name}\", \"{integrity}\"],");
    }
    files.push(']');
    let worker = glue_file(repo, "worker.js")?;
    // Another worker is another build, even with the same files: no two
    // workers may tend the same cache.
    let build = digest(format!("{files}{worker}").as_bytes());
    let text = fill(
        "src/app/glue/worker.js",
        &worker,
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

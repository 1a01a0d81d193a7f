//! What is taught, read from content/ and packed for the page.

use anyhow::{Result, anyhow};
use catalogue::Catalogue;

use crate::repo::Repo;

/// Reads content/ and packs it.
///
/// # Errors
/// Every fault of the content, one a line.
pub fn pack(repo: &Repo) -> Result<Vec<u8>> {
    Ok(catalogue::pack(&read(repo)?))
}

/// How much there is of each kind.
///
/// # Errors
/// Every fault of the content, one a line.
pub fn counts(repo: &Repo) -> Result<Vec<(&'static str, usize)>> {
    Ok(read(repo)?.counts())
}

fn read(repo: &Repo) -> Result<Catalogue> {
    catalogue::source::read(&repo.path("content")).map_err(|faults| {
        let lines: Vec<String> = faults.iter().map(ToString::to_string).collect();
        let count = match lines.len() {
            1 => "one fault".to_owned(),
            many => format!("{many} faults"),
        };
        anyhow!(
            "{}\nThe content has {count}; nothing is built from it.",
            lines.join("\n")
        )
    })
}

//! What is taught, read from content/ and packed for the page.

use anyhow::Result;

use crate::repo::Repo;

/// Reads content/ and packs it.
///
/// # Errors
/// Every fault of the content, one a line.
pub fn pack(_repo: &Repo) -> Result<Vec<u8>> {
    Ok(Vec::new())
}

/// How much there is of each kind.
///
/// # Errors
/// Every fault of the content, one a line.
pub fn counts(_repo: &Repo) -> Result<Vec<(&'static str, usize)>> {
    Ok(Vec::new())
}

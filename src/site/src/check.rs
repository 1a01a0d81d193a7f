//! Checks the content alone, in seconds.

use anyhow::Result;

use crate::content;
use crate::repo::Repo;

/// Prints how much of each kind there is, or every fault.
///
/// # Errors
/// Every fault of the content, one a line.
pub fn check(repo: &Repo) -> Result<()> {
    for (kind, count) in content::counts(repo)? {
        println!("{count:>5} {kind}");
    }
    println!("The content has no faults.");
    Ok(())
}

//! Checks the content alone, in seconds.

use anyhow::Result;

use crate::content::Content;
use crate::repo::Repo;

/// Prints how much of each kind there is, or every fault.
///
/// # Errors
/// Every fault of the content, one a line.
pub fn check(repo: &Repo) -> Result<()> {
    let content = Content::read(repo)?;
    for (kind, count) in content.counts() {
        println!("{count:>5} {kind}");
    }
    content.complete()?;
    println!("Every instrument is drawn, every item is in use, and no lesson retypes its tray.");
    let proof = content.prove()?;
    println!(
        "Every patient that can be was run: {} stand for {} combinations of findings.",
        proof.run, proof.combinations
    );
    println!("The content has no faults.");
    Ok(())
}

//! How fast the engine is, natively.
//!
//! Each crate measures itself in its own `benches/`, as programs that print
//! one line a figure; whatever is there is run.

use std::process::Command;

use anyhow::Result;

use crate::command;
use crate::repo::Repo;
use crate::toolchain;

/// Runs every benchmark of the workspace.
///
/// # Errors
/// When one does not compile or breaks off.
pub fn measure(repo: &Repo) -> Result<()> {
    println!();
    command::run(
        Command::new(toolchain::cargo())
            .args(["bench", "--quiet", "--workspace", "--bench", "*"])
            .current_dir(repo.root()),
        "The engine could not be measured.",
    )
}

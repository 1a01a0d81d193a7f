//! How long the page takes to load on a slow phone.
//!
//! The measuring is done where the browsers are steered: by the program
//! `loading` of the tests.

use std::process::Command;

use anyhow::Result;

use crate::command;
use crate::repo::Repo;
use crate::test::browsers::Browsers;
use crate::toolchain;

/// Measures in a throttled Chromium and prints each time beside its budget.
///
/// # Errors
/// When Chromium cannot be had or the page does not load in it.
pub fn measure(repo: &Repo) -> Result<()> {
    println!();
    let mut program = Command::new(toolchain::cargo());
    program
        .args([
            "run",
            "--quiet",
            "--package",
            "trayward-tests",
            "--bin",
            "loading",
        ])
        .current_dir(repo.root());
    Browsers::chromium(repo)?.tell(&mut program, repo)?;
    command::run(&mut program, "The loading could not be measured.")
}

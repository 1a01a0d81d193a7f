//! The pictures of README.md, taken from the page itself.

use std::process::Command;

use anyhow::Result;

use crate::build::{self, Mode};
use crate::command;
use crate::repo::Repo;
use crate::test::browsers::Browsers;
use crate::toolchain;

/// The folder that README.md shows pictures from.
const FOLDER: &str = "tests/pictures";

/// Builds the page and takes every picture afresh.
///
/// # Errors
/// When the page does not build, or Chromium cannot be had.
pub fn pictures(repo: &Repo) -> Result<()> {
    build::into_folder(repo, Mode::Finished, &repo.dist())?;
    let mut program = Command::new(toolchain::cargo());
    program
        .args([
            "run",
            "--quiet",
            "--package",
            "trayward-tests",
            "--bin",
            "pictures",
        ])
        .current_dir(repo.root());
    Browsers::chromium(repo)?.tell(&mut program, repo)?;
    program.env("TRAYWARD_SHOTS", repo.path(FOLDER));
    command::run(&mut program, "The pictures could not be taken.")
}

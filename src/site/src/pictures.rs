//! The pictures of README.md, taken from the page itself.

use anyhow::Result;

use crate::build::{self, Mode};
use crate::command;
use crate::repo::Repo;
use crate::test::browsers::Browsers;

/// The folder that README.md shows pictures from.
const FOLDER: &str = "tests/pictures";

/// Builds the page and takes every picture afresh.
///
/// # Errors
/// When the page does not build, or Chromium cannot be had.
pub fn pictures(repo: &Repo) -> Result<()> {
    build::into_folder(repo, Mode::Finished, &repo.dist())?;
    let mut program = Browsers::chromium(repo)?.program(repo, "pictures")?;
    program.env("TRAYWARD_SHOTS", repo.path(FOLDER));
    command::run(&mut program, "The pictures could not be taken.")
}

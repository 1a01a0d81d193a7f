//! Measures the page and the engine, and prints each figure beside its budget.
//! Nothing fails here: a figure over its budget is for people to judge.

mod engine;
mod loading;
pub mod sizes;

use anyhow::Result;

use crate::build::{self, Mode};
use crate::repo::Repo;

/// Builds the page and measures everything.
///
/// # Errors
/// When the page does not build or a measurement cannot be made.
pub fn bench(repo: &Repo) -> Result<()> {
    build::into_folder(repo, Mode::Finished, &repo.dist())?;
    sizes::print(&repo.dist())?;
    loading::measure(repo)?;
    engine::measure(repo)
}

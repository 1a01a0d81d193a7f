//! How long the page takes to load on a slow phone, how soon it answers, how
//! smoothly a mass is drawn there, and how soon it has read a very large class.
//!
//! The measuring is done where the browsers are steered: by the programs
//! `loading`, `answering`, `spatulating` and `collecting` of the tests.

use anyhow::Result;

use crate::command;
use crate::repo::Repo;
use crate::test::browsers::Browsers;

/// Measures in a throttled Chromium and prints each time beside its budget.
///
/// # Errors
/// When Chromium cannot be had or the page does not load in it.
pub fn measure(repo: &Repo) -> Result<()> {
    println!();
    let browser = Browsers::chromium(repo)?;
    for name in ["loading", "answering", "spatulating", "collecting"] {
        command::run(
            &mut browser.program(repo, name)?,
            "The page could not be measured in the browser.",
        )?;
    }
    Ok(())
}

//! What `cargo site` tells the journeys through the environment.

use std::path::PathBuf;

use anyhow::{Context, Result};

/// The path under this name.
///
/// # Errors
/// When nothing is told under it.
pub fn path(name: &str) -> Result<PathBuf> {
    std::env::var_os(name).map(PathBuf::from).with_context(|| {
        format!("{name} is not set. Run the journeys with `cargo site test browser`.")
    })
}

/// Where pictures of the screen go.
pub fn shots() -> Result<PathBuf> {
    let folder = path("TRAYWARD_SHOTS")?;
    std::fs::create_dir_all(&folder).context("The folder for pictures cannot be made.")?;
    Ok(folder)
}

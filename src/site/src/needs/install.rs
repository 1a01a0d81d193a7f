//! How packages are installed: of npm, of Python, of Debian.

use std::process::Command;
use std::sync::{Mutex, Once, PoisonError};

use anyhow::{Result, bail};

use super::{Need, on_path};
use crate::command;
use crate::repo::Repo;

/// Installs a package of files: none of its scripts is run.
///
/// # Errors
/// When npm cannot be had, or does not fetch it.
pub fn npm(repo: &Repo, package: &str) -> Result<()> {
    static ONE_AT_A_TIME: Mutex<()> = Mutex::new(());
    let npm = Need::Npm.ensure(repo)?;
    // Two at once would spoil the folder for each other.
    let _turn = ONE_AT_A_TIME.lock().unwrap_or_else(PoisonError::into_inner);
    command::run(
        Command::new(npm)
            .args(["install", "--silent", "--no-audit", "--no-fund"])
            .args(["--ignore-scripts", "--prefix"])
            .arg(repo.tools())
            .arg(package),
        &format!("{package} could not be fetched."),
    )
}

/// Installs a package of Python into a folder of our own: no environment of the
/// system is touched, and none need be made.
///
/// # Errors
/// When pip cannot be had, or does not fetch it.
pub fn pip(repo: &Repo, package: &str) -> Result<()> {
    let python = Need::Pip.ensure(repo)?;
    command::run(
        Command::new(python)
            .args([
                "-m",
                "pip",
                "install",
                "--quiet",
                "--disable-pip-version-check",
            ])
            .args(["--root-user-action", "ignore", "--upgrade", "--target"])
            .arg(repo.tools().join("python"))
            .arg(package),
        &format!("{package} could not be fetched."),
    )
}

/// Whether Python has pip.
pub fn has_pip() -> bool {
    command::output(Command::new("python3").args(["-m", "pip", "--version"])).is_some()
}

/// Installs packages of Debian.
///
/// # Errors
/// When this is no Debian system, we may not install there, or apt-get fails.
pub fn debian(packages: &[&str]) -> Result<()> {
    static LISTS: Once = Once::new();
    static ONE_AT_A_TIME: Mutex<()> = Mutex::new(());
    if on_path("apt-get").is_none() {
        bail!("This system has no apt-get, so nothing can be installed by itself.");
    }
    if command::output(Command::new("id").arg("-u")).as_deref() != Some("0") {
        bail!(
            "Only root may install packages: run `sudo apt-get install {}`.",
            packages.join(" ")
        );
    }
    let apt = || {
        let mut apt = Command::new("apt-get");
        apt.env("DEBIAN_FRONTEND", "noninteractive")
            .args(["-qq", "-o", "DPkg::Lock::Timeout=120"])
            .stdout(std::process::Stdio::null());
        apt
    };
    let _turn = ONE_AT_A_TIME.lock().unwrap_or_else(PoisonError::into_inner);
    // An old list may still do, so a failure to renew it is no failure yet.
    LISTS.call_once(|| drop(command::run(apt().arg("update"), "")));
    command::run(
        apt()
            .args(["install", "-y", "--no-install-recommends"])
            .args(packages),
        &format!(
            "Debian's packages {} could not be installed.",
            packages.join(" ")
        ),
    )
}

//! What the journeys in real browsers need to know and to have.

use std::path::PathBuf;
use std::process::Command;

use anyhow::{Context, Result};

use crate::needs::Need;
use crate::repo::Repo;
use crate::toolchain;

/// Under these names the journeys find what they need in their environment.
const TOOLS: [(Need, &str); 8] = [
    (Need::Chromium, "TRAYWARD_CHROMIUM"),
    (Need::Chromedriver, "TRAYWARD_CHROMEDRIVER"),
    (Need::Firefox, "TRAYWARD_FIREFOX"),
    (Need::Geckodriver, "TRAYWARD_GECKODRIVER"),
    (Need::WebKitDriver, "TRAYWARD_WEBKITDRIVER"),
    (Need::Xvfb, "TRAYWARD_XVFB"),
    (Need::Axe, "TRAYWARD_AXE"),
    (Need::ScormRuntime, "TRAYWARD_SCORM_AGAIN"),
];

/// Tools of the journeys, each with the path it was found at.
pub struct Browsers(Vec<(&'static str, PathBuf)>);

impl Browsers {
    /// Everything that the journeys need, installed where it was missing.
    ///
    /// # Errors
    /// Says what is missing and how to get it.
    pub fn all(repo: &Repo) -> Result<Self> {
        Self::those(repo, |_| true)
    }

    /// Only what measuring the loading needs.
    ///
    /// # Errors
    /// Says what is missing and how to get it.
    pub fn chromium(repo: &Repo) -> Result<Self> {
        Self::those(repo, |need| {
            matches!(need, Need::Chromium | Need::Chromedriver)
        })
    }

    fn those(repo: &Repo, wanted: impl Fn(Need) -> bool) -> Result<Self> {
        let tools = TOOLS.into_iter().filter(|(need, _)| wanted(*need));
        tools
            .map(|(need, name)| Ok((name, need.ensure(repo)?)))
            .collect::<Result<_>>()
            .map(Self)
    }

    /// A program of the tests that steers a browser, told where everything is.
    ///
    /// # Errors
    /// When this very program cannot be found again.
    pub fn program(&self, repo: &Repo, name: &str) -> Result<Command> {
        let mut program = Command::new(toolchain::cargo());
        program
            .args([
                "run",
                "--quiet",
                "--package",
                "trayward-tests",
                "--bin",
                name,
            ])
            .current_dir(repo.root());
        self.tell(&mut program, repo)?;
        Ok(program)
    }

    /// Tells a program where everything is, the page and its server included.
    ///
    /// # Errors
    /// When this very program cannot be found again.
    pub fn tell(&self, program: &mut Command, repo: &Repo) -> Result<()> {
        let server = std::env::current_exe().context("The site tool cannot find itself.")?;
        program
            .envs(self.0.iter().map(|(name, path)| (name, path)))
            // A journey that fails says in words where it stood.
            .env("RUST_BACKTRACE", "0")
            .env("TRAYWARD_SITE", server)
            .env("TRAYWARD_DIST", repo.dist())
            .env("TRAYWARD_SHOTS", repo.target().join("shots"));
        Ok(())
    }
}

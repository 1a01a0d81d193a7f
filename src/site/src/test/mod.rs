//! Runs every check there is, and ends with one plain line of counts.

pub mod browsers;
mod tally;

use std::process::Command;
use std::thread;

use anyhow::{Result, bail};

use crate::build::{self, Mode};
use crate::command;
use crate::needs::Need;
use crate::options::Options;
use crate::repo::Repo;
use crate::toolchain::{self, Wasm};
use browsers::Browsers;
use tally::Tally;

/// Which checks to run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Part {
    /// Formatting and native tests.
    Quick,
    /// Quick, and the linter.
    Native,
    /// The page in real browsers.
    Browser,
    /// Everything.
    All,
}

impl Part {
    fn read(word: Option<&str>) -> Result<Self> {
        Ok(match word {
            None | Some("all") => Self::All,
            Some("quick") => Self::Quick,
            Some("native") => Self::Native,
            Some("browser") => Self::Browser,
            Some(other) => bail!("“{other}” is no part of the tests: quick, native or browser."),
        })
    }
}

/// Runs the checks that the options name, all of them by default.
///
/// # Errors
/// When any check failed.
pub fn test(repo: &Repo, options: &Options) -> Result<()> {
    let part = Part::read(options.word.as_deref())?;
    let mut tally = Tally::default();
    thread::scope(|scope| -> Result<()> {
        // Linking the page keeps one core busy for minutes: the other one tests meanwhile.
        let walked = matches!(part, Part::Browser | Part::All);
        let page = walked.then(|| scope.spawn(|| page(repo)));
        if part != Part::Browser {
            native(repo, part, &mut tally)?;
        }
        if let Some(page) = page {
            let page = page
                .join()
                .unwrap_or_else(|_| bail!("The build of the page stopped half-way."));
            match page {
                Ok(browsers) => {
                    tally.check("Page", Ok(()));
                    journeys(repo, &browsers, &mut tally)?;
                }
                Err(error) => {
                    tally.check("Page", Err(error));
                }
            }
        }
        Ok(())
    })?;
    println!("\n{} passed, {} failed", tally.passed, tally.failed);
    if tally.failed > 0 {
        bail!("Not everything passed; what failed is told above.");
    }
    Ok(())
}

/// What needs no browser.
fn native(repo: &Repo, part: Part, tally: &mut Tally) -> Result<()> {
    tally.check("Formatting", formatting(repo));
    if part != Part::Quick {
        tally.check("Linter", linter(repo));
    }
    let mut runner = cargo(repo, "test");
    runner.args(["--workspace", "--no-fail-fast"]);
    if part != Part::Quick {
        tools(repo, &mut runner, tally);
    }
    tally.run(&mut runner)
}

/// Programs and files of other people that native tests ask: what a test needs
/// to have, and under which name it is told where the last of it is.
const ASKED: [(&[Need], &str); 3] = [
    (&[Need::Xmllint, Need::ScormSchemas], "TRAYWARD_SCORM_XSD"),
    (&[Need::Python, Need::QtiConvert], "TRAYWARD_QTI_CONVERT"),
    (
        &[Need::Node, Need::XapiValidation],
        "TRAYWARD_XAPI_VALIDATION",
    ),
];

/// Tells the native tests where the tools of other people are. Each that cannot
/// be had counts as a check that failed.
fn tools(repo: &Repo, runner: &mut Command, tally: &mut Tally) {
    for (needs, name) in ASKED {
        let found: Result<Vec<_>> = needs.iter().map(|need| need.ensure(repo)).collect();
        match found {
            Ok(paths) => {
                runner.envs(paths.last().map(|path| (name, path)));
            }
            Err(error) => {
                tally.check(name, Err(error));
            }
        }
    }
}

fn formatting(repo: &Repo) -> Result<()> {
    command::run(
        cargo(repo, "fmt").args(["--all", "--", "--check"]),
        "Some code is not formatted: run `cargo fmt --all`.",
    )
}

/// The app is linted with the rest, as code for this computer; where the
/// toolchain has the page's target, as code for the browser too.
fn linter(repo: &Repo) -> Result<()> {
    let failed = "The linter objects; it says above to what.";
    command::run(
        cargo(repo, "clippy").args(["--workspace", "--all-targets", "--", "-D", "warnings"]),
        failed,
    )?;
    if Wasm::find() == Some(Wasm::Target) {
        let mut clippy = Wasm::Target.cargo("clippy", &repo.wasm_target());
        clippy
            .args(["--quiet", "--package", "app", "--", "-D", "warnings"])
            .current_dir(repo.root());
        command::run(&mut clippy, failed)?;
    }
    Ok(())
}

/// Builds the page, and finds what walks through it.
fn page(repo: &Repo) -> Result<Browsers> {
    build::into_folder(repo, Mode::Finished, &repo.dist())?;
    Browsers::all(repo)
}

/// Each journey has a browser of its own; two at a time suit two cores.
fn journeys(repo: &Repo, browsers: &Browsers, tally: &mut Tally) -> Result<()> {
    let mut runner = cargo(repo, "test");
    runner.args([
        "--package",
        "trayward-tests",
        "--no-fail-fast",
        "--test",
        "*",
    ]);
    runner.args(["--", "--ignored", "--test-threads", "2"]);
    browsers.tell(&mut runner, repo)?;
    tally.run(&mut runner)
}

fn cargo(repo: &Repo, subcommand: &str) -> Command {
    let mut cargo = Command::new(toolchain::cargo());
    cargo
        .arg(subcommand)
        .arg("--quiet")
        .current_dir(repo.root());
    cargo
}

#[cfg(test)]
mod tests {
    use super::Part;

    #[test]
    fn parts_are_read_by_name() {
        assert_eq!(Part::read(None).unwrap(), Part::All);
        assert_eq!(Part::read(Some("quick")).unwrap(), Part::Quick);
        assert!(
            Part::read(Some("quik"))
                .unwrap_err()
                .to_string()
                .contains("quik")
        );
    }
}

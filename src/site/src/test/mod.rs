//! Runs every check there is, and ends with one plain line of counts.

pub mod browsers;
mod tally;

use std::process::Command;

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
    if part != Part::Browser {
        tally.check("Formatting", formatting(repo));
        if part != Part::Quick {
            tally.check("Linter", linter(repo));
        }
        let mut runner = cargo(repo, "test");
        runner.args(["--workspace", "--no-fail-fast"]);
        if part != Part::Quick {
            schemas(repo, &mut runner, &mut tally);
        }
        tally.run(&mut runner)?;
    }
    if matches!(part, Part::Browser | Part::All)
        && tally.check(
            "Page",
            build::into_folder(repo, Mode::Finished, &repo.dist()).map(drop),
        )
    {
        journeys(repo, &mut tally)?;
    }
    println!("\n{} passed, {} failed", tally.passed, tally.failed);
    if tally.failed > 0 {
        bail!("Not everything passed; what failed is told above.");
    }
    Ok(())
}

/// Tells the native tests where the schemas of other systems' packages are.
fn schemas(repo: &Repo, runner: &mut Command, tally: &mut Tally) {
    let found = Need::Xmllint
        .ensure(repo)
        .and_then(|_| Need::ScormSchemas.ensure(repo));
    match found {
        Ok(folder) => {
            runner.env("TRAYWARD_SCORM_XSD", folder);
        }
        Err(error) => {
            tally.check("Schemas", Err(error));
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

/// Each journey has a browser of its own; two at a time suit two cores.
fn journeys(repo: &Repo, tally: &mut Tally) -> Result<()> {
    let browsers = match Browsers::all(repo) {
        Ok(browsers) => browsers,
        Err(error) => {
            tally.check("Browsers", Err(error));
            return Ok(());
        }
    };
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

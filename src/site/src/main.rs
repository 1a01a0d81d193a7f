//! `cargo site`: one tool that sets up what is missing, builds the page, serves
//! it, checks the content, runs every test and measures against the budgets.
//!
//! Nothing here ends in a stack trace: whatever goes wrong is told as a
//! sentence, with what to do about it.

mod bench;
mod build;
mod check;
mod command;
mod complete;
mod content;
mod doctor;
mod needs;
mod options;
mod pictures;
mod repo;
mod serve;
mod test;
mod toolchain;
mod watch;

use std::process::ExitCode;

use anyhow::{Result, bail};

use options::Options;
use repo::Repo;

const HELP: &str = "\
cargo site: builds, serves, checks and tests Trayward

  cargo site serve [--port N] [--watch]   build the page and serve it on this computer
  cargo site build [--dev] [--out DIR]    write the page into dist/, ready for any host
  cargo site check                        check content/ alone (seconds)
  cargo site test [quick|native|browser]  run every test, or one part of them
  cargo site bench                        measure sizes, loading and the engine
  cargo site pictures                     take the pictures of README.md afresh
  cargo site doctor                       say what is installed and what is missing

serve
  --port N      where to listen (8080); 0 takes any free port
  --watch       build quickly, build again on every change, reload the page
  --as-built    serve the folder as it is, without building first
  --out DIR     the folder to serve (dist)
  --under PATH  serve below this path, as a host with several sites would

test
  quick         formatting and native tests
  native        quick, and the linter
  browser       build the page and walk through it in real browsers
";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match run(&arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            for cause in error.chain() {
                eprintln!("{cause}");
            }
            ExitCode::FAILURE
        }
    }
}

fn run(arguments: &[String]) -> Result<()> {
    let Some((command, rest)) = arguments.split_first() else {
        print!("{HELP}");
        return Ok(());
    };
    let repo = Repo::find()?;
    let options = Options::read(rest)?;
    match command.as_str() {
        "serve" if options.watch => watch::serve(&repo, &options),
        "serve" => serve::serve(&repo, &options),
        "build" => build::build(&repo, &options).map(|built| built.report()),
        "check" => check::check(&repo),
        "test" => test::test(&repo, &options),
        "bench" => bench::bench(&repo),
        "pictures" => pictures::pictures(&repo),
        "doctor" => {
            doctor::doctor(&repo);
            Ok(())
        }
        "help" | "--help" | "-h" => {
            print!("{HELP}");
            Ok(())
        }
        other => bail!("There is no command “{other}”. Run `cargo site` alone for the list."),
    }
}

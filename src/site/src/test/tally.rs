//! Counting what passed and what failed, over every tool that is run.

use std::io::{BufRead, BufReader, Write};
use std::process::{Command, Stdio};

use anyhow::Result;

use crate::command;

/// How many checks passed and failed.
#[derive(Debug, Default, Clone, Copy, PartialEq, Eq)]
pub struct Tally {
    /// Those that passed.
    pub passed: usize,
    /// Those that failed, among them whatever could not be run at all.
    pub failed: usize,
}

impl Tally {
    /// One check that either passes or tells why not.
    pub fn check(&mut self, what: &str, outcome: Result<()>) -> bool {
        match outcome {
            Ok(()) => {
                self.passed += 1;
                println!("{what}: passed");
                true
            }
            Err(error) => {
                self.failed += 1;
                for cause in error.chain() {
                    println!("{cause}");
                }
                println!("{what}: failed");
                false
            }
        }
    }

    /// Runs tests, shows what they print, and adds up what they count.
    ///
    /// # Errors
    /// When the runner cannot start.
    pub fn run(&mut self, runner: &mut Command) -> Result<()> {
        self.follow(runner, &mut std::io::stdout())
    }

    fn follow(&mut self, runner: &mut Command, out: &mut impl Write) -> Result<()> {
        let mut child = runner
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .spawn()
            .map_err(|error| command::cannot_start(runner, &error))?;
        let mut counted = Self::default();
        if let Some(stdout) = child.stdout.take() {
            for line in BufReader::new(stdout).lines().map_while(Result::ok) {
                counted.add_line(&line);
                let _ = writeln!(out, "{line}");
            }
        }
        let ended_well = child.wait().is_ok_and(|status| status.success());
        if !ended_well && counted.failed == 0 {
            let line = command::line(runner);
            let _ = writeln!(out, "The tests could not all be run: {line}");
            counted.failed = 1;
        }
        self.passed += counted.passed;
        self.failed += counted.failed;
        Ok(())
    }

    /// Adds one closing line of a test program, such as
    /// `test result: ok. 3 passed; 0 failed; 1 ignored; …`.
    fn add_line(&mut self, line: &str) {
        let Some(counts) = line.trim_start().strip_prefix("test result: ") else {
            return;
        };
        for entry in counts.split(['.', ';']) {
            let mut words = entry.split_whitespace();
            let Some(Ok(count)) = words.next().map(str::parse::<usize>) else {
                continue;
            };
            match words.next() {
                Some("passed") => self.passed += count,
                Some("failed") => self.failed += count,
                _ => {}
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use std::process::Command;

    use super::Tally;

    fn run(script: &str) -> Tally {
        let mut tally = Tally::default();
        let mut shown = Vec::new();
        tally
            .follow(Command::new("sh").args(["-c", script]), &mut shown)
            .unwrap();
        tally
    }

    #[test]
    fn closing_lines_are_added_up() {
        let tally = run("echo 'running 4 tests'
            echo 'test result: ok. 3 passed; 0 failed; 1 ignored; 0 measured; 2 filtered out; finished in 0.00s'
            echo 'test result: FAILED. 5 passed; 2 failed; 0 ignored; 0 measured'
            exit 101");
        assert_eq!(
            tally,
            Tally {
                passed: 8,
                failed: 2
            }
        );
    }

    #[test]
    fn a_runner_that_breaks_off_counts_as_failed() {
        assert_eq!(
            run("exit 101"),
            Tally {
                passed: 0,
                failed: 1
            }
        );
    }

    #[test]
    fn a_check_counts_once() {
        let mut tally = Tally::default();
        assert!(tally.check("good", Ok(())));
        assert!(!tally.check("bad", Err(anyhow::anyhow!("no"))));
        assert_eq!(
            tally,
            Tally {
                passed: 1,
                failed: 1
            }
        );
    }
}

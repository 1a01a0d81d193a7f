//! Running other programs, with failures told as sentences.

use std::io::ErrorKind;
use std::process::{Command, Stdio};

use anyhow::{Result, anyhow, bail};

/// Runs a program to its end; what it prints goes to the terminal.
///
/// # Errors
/// `failed`, with the command that did, when it cannot start or ends badly.
pub fn run(command: &mut Command, failed: &str) -> Result<()> {
    let status = command
        .stdin(Stdio::null())
        .status()
        .map_err(|error| cannot_start(command, &error))?;
    if !status.success() {
        bail!("{failed} The command was: {}", line(command));
    }
    Ok(())
}

/// Runs a program quietly and gives what it printed, if it ended well.
pub fn output(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).output().ok()?;
    output
        .status
        .success()
        .then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// The sentence for a program that cannot even start.
pub fn cannot_start(command: &Command, error: &std::io::Error) -> anyhow::Error {
    let program = command.get_program().to_string_lossy();
    if error.kind() == ErrorKind::NotFound {
        anyhow!("The program “{program}” is not installed. `cargo site doctor` says how to get it.")
    } else {
        anyhow!("The program “{program}” cannot start: {error}.")
    }
}

/// The command as one would type it.
pub fn line(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    words
        .map(|word| word.to_string_lossy().into_owned())
        .collect::<Vec<_>>()
        .join(" ")
}

#[cfg(test)]
mod tests {
    use std::process::Command;

    #[test]
    fn a_missing_program_is_named() {
        let error = super::run(&mut Command::new("no-such-program-here"), "It failed.");
        assert!(
            error
                .unwrap_err()
                .to_string()
                .contains("“no-such-program-here” is not installed")
        );
    }

    #[test]
    fn a_bad_end_shows_the_command() {
        let error = super::run(Command::new("sh").args(["-c", "exit 3"]), "It failed.");
        let told = error.unwrap_err().to_string();
        assert!(
            told.starts_with("It failed.") && told.contains("sh -c exit 3"),
            "{told}"
        );
    }
}

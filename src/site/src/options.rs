//! What was asked for on the command line.

use std::path::PathBuf;

use anyhow::{Context, Result, bail};

/// The options of every command; each command uses those that concern it.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Options {
    /// Build for writing the page: quick to build, large to fetch.
    pub dev: bool,
    /// Build again on every change.
    pub watch: bool,
    /// Serve the folder as it is.
    pub as_built: bool,
    /// Where to listen; 0 for any free port.
    pub port: Option<u16>,
    /// The folder of the finished page.
    pub out: Option<PathBuf>,
    /// The path below which the page is served.
    pub under: Option<String>,
    /// The one plain word, such as the part of the tests to run.
    pub word: Option<String>,
}

impl Options {
    /// Reads the arguments that follow the command.
    ///
    /// # Errors
    /// Names the argument that is unknown or lacks its value.
    pub fn read(arguments: &[String]) -> Result<Self> {
        let mut options = Self::default();
        let mut rest = arguments.iter();
        while let Some(argument) = rest.next() {
            let mut value = |example: &str| {
                rest.next()
                    .with_context(|| format!("“{argument}” needs a value, such as `{example}`."))
            };
            match argument.as_str() {
                "--dev" => options.dev = true,
                "--watch" => options.watch = true,
                "--as-built" => options.as_built = true,
                "--port" => {
                    let port = value("--port 8081")?;
                    options.port = Some(port.parse().with_context(|| {
                        format!("“{port}” is no port. A port is a number from 0 to 65535.")
                    })?);
                }
                "--out" => options.out = Some(value("--out dist")?.into()),
                "--under" => options.under = Some(value("--under /school/")?.clone()),
                word if !word.starts_with('-') && options.word.is_none() => {
                    options.word = Some(word.into());
                }
                other => bail!("“{other}” is not understood here. Run `cargo site` for the list."),
            }
        }
        Ok(options)
    }
}

#[cfg(test)]
mod tests {
    use super::Options;

    fn read(line: &str) -> Result<Options, String> {
        let arguments: Vec<String> = line.split_whitespace().map(Into::into).collect();
        Options::read(&arguments).map_err(|error| error.to_string())
    }

    #[test]
    fn each_option_is_read() {
        let options = read("browser --port 9001 --watch --out some/where --under /a/b/").unwrap();
        assert_eq!(options.word.as_deref(), Some("browser"));
        assert_eq!(options.port, Some(9001));
        assert!(options.watch);
        assert_eq!(options.out, Some("some/where".into()));
        assert_eq!(options.under.as_deref(), Some("/a/b/"));
    }

    #[test]
    fn a_mistake_is_named() {
        assert!(read("--prot 1").unwrap_err().contains("--prot"));
        assert!(read("--port").unwrap_err().contains("--port 8081"));
        assert!(read("--port 70000").unwrap_err().contains("70000"));
    }
}

//! The compiler for the page, and how to get it.
//!
//! An ordinary toolchain gets the WebAssembly target from rustup. Where rustup
//! cannot fetch it, Debian ships a compiler that can build the standard library
//! from source. Where neither works, we say what to install.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result};

use crate::command;
use crate::needs;

/// The target that the page is built for.
pub const TARGET: &str = "wasm32-unknown-unknown";

const DEBIAN_PACKAGES: [&str; 4] = ["rustc-web", "cargo-web", "rust-web-src", "lld-22"];
const DEBIAN_CARGO: &str = "/usr/bin/cargo";
const DEBIAN_SOURCE: &str = "/usr/lib/rustlib/src/rust/library/std";
const DEBIAN_LINKER: &str = "/usr/bin/wasm-ld-22";

/// A way to build for the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wasm {
    /// The toolchain that built this tool has the target.
    Target,
    /// Debian's toolchain builds the standard library from its source.
    DebianSource,
}

impl Wasm {
    /// The way that is open now, without installing anything.
    pub fn find() -> Option<Self> {
        if target_is_there() {
            Some(Self::Target)
        } else if debian_is_there() {
            Some(Self::DebianSource)
        } else {
            None
        }
    }

    /// The way that is open, after installing what is missing.
    ///
    /// # Errors
    /// Says what to install by hand.
    pub fn ensure() -> Result<Self> {
        if let Some(found) = Self::find() {
            return Ok(found);
        }
        eprintln!("Setting up the compiler for the page …");
        let added = Command::new("rustup")
            .args(["target", "add", TARGET])
            .output();
        if added.is_ok_and(|output| output.status.success()) && target_is_there() {
            return Ok(Self::Target);
        }
        needs::install_debian(&DEBIAN_PACKAGES)
            .and_then(|()| Self::find().context("The packages do not hold what is needed."))
            .with_context(|| format!("No compiler for the page was found. {}", by_hand()))
    }

    /// What is in use, in words.
    pub fn describe(self) -> &'static str {
        match self {
            Self::Target => "this toolchain has the target wasm32-unknown-unknown",
            Self::DebianSource => "Debian's rustc-web, with the standard library from source",
        }
    }

    /// A cargo that builds for the page into `target_dir`; the subcommand comes first.
    pub fn cargo(self, subcommand: &str, target_dir: &Path) -> Command {
        let mut cargo = match self {
            Self::Target => {
                let mut cargo = Command::new(cargo());
                cargo.arg(subcommand);
                cargo
            }
            Self::DebianSource => {
                let mut cargo = Command::new(DEBIAN_CARGO);
                // The other compiler must not inherit what names ours.
                for name in ["CARGO", "RUSTC", "RUSTDOC", "RUSTUP_TOOLCHAIN"] {
                    cargo.env_remove(name);
                }
                cargo
                    .env("PATH", debian_first())
                    .env("RUSTC_BOOTSTRAP", "1")
                    .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", DEBIAN_LINKER)
                    .args([subcommand, "-Zbuild-std=std,panic_abort"]);
                cargo
            }
        };
        cargo
            .args(["--target", TARGET, "--target-dir"])
            .arg(target_dir);
        cargo
    }
}

/// How a person sets up the compiler for the page.
pub fn by_hand() -> String {
    format!(
        "Install the target with `rustup target add {TARGET}`, or on Debian `apt-get install {}`.",
        DEBIAN_PACKAGES.join(" ")
    )
}

/// The cargo that runs this tool.
pub fn cargo() -> PathBuf {
    std::env::var_os("CARGO").map_or_else(|| "cargo".into(), PathBuf::from)
}

fn target_is_there() -> bool {
    let rustc = std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    command::output(Command::new(rustc).args(["--print", "target-libdir", "--target", TARGET]))
        .is_some_and(|folder| {
            std::fs::read_dir(folder).is_ok_and(|mut entries| entries.next().is_some())
        })
}

fn debian_is_there() -> bool {
    [DEBIAN_CARGO, "/usr/bin/rustc", DEBIAN_LINKER]
        .iter()
        .all(|path| Path::new(path).is_file())
        && Path::new(DEBIAN_SOURCE).is_dir()
}

fn debian_first() -> std::ffi::OsString {
    let mut path = std::ffi::OsString::from("/usr/bin:");
    path.push(std::env::var_os("PATH").unwrap_or_default());
    path
}

//! Says what is installed, what is missing, and how to get each.

use std::process::Command;

use crate::command;
use crate::needs::Need;
use crate::repo::Repo;
use crate::toolchain::{self, Wasm};

/// Looks at everything and installs nothing.
pub fn doctor(repo: &Repo) {
    println!("To build and serve the page:");
    let cargo = command::output(Command::new(toolchain::cargo()).arg("--version"));
    line(
        cargo.as_deref().unwrap_or("cargo"),
        cargo.is_some(),
        "install Rust with rustup",
    );
    match Wasm::find() {
        Some(way) => line("a compiler for the page", true, way.describe()),
        None => line("a compiler for the page", false, &toolchain::by_hand()),
    }
    println!("\nTo test it:");
    for (component, subcommand) in [("rustfmt", "fmt"), ("clippy", "clippy")] {
        let found = Command::new(toolchain::cargo())
            .args([subcommand, "--version"])
            .output();
        let found = found.is_ok_and(|output| output.status.success());
        line(
            component,
            found,
            &format!("rustup component add {component}"),
        );
    }
    for need in Need::ALL {
        match need.find(repo) {
            Some(path) => line(need.purpose(), true, &path.display().to_string()),
            None => line(need.purpose(), false, &need.by_hand()),
        }
    }
    println!("\nWhat is missing is installed when it is first needed, where the system lets us.");
}

fn line(what: &str, found: bool, more: &str) {
    let state = if found { "there  " } else { "missing" };
    println!("  {state}  {what}: {more}");
}

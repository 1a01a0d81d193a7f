//! The program: the app crate compiled for the browser, and the glue that lets
//! JavaScript call it.

use std::fs;

use anyhow::{Context, Result, bail};
use wasm_bindgen_cli_support::Bindgen;

use crate::build::Mode;
use crate::command;
use crate::repo::Repo;
use crate::toolchain::{TARGET, Wasm};

/// The compiled program with its glue.
pub struct Program {
    /// The WebAssembly module.
    pub wasm: Vec<u8>,
    /// The JavaScript module that loads it.
    pub glue: String,
}

/// Compiles the app crate.
///
/// # Errors
/// When no compiler can be had, the crate does not compile, or its glue cannot be made.
pub fn compile(repo: &Repo, mode: Mode) -> Result<Program> {
    let profile = match mode {
        Mode::Finished => "page",
        Mode::Dev => "page-dev",
    };
    let target = repo.wasm_target();
    // Only here does the crate become a module of its own: a crate that is both
    // a library and a module would lose link-time optimisation.
    let mut cargo = Wasm::ensure()?.cargo("rustc", &target);
    cargo
        .args([
            "--quiet",
            "--package",
            "app",
            "--lib",
            "--crate-type",
            "cdylib",
        ])
        .args(["--profile", profile])
        .current_dir(repo.root());
    command::run(
        &mut cargo,
        "The page does not compile; the compiler says why above.",
    )?;

    let module = target.join(TARGET).join(profile).join("app.wasm");
    let folder = target.join("glue");
    bind(&module, &folder, mode)
        .context("The glue between the program and the browser could not be made.")
}

fn bind(module: &std::path::Path, folder: &std::path::Path, mode: Mode) -> Result<Program> {
    let finished = mode == Mode::Finished;
    let mut output = Bindgen::new()
        .input_path(module)
        .web(true)?
        .typescript(false)
        .omit_default_module_path(true)
        .remove_name_section(finished)
        .remove_producers_section(finished)
        .generate_output()?;
    let inline = output
        .snippets()
        .iter()
        .filter(|(_, snippets)| !snippets.is_empty());
    let own: Vec<&str> = inline
        .map(|(package, _)| package.as_str())
        .chain(output.local_modules().keys().map(String::as_str))
        .collect();
    if !own.is_empty() {
        bail!(
            "A package brings JavaScript of its own ({}), which this builder does not name by \
             content. Use a package without it.",
            own.join(", ")
        );
    }
    output.emit(folder)?;
    let read =
        |name: &str| fs::read(folder.join(name)).with_context(|| format!("{name} is missing"));
    Ok(Program {
        wasm: read("app_bg.wasm")?,
        glue: String::from_utf8(read("app.js")?)?,
    })
}

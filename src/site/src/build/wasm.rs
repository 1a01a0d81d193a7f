//! The program: the app crate compiled for the browser, split into the part
//! that the first screen needs and parts that come later, and the glue that
//! lets JavaScript call it.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, anyhow, bail};
use wasm_bindgen_cli_support::Bindgen;

use crate::build::Mode;
use crate::build::parts::Part;
use crate::command;
use crate::repo::Repo;
use crate::toolchain::{TARGET, Wasm};

/// The compiled program with its glue.
pub struct Program {
    /// The WebAssembly module that the page starts with.
    pub wasm: Vec<u8>,
    /// The JavaScript module that loads it.
    pub glue: String,
    /// The JavaScript module that loads the later parts.
    pub link: String,
    /// The later parts.
    pub parts: Vec<Part>,
}

/// What the glue calls the module that loads the later parts.
pub const LINK: &str = "./__wasm_split.js";

/// What that module calls the glue.
pub const GLUE: &str = "./app.js";

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
        // What the splitter needs to see which function calls which.
        .args(["--", "-Clink-arg=--emit-relocs"])
        .current_dir(repo.root());
    command::run(
        &mut cargo,
        "The page does not compile; the compiler says why above.",
    )?;

    let module = target.join(TARGET).join(profile).join("app.wasm");
    let folder = target.join("glue");
    let split =
        split(&module, &folder).context("The program could not be split into its parts.")?;
    bind(&split, &folder, mode)
        .context("The glue between the program and the browser could not be made.")
}

/// A program cut in parts, before its glue is made.
struct Split {
    main: PathBuf,
    later: Vec<PathBuf>,
    link: PathBuf,
}

fn split(module: &Path, folder: &Path) -> Result<Split> {
    let input = fs::read(module).with_context(|| format!("{} is missing", module.display()))?;
    let folder = folder.join("split");
    // Parts of an earlier build would be taken for parts of this one.
    if folder.is_dir() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    let main = folder.join("app.wasm");
    let mut options = wasm_split_cli_support::Options::new(&input);
    options.output_dir = &folder;
    options.main_out_path = &main;
    options.main_module = GLUE;
    options.link_name = LINK;
    let parts = wasm_split_cli_support::transform(options).map_err(|error| anyhow!("{error:#}"))?;
    let link = folder.join(LINK);
    Ok(Split {
        main,
        later: parts.split_modules,
        link,
    })
}

fn bind(split: &Split, folder: &Path, mode: Mode) -> Result<Program> {
    let finished = mode == Mode::Finished;
    let mut output = Bindgen::new()
        .input_path(&split.main)
        .web(true)?
        .typescript(false)
        .omit_default_module_path(true)
        // The later parts link to what the linker exports.
        .keep_lld_exports(true)
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
        |path: &Path| fs::read(path).with_context(|| format!("{} is missing", path.display()));
    let text = |path: &Path| -> Result<String> { Ok(String::from_utf8(read(path)?)?) };
    let parts = split.later.iter().map(|path| {
        let name = path.file_stem().and_then(|name| name.to_str());
        Ok(Part {
            name: name.unwrap_or_default().to_owned(),
            bytes: read(path)?,
        })
    });
    Ok(Program {
        wasm: read(&folder.join("app_bg.wasm"))?,
        glue: text(&folder.join("app.js"))?,
        link: text(&split.link)?,
        parts: parts.collect::<Result<_>>()?,
    })
}

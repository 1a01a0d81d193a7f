//! The later parts of the program, and the module that loads them.
//!
//! The module and the glue import each other, so neither can carry the digest
//! of the other's final bytes in its name: both carry one digest of the two.

use anyhow::{Context, Result};
use wasmparser::{Parser, Payload};

use super::names::{Asset, digest};
use super::template::fill;
use super::wasm::{GLUE, LINK, Program};

/// A part of the program that is fetched when it is first asked for.
pub struct Part {
    /// Its name as the splitter gave it.
    pub name: String,
    /// The WebAssembly module.
    pub bytes: Vec<u8>,
}

/// The JavaScript and WebAssembly files of a program, each with its final name.
pub struct Linked {
    /// The JavaScript side of the program.
    pub glue: Asset,
    /// The module that loads the later parts.
    pub link: Asset,
    /// The later parts.
    pub parts: Vec<Asset>,
}

/// Names the files of a program and makes them point at each other.
///
/// # Errors
/// When a file does not hold the pointer that it should, or a part is not a module.
pub fn link(program: Program) -> Result<Linked> {
    let Program {
        glue,
        link,
        parts,
        wasm: _,
    } = program;
    let mut text = fill(
        "the module that loads the parts",
        &link,
        // A host may not know the type of the file, or may pack the page into
        // another program: plain bytes work everywhere.
        &[(
            "WebAssembly.instantiateStreaming(src, imports)",
            "src.then((part) => part.arrayBuffer()).then((part) => WebAssembly.instantiate(part, imports))",
        )],
    )?;
    let mut named = Vec::with_capacity(parts.len());
    for Part { name, bytes } in parts {
        let bytes = without_custom_sections(&bytes)
            .with_context(|| format!("The part {name} is not a WebAssembly module."))?;
        let asset = Asset::hashed(&name.replace('_', "-"), "wasm", bytes);
        let (from, to) = (
            format!("fetch(new URL(\"./{name}.wasm\", import.meta.url))"),
            format!(
                "fetch(new URL(\"./{}\", import.meta.url), {{ integrity: \"{}\" }})",
                asset.name, asset.integrity
            ),
        );
        text = fill("the module that loads the parts", &text, &[(&from, &to)])?;
        named.push(asset);
    }
    let both = digest(format!("{glue}{text}").as_bytes());
    let (glue_name, link_name) = (format!("app-{both}.js"), format!("parts-{both}.js"));
    // The same path is also the name under which the module is handed to the
    // program, and that has to stay.
    let glue = fill(
        "the glue",
        &glue,
        &[(
            &format!("from \"{LINK}\""),
            &format!("from \"./{link_name}\""),
        )],
    )?;
    let text = fill(
        "the module that loads the parts",
        &text,
        &[(GLUE, &format!("./{glue_name}"))],
    )?;
    Ok(Linked {
        glue: Asset::named(&glue_name, glue),
        link: Asset::named(&link_name, text),
        parts: named,
    })
}

/// A module without names and notes: nothing that runs needs them.
fn without_custom_sections(module: &[u8]) -> Result<Vec<u8>> {
    let mut kept = wasm_encoder::Module::new();
    for payload in Parser::new(0).parse_all(module) {
        let payload = payload?;
        if matches!(payload, Payload::CustomSection(_)) {
            continue;
        }
        if let Some((id, range)) = payload.as_section() {
            let range = usize::try_from(range.start)?..usize::try_from(range.end)?;
            kept.section(&wasm_encoder::RawSection {
                id,
                data: &module[range],
            });
        }
    }
    Ok(kept.finish())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// An empty module with one custom section, by hand (WebAssembly core
    /// specification, binary format of modules).
    const NAMED: &[u8] = b"\0asm\x01\0\0\0\0\x05\x04name";
    const PLAIN: &[u8] = b"\0asm\x01\0\0\0";

    fn program(link: &str) -> Program {
        Program {
            wasm: PLAIN.to_vec(),
            glue: format!("import * as a from \"{LINK}\"; handed = {{ \"{LINK}\": a }}"),
            link: link.to_owned(),
            parts: vec![Part {
                name: "split_cases".into(),
                bytes: NAMED.to_vec(),
            }],
        }
    }

    #[test]
    fn the_files_point_at_each_other_by_their_final_names() {
        let Linked { glue, link, parts } = link(program(
            "import { initSync } from \"./app.js\"; const src = fetch(new URL(\"./split_cases.wasm\", import.meta.url)); \
             WebAssembly.instantiateStreaming(src, imports)",
        ))
        .unwrap();
        let (glue_text, link_text) = (text(&glue), text(&link));
        assert!(glue_text.contains(&link.name), "{glue_text}");
        assert!(glue_text.contains(&format!("\"{LINK}\": a")), "{glue_text}");
        assert!(link_text.contains(&glue.name), "{link_text}");
        assert!(link_text.contains(&parts[0].name) && link_text.contains(&parts[0].integrity));
        assert_eq!(parts[0].bytes, PLAIN);
    }

    #[test]
    fn a_part_that_nothing_loads_is_told() {
        let program =
            program("import \"./app.js\"; WebAssembly.instantiateStreaming(src, imports)");
        assert!(link(program).is_err());
    }

    fn text(asset: &Asset) -> String {
        String::from_utf8(asset.bytes.clone()).unwrap()
    }
}

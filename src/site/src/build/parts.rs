//! The later parts of the program, and the module that loads them.
//!
//! The module and the glue import each other, so neither can carry the digest
//! of the other's final bytes in its name: both carry one digest of the two.

use anyhow::{Context, Result};
use wasmparser::{Parser, Payload};

use super::names::{Asset, digest};
use super::shelf::Shelf;
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
    /// The later parts: the large ones, and the shelf of the small ones.
    pub parts: Vec<Asset>,
}

/// Names the files of a program and makes them point at each other; `fetching`
/// is the JavaScript that fetches parts.
///
/// # Errors
/// When a file does not hold the pointer that it should, or a part is not a module.
pub fn link(program: Program, fetching: &str) -> Result<Linked> {
    let Program {
        glue,
        link,
        parts,
        wasm: _,
    } = program;
    let (fetches, placed) = place(parts)?;
    let instantiate = (
        "WebAssembly.instantiateStreaming(src, imports)",
        "src.then((part) => WebAssembly.instantiate(part, imports))",
    );
    let fetches: Vec<(&str, &str)> = fetches
        .iter()
        .map(|(from, to)| (from.as_str(), to.as_str()))
        .chain([instantiate])
        .collect();
    let text = fill("the module that loads the parts", &link, &fetches)?;
    let text = format!("{}{text}", with_shelf(fetching, &placed.shelf)?);
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
        parts: placed.files(),
    })
}

/// The files that hold the later parts.
struct Placed {
    shelf: Asset,
    large: Vec<Asset>,
}

impl Placed {
    fn files(self) -> Vec<Asset> {
        std::iter::once(self.shelf).chain(self.large).collect()
    }
}

/// Gives each part its place, and tells how it was fetched and how it is now.
fn place(parts: Vec<Part>) -> Result<(Vec<(String, String)>, Placed)> {
    let (mut shelf, mut large) = (Shelf::default(), Vec::new());
    let mut fetches = Vec::with_capacity(parts.len());
    for Part { name, bytes } in parts {
        let bytes = without_custom_sections(&bytes)
            .with_context(|| format!("The part {name} is not a WebAssembly module."))?;
        let to = match shelf.put(bytes) {
            Ok(place) => format!("shelved({}, {})", place.start, place.end),
            Err(bytes) => {
                let file = Asset::hashed(&name.replace('_', "-"), "wasm", bytes);
                let fetch = format!("whole(\"./{}\", \"{}\")", file.name, file.integrity);
                large.push(file);
                fetch
            }
        };
        let from = format!("fetch(new URL(\"./{name}.wasm\", import.meta.url))");
        fetches.push((from, to));
    }
    let shelf = shelf.file();
    Ok((fetches, Placed { shelf, large }))
}

/// The JavaScript that fetches parts, with the name of the shelf.
fn with_shelf(fetching: &str, shelf: &Asset) -> Result<String> {
    fill(
        "src/app/glue/parts.js",
        fetching,
        &[
            ("__SHELF_INTEGRITY__", &shelf.integrity),
            ("__SHELF__", &shelf.name),
        ],
    )
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

    const FETCHING: &str = "const SHELF = [\"./__SHELF__\", \"__SHELF_INTEGRITY__\"];\n";

    fn program(link: &str) -> Program {
        let part = |name: &str, bytes: Vec<u8>| Part {
            name: name.into(),
            bytes,
        };
        Program {
            wasm: PLAIN.to_vec(),
            glue: format!("import * as a from \"{LINK}\"; handed = {{ \"{LINK}\": a }}"),
            link: link.to_owned(),
            parts: vec![
                part("split_small", NAMED.to_vec()),
                part("split_large", large()),
            ],
        }
    }

    /// A module with one data segment that is too large for the shelf.
    fn large() -> Vec<u8> {
        let mut data = wasm_encoder::DataSection::new();
        data.passive([7; 10_000]);
        let mut module = wasm_encoder::Module::new();
        module.section(&data);
        module.finish()
    }

    #[test]
    fn the_files_point_at_each_other_by_their_final_names() {
        let load = |name: &str| {
            format!(
                "const src = fetch(new URL(\"./{name}.wasm\", import.meta.url)); \
                 WebAssembly.instantiateStreaming(src, imports);"
            )
        };
        let (small, big) = (load("split_small"), load("split_large"));
        let program = program(&format!(
            "import {{ initSync }} from \"./app.js\"; {small} {big}"
        ));
        let Linked { glue, link, parts } = link(program, FETCHING).unwrap();
        let (glue_text, link_text) = (text(&glue), text(&link));
        assert!(glue_text.contains(&link.name), "{glue_text}");
        assert!(glue_text.contains(&format!("\"{LINK}\": a")), "{glue_text}");
        assert!(link_text.contains(&glue.name), "{link_text}");
        let [shelf, large_part] = &parts[..] else {
            panic!("a shelf and a large part: {parts:?}")
        };
        for part in [shelf, large_part] {
            assert!(link_text.contains(&part.name) && link_text.contains(&part.integrity));
        }
        assert_eq!(shelf.bytes, PLAIN);
        assert_eq!(large_part.bytes, large());
        let to = PLAIN.len();
        assert!(
            link_text.contains(&format!("src = shelved(0, {to})")),
            "{link_text}"
        );
    }

    #[test]
    fn a_part_that_nothing_loads_is_told() {
        let program =
            program("import \"./app.js\"; WebAssembly.instantiateStreaming(src, imports)");
        assert!(link(program, FETCHING).is_err());
    }

    fn text(asset: &Asset) -> String {
        String::from_utf8(asset.bytes.clone()).unwrap()
    }
}

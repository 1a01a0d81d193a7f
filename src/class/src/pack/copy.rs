//! One thing of the built-in sources as the start of another: its source text
//! under an id of its own.

use super::place::Kind;
use catalogue::source::Files;

/// A thing that can be copied.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Start {
    /// Its id.
    pub id: String,
    /// Its name, or its id where it has none.
    pub name: String,
}

/// The things of a kind that can be copied, in the order of the sources.
pub fn starts(built_in: &Files, kind: Kind) -> Vec<Start> {
    match kind.table() {
        Some(table) => blocks_of(built_in, kind, table)
            .map(|(_, block)| {
                let id = value(block, "id").unwrap_or_default().to_owned();
                let name = value(block, "name").or_else(|| value(block, "title"));
                let name = name.unwrap_or(&id).to_owned();
                Start { id, name }
            })
            .collect(),
        None => built_in
            .iter()
            .filter_map(|(path, text)| lone(kind, path, text))
            .collect(),
    }
}

/// A procedure or a lesson on its own.
fn lone(kind: Kind, path: &str, text: &str) -> Option<Start> {
    let parts: Vec<&str> = path.split('/').collect();
    let (id, name) = match (kind, parts.as_slice()) {
        (Kind::Procedure, ["procedures", id, "procedure.toml"]) => (*id, value(text, "name")),
        (Kind::Lesson, ["lessons", name]) => (
            name.strip_suffix(".md")?,
            text.lines().next()?.strip_prefix("# "),
        ),
        _ => return None,
    };
    Some(Start {
        id: id.to_owned(),
        name: name.unwrap_or(id).to_owned(),
    })
}

/// The files of a copy of a thing under a new id, with their paths: for a
/// procedure its steps and its lesson, for one thing of a list a list that holds
/// the copy alone. None where there is no such thing.
pub fn copied(built_in: &Files, kind: Kind, id: &str, new: &str) -> Option<Vec<(String, String)>> {
    match kind.table() {
        Some(table) => {
            let block = blocks_of(built_in, kind, table)
                .map(|(_, block)| block)
                .find(|block| value(block, "id") == Some(id))?;
            let path = format!("{}/{new}.toml", kind.folder());
            Some(vec![(path, with_id(block, id, new))])
        }
        None if kind == Kind::Procedure => {
            let of = |name: &str| built_in.get(&format!("procedures/{id}/{name}"));
            let steps = with_id(of("procedure.toml")?, id, new);
            let lesson = of("lesson.md")?.to_owned();
            Some(vec![
                (format!("procedures/{new}/procedure.toml"), steps),
                (format!("procedures/{new}/lesson.md"), lesson),
            ])
        }
        None => {
            let text = built_in.get(&format!("lessons/{id}.md"))?;
            Some(vec![(format!("lessons/{new}.md"), text.to_owned())])
        }
    }
}

fn blocks_of<'f>(
    built_in: &'f Files,
    kind: Kind,
    table: &'static str,
) -> impl Iterator<Item = (&'f str, &'f str)> {
    let here = move |path: &str| {
        path.strip_prefix(kind.folder())
            .is_some_and(|rest| rest.starts_with('/') || rest == ".toml")
    };
    let files = built_in.iter().filter(move |(path, _)| here(path));
    files.flat_map(move |(path, text)| blocks(text, table).into_iter().map(move |it| (path, it)))
}

/// The tables of a list, each from its head to the next one's, without the
/// remarks that belong to the next.
fn blocks<'t>(text: &'t str, table: &str) -> Vec<&'t str> {
    let head = format!("[[{table}]]");
    let mut starts = Vec::new();
    let mut at = 0;
    for line in text.split_inclusive('\n') {
        if line.trim_end() == head {
            starts.push(at);
        }
        at += line.len();
    }
    let ends = starts.iter().skip(1).copied().chain([text.len()]);
    let block = |(start, end): (usize, usize)| {
        let mut block = text[start..end].trim_end();
        while let Some((before, last)) = block.rsplit_once('\n') {
            if !last.starts_with('#') && !last.trim().is_empty() {
                break;
            }
            block = before;
        }
        block
    };
    starts.iter().copied().zip(ends).map(block).collect()
}

/// The text that the first line `key = "…"` gives; none where there is none.
fn value<'t>(block: &'t str, key: &str) -> Option<&'t str> {
    block.lines().find_map(|line| {
        let rest = line.strip_prefix(key)?.trim_start().strip_prefix('=')?;
        let inner = rest.trim().strip_prefix('"')?;
        Some(&inner[..inner.find('"')?])
    })
}

/// The same text with another id in its first line `id = "…"`.
fn with_id(text: &str, id: &str, new: &str) -> String {
    let old = format!("id = \"{id}\"");
    let mut copy = text
        .trim_end()
        .replacen(&old, &format!("id = \"{new}\""), 1);
    copy.push('\n');
    copy
}

//! Replacing, adding, taking out and moving, by the spans of the text.

use super::tree::{Layout, Node, Step, Tree, Value};
use std::ops::Range;

/// Puts another value in the place of one. None where there is none, where it
/// stands under a head of its own or only in names, or where what comes out is no
/// TOML.
pub fn set(text: &str, path: &[Step], value: &Value) -> Option<String> {
    let tree = Tree::read(text)?;
    let node = tree.at(path)?;
    if is_under_heads(node) || is_names(node) {
        return None;
    }
    checked(spliced(text, node.span.clone(), &written(value)))
}

/// Adds a field to a table, behind its last one. None where it has the field, or
/// where the table stands only in names.
pub fn put_field(text: &str, table: &[Step], name: &str, value: &Value) -> Option<String> {
    let tree = Tree::read(text)?;
    let node = tree.at(table)?;
    let Value::Table(fields, layout) = &node.value else {
        return None;
    };
    if is_names(node) || fields.iter().any(|(key, _)| key == name) {
        return None;
    }
    let entry = format!("{} = {}", key(name), written(value));
    if *layout == Layout::Braces {
        let inside = match fields.last() {
            Some((_, last)) => {
                let end = last.span.end;
                spliced(text, end..end, &format!(", {entry}"))
            }
            None => spliced(text, node.span.clone(), &format!("{{ {entry} }}")),
        };
        return checked(inside);
    }
    let straight = fields.iter().filter(|(_, inner)| !is_under_heads(inner));
    let end = straight.map(|(_, inner)| inner.span.end).max();
    let at = line_end(text, end.unwrap_or(node.span.end).max(node.span.end));
    let line = if table.is_empty() && end.is_none() {
        return checked(spliced(text, 0..0, &format!("{entry}\n")));
    } else {
        format!("\n{entry}")
    };
    checked(spliced(text, at..at, &line))
}

/// Takes something out: a field with its line, an entry of a list with its comma
/// or with all that stands under its head. None where names run through it, as
/// through `form` and `file` in `form.file = {}`.
pub fn remove(text: &str, path: &[Step]) -> Option<String> {
    let tree = Tree::read(text)?;
    let node = tree.at(path)?;
    let (last, over) = path.split_last()?;
    let parent = tree.at(over)?;
    if is_names(node) {
        return None;
    }
    let span = match (&parent.value, last) {
        (Value::List(_, true), Step::Entry(_)) => block(&tree, text, node),
        (Value::List(entries, false), Step::Entry(at)) => {
            inline_entry(text, entries, *at, &parent.span)
        }
        (Value::Table(_, Layout::Head), Step::Field(_)) if !is_under_heads(node) => {
            line_start(text, node.key.start)..next_line(text, node.span.end)
        }
        (Value::Table(fields, Layout::Braces), Step::Field(name)) => {
            let at = fields.iter().position(|(key, _)| key == name)?;
            inline_field(text, fields, at, &parent.span)
        }
        _ => return None,
    };
    checked(spliced(text, span, ""))
}

/// Moves an entry of a list to the place of the one before it or behind it.
pub fn move_entry(text: &str, list: &[Step], at: usize, back: bool) -> Option<String> {
    let tree = Tree::read(text)?;
    let Value::List(entries, heads) = &tree.at(list)?.value else {
        return None;
    };
    let first = if back { at.checked_sub(1)? } else { at };
    let (one, two) = (entries.get(first)?, entries.get(first + 1)?);
    let (one, two) = if *heads {
        (block(&tree, text, one), block(&tree, text, two))
    } else {
        (one.span.clone(), two.span.clone())
    };
    if one.end > two.start {
        return None;
    }
    let (first, second) = (&text[one.clone()], &text[two.clone()]);
    let moved = if *heads {
        // Blocks end as the text ends; between two of them stands an empty line.
        let (first, second) = (first.trim_end(), second.trim_end());
        let between = &text[one.end..two.start];
        let rest = &text[two.start + second.len()..];
        let gap = &text[one.start + first.len()..one.end];
        [&text[..one.start], second, gap, between, first, rest].concat()
    } else {
        [
            &text[..one.start],
            second,
            &text[one.end..two.start],
            first,
            &text[two.end..],
        ]
        .concat()
    };
    checked(moved)
}

/// Adds a copy of an entry behind it. Where the entry has an id, the copy gets
/// another that no entry has.
pub fn add_copy(text: &str, list: &[Step], at: usize) -> Option<String> {
    let tree = Tree::read(text)?;
    let Value::List(entries, heads) = &tree.at(list)?.value else {
        return None;
    };
    let entry = entries.get(at)?;
    let span = if *heads {
        block(&tree, text, entry)
    } else {
        entry.span.clone()
    };
    let mut copy = text[span.clone()].trim_end().to_owned();
    if let Some(id) = entry.text("id") {
        let taken = |id: &str| entries.iter().any(|each| each.text("id") == Some(id));
        // One more number than there are entries is always free.
        let mut numbered = (2..entries.len() + 3).map(|n| format!("{id}-{n}"));
        let fresh = numbered.find(|id| !taken(id))?;
        copy = copy.replacen(&format!("\"{id}\""), &format!("\"{fresh}\""), 1);
    }
    let end = span.start + text[span].trim_end().len();
    let between = if *heads { "\n\n" } else { ", " };
    checked(spliced(text, end..end, &[between, &copy].concat()))
}

/// A value as TOML.
fn written(value: &Value) -> String {
    match value {
        Value::Text(text) => quoted(text),
        Value::Flag(flag) => flag.to_string(),
        Value::Number(number) => number.clone(),
        Value::List(entries, _) => {
            let entries: Vec<String> = entries.iter().map(|entry| written(&entry.value)).collect();
            format!("[{}]", entries.join(", "))
        }
        Value::Table(fields, _) if fields.is_empty() => "{}".into(),
        Value::Table(fields, _) => {
            let fields = fields.iter();
            let fields: Vec<String> = fields
                .map(|(name, node)| format!("{} = {}", key(name), written(&node.value)))
                .collect();
            format!("{{ {} }}", fields.join(", "))
        }
    }
}

/// A text as TOML writes it on one line.
fn quoted(text: &str) -> String {
    let mut quoted = String::from("\"");
    for c in text.chars() {
        match c {
            '"' => quoted.push_str("\\\""),
            '\\' => quoted.push_str("\\\\"),
            '\n' => quoted.push_str("\\n"),
            '\t' => quoted.push_str("\\t"),
            c if c.is_control() => {}
            c => quoted.push(c),
        }
    }
    quoted.push('"');
    quoted
}

/// A name of a field as TOML.
fn key(name: &str) -> String {
    let bare = |b: u8| b.is_ascii_alphanumeric() || b == b'-' || b == b'_';
    if !name.is_empty() && name.bytes().all(bare) {
        name.to_owned()
    } else {
        quoted(name)
    }
}

/// Whether it, or what is in it, stands under heads of its own.
fn is_under_heads(node: &Node) -> bool {
    node.has_head() || matches!(node.value, Value::List(_, true))
}

/// Whether it is a table that only the names of its fields make.
fn is_names(node: &Node) -> bool {
    matches!(node.value, Value::Table(_, Layout::Names))
}

/// All that stands under the head of an entry, from its remarks to those of the
/// next head that is not its own.
fn block(tree: &Tree, text: &str, entry: &Node) -> Range<usize> {
    let mut own = Vec::new();
    within(entry, &mut own);
    let start = entry.span.start;
    let next = tree
        .heads
        .iter()
        .copied()
        .find(|head| *head > start && !own.contains(head));
    let end = next.map_or(text.len(), |next| remarks(text, next));
    remarks(text, start)..end.max(start)
}

fn within(node: &Node, into: &mut Vec<usize>) {
    let inner: Vec<&Node> = match &node.value {
        Value::Table(fields, _) => fields.iter().map(|(_, inner)| inner).collect(),
        Value::List(entries, _) => entries.iter().collect(),
        _ => return,
    };
    for each in inner {
        if each.has_head() {
            into.push(each.span.start);
        }
        within(each, into);
    }
}

/// Where the remarks that stand right above a head begin.
fn remarks(text: &str, head: usize) -> usize {
    let mut start = line_start(text, head);
    while start > 0 {
        let above = line_start(text, start - 1);
        if !text[above..start].trim_start().starts_with('#') {
            break;
        }
        start = above;
    }
    start
}

/// An entry within brackets with the comma that goes with it.
fn inline_entry(text: &str, entries: &[Node], at: usize, list: &Range<usize>) -> Range<usize> {
    let spans: Vec<Range<usize>> = entries.iter().map(|entry| entry.span.clone()).collect();
    with_comma(text, &spans, at, list)
}

/// A field within braces with the comma that goes with it.
fn inline_field(
    text: &str,
    fields: &[(String, Node)],
    at: usize,
    table: &Range<usize>,
) -> Range<usize> {
    let spans: Vec<Range<usize>> = fields
        .iter()
        .map(|(_, node)| node.key.start..node.span.end)
        .collect();
    with_comma(text, &spans, at, table)
}

fn with_comma(text: &str, spans: &[Range<usize>], at: usize, whole: &Range<usize>) -> Range<usize> {
    let own = &spans[at];
    match (spans.get(at + 1), at.checked_sub(1)) {
        (Some(next), _) => own.start..next.start,
        (None, Some(before)) => spans[before].end..own.end,
        // The only one: nothing is left between the brackets.
        (None, None) => {
            let end = whole.end.saturating_sub(1).max(own.end);
            let inner = text.get(whole.start + 1..end);
            if inner.is_some() {
                whole.start + 1..end
            } else {
                own.clone()
            }
        }
    }
}

fn line_start(text: &str, at: usize) -> usize {
    text[..at].rfind('\n').map_or(0, |newline| newline + 1)
}

fn line_end(text: &str, at: usize) -> usize {
    text[at..]
        .find('\n')
        .map_or(text.len(), |newline| at + newline)
}

fn next_line(text: &str, at: usize) -> usize {
    (line_end(text, at) + 1).min(text.len())
}

fn spliced(text: &str, span: Range<usize>, new: &str) -> String {
    [&text[..span.start], new, &text[span.end..]].concat()
}

/// A changed text, as long as it is still TOML.
fn checked(text: String) -> Option<String> {
    Tree::read(&text).is_some().then_some(text)
}

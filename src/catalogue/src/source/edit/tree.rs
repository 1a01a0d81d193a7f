//! What a document says, with the place of everything in its text.

use super::super::locate::document;
use std::ops::Range;
use toml::{Spanned, de::DeValue};

/// A step of the way to something in a document.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Step {
    /// A field of a table.
    Field(String),
    /// An entry of a list, counted from 0.
    Entry(usize),
}

/// Something in a document.
#[derive(Clone, Debug, PartialEq)]
pub struct Node {
    /// What it says.
    pub value: Value,
    /// Where its text stands: for a table with a head of its own, the head, and
    /// for one that only names make, its name.
    pub span: Range<usize>,
    /// Where its name stands, and for a table with a head, the head.
    pub key: Range<usize>,
}

/// What something in a document says.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// A text.
    Text(String),
    /// Yes or no.
    Flag(bool),
    /// A number, as it is written.
    Number(String),
    /// A list. With `true` its entries are tables with heads of their own.
    List(Vec<Node>, bool),
    /// A table.
    Table(Vec<(String, Node)>, Layout),
}

/// How a table is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layout {
    /// Under a head of its own, or it is the document.
    Head,
    /// Between braces.
    Braces,
    /// Only in the names of its fields, as `form` in `form.file = {}`: no part of
    /// the text is its own, so nothing can be put in its place or into it.
    Names,
}

/// A document that can be changed.
#[derive(Clone, Debug, PartialEq)]
pub struct Tree {
    /// The document itself, a table.
    pub root: Node,
    /// Where every head stands, in the order of the text.
    pub(super) heads: Vec<usize>,
}

impl Tree {
    /// Reads a document; none where it is no TOML.
    pub fn read(text: &str) -> Option<Self> {
        let document = document(text)?;
        let fields = document.get_ref().iter();
        let fields = fields.map(|(key, value)| field(text, key.get_ref(), key.span(), value));
        let root = Node {
            value: Value::Table(fields.collect(), Layout::Head),
            span: 0..0,
            key: 0..0,
        };
        let mut heads = Vec::new();
        collect_heads(&root, &mut heads);
        heads.sort_unstable();
        heads.dedup();
        Some(Self { root, heads })
    }

    /// Something by the way to it.
    pub fn at(&self, path: &[Step]) -> Option<&Node> {
        let mut node = &self.root;
        for step in path {
            node = match (step, &node.value) {
                (Step::Field(name), Value::Table(fields, _)) => {
                    &fields.iter().find(|(key, _)| key == name)?.1
                }
                (Step::Entry(at), Value::List(entries, _)) => entries.get(*at)?,
                _ => return None,
            };
        }
        Some(node)
    }
}

impl Node {
    /// Whether it is a table with a head of its own.
    pub(super) fn has_head(&self) -> bool {
        matches!(self.value, Value::Table(_, Layout::Head))
    }

    /// The text that a field of it says; none where it has no such field.
    pub fn text(&self, name: &str) -> Option<&str> {
        let Value::Table(fields, _) = &self.value else {
            return None;
        };
        match &fields.iter().find(|(key, _)| key == name)?.1.value {
            Value::Text(text) => Some(text),
            _ => None,
        }
    }
}

fn field(text: &str, key: &str, at: Range<usize>, value: &Spanned<DeValue<'_>>) -> (String, Node) {
    let mut node = node(text, value);
    node.key = at;
    (key.to_owned(), node)
}

fn node(text: &str, value: &Spanned<DeValue<'_>>) -> Node {
    let span = value.span();
    let written = || text.get(span.clone()).unwrap_or_default().to_owned();
    let layout = match text.as_bytes().get(span.start) {
        Some(b'[') => Layout::Head,
        Some(b'{') => Layout::Braces,
        _ => Layout::Names,
    };
    let says = match value.get_ref() {
        DeValue::String(said) => Value::Text(said.to_string()),
        DeValue::Boolean(said) => Value::Flag(*said),
        DeValue::Table(fields) => {
            let fields = fields.iter();
            let fields = fields.map(|(key, value)| field(text, key.get_ref(), key.span(), value));
            Value::Table(fields.collect(), layout)
        }
        DeValue::Array(entries) => {
            let entries: Vec<Node> = entries.iter().map(|entry| node(text, entry)).collect();
            let heads = entries.first().is_some_and(Node::has_head);
            Value::List(entries, heads)
        }
        _ => Value::Number(written()),
    };
    Node {
        value: says,
        key: span.clone(),
        span,
    }
}

fn collect_heads(node: &Node, into: &mut Vec<usize>) {
    match &node.value {
        Value::Table(fields, _) => {
            for (_, inner) in fields {
                if inner.has_head() {
                    into.push(inner.span.start);
                }
                collect_heads(inner, into);
            }
        }
        Value::List(entries, heads) => {
            if *heads {
                into.extend(entries.iter().map(|entry| entry.span.start));
            }
            for entry in entries {
                collect_heads(entry, into);
            }
        }
        _ => {}
    }
}

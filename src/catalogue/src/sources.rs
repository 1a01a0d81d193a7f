//! Where facts come from. Every rule, number and group of steps names a source;
//! the custom of the trade is a source of its own kind and shown as such.

use crate::ids::SourceId;
use serde::{Deserialize, Serialize};

/// What kind of text a source is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum SourceKind {
    /// A standard of a standards body.
    Standard,
    /// A guideline or position statement.
    Guideline,
    /// A trial or laboratory study.
    Study,
    /// A review or meta-analysis.
    Review,
    /// A handbook of the trade.
    Handbook,
    /// A drug label or instructions for use.
    Label,
    /// A law or regulation.
    Regulation,
    /// Custom of the trade, with no published source.
    CommonPractice,
}

/// How well the text behind a fact is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Reading {
    /// The passage, abstract or page itself was read.
    Read,
    /// The value is from memory and the text was not read.
    FromMemory,
    /// There is no text: custom.
    Custom,
}

/// One source, stated once.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Source {
    /// The key by which facts name it.
    pub id: SourceId,
    /// What kind of text it is.
    pub kind: SourceKind,
    /// Title, body or authors and journal, as a reader would look it up.
    pub title: String,
    /// Year of publication; 0 where there is none.
    pub year: u16,
    /// Where in it, such as a section, table or page; may be empty.
    #[serde(default)]
    pub part: String,
    /// How well its text is known.
    pub reading: Reading,
}

//! Lessons as a tree that the page can draw. Markdown is read when the
//! catalogue is built; raw HTML never gets this far.

use crate::ids::{ItemId, LessonId, ProcedureId, SourceId};
use serde::{Deserialize, Serialize};

/// A lesson.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Lesson {
    /// Its id; for a procedure's lesson, the procedure's id.
    pub id: LessonId,
    /// Its title: the heading it opens with.
    pub title: String,
    /// What it says.
    pub blocks: Vec<Block>,
    /// How many words there are to read.
    pub words: u16,
}

/// Words a minute of someone who reads to learn; our assumption.
const READING_PACE: u16 = 180;

impl Lesson {
    /// How many minutes it takes to read, at least one.
    pub fn minutes(&self) -> u16 {
        self.words.div_ceil(READING_PACE).max(1)
    }
}

/// A block of text, or something derived that stands in its place.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Block {
    /// A heading of the second or third level.
    Heading(u8, Vec<Inline>),
    /// A paragraph.
    Paragraph(Vec<Inline>),
    /// A list; numbered or not; each entry a run of blocks.
    List(bool, Vec<Vec<Block>>),
    /// A remark set apart.
    Aside(Vec<Block>),
    /// A table: header cells, then rows.
    Table(Vec<Vec<Inline>>, Vec<Vec<Vec<Inline>>>),
    /// The derived tray of a procedure: `::tray`.
    Tray(ProcedureId),
    /// The steps of a procedure, or of one of its phases: `::steps` or `::steps Isolate`.
    Steps(ProcedureId, Option<String>),
    /// What the patient is told: `::advice`.
    Advice(ProcedureId),
    /// What can slip, and the mends: `::slips`.
    Slips(ProcedureId),
    /// How a material is mixed: `::mixing reinforced-zoe`.
    Mixing(ItemId),
    /// Drawings side by side: `::drawings spoon-excavator-small discoid-cleoid-carver`.
    Drawings(Vec<ItemId>),
    /// A question to stop at, with its answer folded: `::ask question ? answer`.
    Ask(String, String),
}

/// A run of text.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Inline {
    /// Plain text.
    Text(String),
    /// Emphasis.
    Emphasis(Vec<Inline>),
    /// Strong emphasis.
    Strong(Vec<Inline>),
    /// A link to an item: `[spoon](item:spoon-excavator-small)`.
    Item(ItemId, Vec<Inline>),
    /// A link to a procedure: `[rubber dam](procedure:rubber-dam)`.
    Procedure(ProcedureId, Vec<Inline>),
    /// A source named in the text: `[](source:aae-2009)`.
    Source(SourceId),
    /// A link to a safe outside address.
    Link(String, Vec<Inline>),
}

/// The text without its marks.
pub fn plain(inlines: &[Inline]) -> String {
    let one = |inline: &Inline| match inline {
        Inline::Text(text) => text.clone(),
        Inline::Emphasis(inner)
        | Inline::Strong(inner)
        | Inline::Item(_, inner)
        | Inline::Procedure(_, inner)
        | Inline::Link(_, inner) => plain(inner),
        Inline::Source(_) => String::new(),
    };
    inlines.iter().map(one).collect()
}

/// The words of a run of blocks, without marks. What is derived has none.
pub fn text(blocks: &[Block]) -> String {
    let mut words = String::new();
    for block in blocks {
        gather(block, &mut words);
    }
    words
}

/// Adds the words of a block.
fn gather(block: &Block, into: &mut String) {
    let mut add = |text: &[Inline]| {
        into.push_str(&plain(text));
        into.push(' ');
    };
    match block {
        Block::Heading(_, text) | Block::Paragraph(text) => add(text),
        Block::Table(head, rows) => {
            let cells = head.iter().chain(rows.iter().flatten());
            cells.for_each(|cell| add(cell));
        }
        Block::List(_, entries) => entries.iter().flatten().for_each(|each| gather(each, into)),
        Block::Aside(inner) => inner.iter().for_each(|each| gather(each, into)),
        Block::Ask(question, answer) => {
            into.push_str(question);
            into.push(' ');
            into.push_str(answer);
            into.push(' ');
        }
        _ => {}
    }
}

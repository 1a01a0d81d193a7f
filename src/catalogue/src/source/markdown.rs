//! Lessons from Markdown. Raw HTML is refused, links go only to known kinds of
//! places, and a paragraph that opens with `::` is a directive for something
//! that is derived and never retyped.

use crate::{
    ids::{ItemId, LessonId, ProcedureId, SourceId},
    lesson::{Block, Inline, Lesson, plain},
};
use pulldown_cmark::{Event, HeadingLevel, Options, Parser, Tag, TagEnd};
use std::ops::Range;

type Fault = (usize, String);

/// How deep quotations, lists and emphasis may stand within one another. What
/// is read is walked by functions that call themselves.
const DEEPEST: usize = 24;

/// After so many faults reading a lesson ends.
const MOST_FAULTS: usize = 100;

/// Reads a lesson.
pub(super) fn lesson(
    id: LessonId,
    procedure: Option<&ProcedureId>,
    text: &str,
) -> Result<Lesson, Vec<Fault>> {
    let mut builder = Builder {
        procedure,
        frames: vec![Frame::new(Kind::Root)],
        ..Builder::default()
    };
    for (event, range) in Parser::new_ext(text, Options::ENABLE_TABLES).into_offset_iter() {
        let at = range.start;
        builder.take(event, range);
        if builder.frames.len() > DEEPEST {
            builder.refuse(
                at,
                "quotations, lists and emphasis stand too deep within one another; write it flatter",
            );
            break;
        }
        if builder.faults.len() >= MOST_FAULTS {
            break;
        }
    }
    let Builder {
        mut frames,
        mut faults,
        title,
        words,
        ..
    } = builder;
    if title.is_empty() {
        faults.push((0, "the lesson has no title; open it with '# Title'".into()));
    }
    if faults.is_empty() {
        let blocks = frames.remove(0).blocks;
        Ok(Lesson {
            id,
            title,
            blocks,
            words: u16::try_from(words).unwrap_or(u16::MAX),
        })
    } else {
        Err(faults)
    }
}

/// What an open tag will become when it closes.
#[derive(Clone, Debug, PartialEq)]
enum Kind {
    Root,
    Title,
    Heading(u8),
    Paragraph,
    List(bool),
    Entry,
    Aside,
    Table,
    Row(bool),
    Cell,
    Emphasis,
    Strong,
    Link(String, usize),
    Refused,
}

struct Frame {
    kind: Kind,
    blocks: Vec<Block>,
    inlines: Vec<Inline>,
    entries: Vec<Vec<Block>>,
    cells: Vec<Vec<Inline>>,
    rows: Vec<Vec<Vec<Inline>>>,
    start: usize,
}

impl Frame {
    fn new(kind: Kind) -> Self {
        Self {
            kind,
            blocks: Vec::new(),
            inlines: Vec::new(),
            entries: Vec::new(),
            cells: Vec::new(),
            rows: Vec::new(),
            start: 0,
        }
    }

    /// Text that stands straight in a list entry or a quotation becomes a paragraph.
    fn settle(&mut self) {
        if !self.inlines.is_empty() {
            self.blocks
                .push(Block::Paragraph(std::mem::take(&mut self.inlines)));
        }
    }
}

#[derive(Default)]
struct Builder<'p> {
    procedure: Option<&'p ProcedureId>,
    frames: Vec<Frame>,
    faults: Vec<Fault>,
    title: String,
    words: usize,
}

impl Builder<'_> {
    fn top(&mut self) -> &mut Frame {
        if self.frames.is_empty() {
            self.frames.push(Frame::new(Kind::Root));
        }
        let last = self.frames.len() - 1;
        &mut self.frames[last]
    }

    fn refuse(&mut self, at: usize, message: &str) {
        self.faults.push((at, message.into()));
    }

    fn take(&mut self, event: Event<'_>, range: Range<usize>) {
        match event {
            Event::Start(tag) => self.open(tag, range.start),
            Event::End(tag) => self.close(tag),
            Event::Text(text) => {
                self.words += text.split_whitespace().count();
                self.top().inlines.push(Inline::Text(text.into_string()));
            }
            Event::SoftBreak => self.top().inlines.push(Inline::Text(" ".into())),
            Event::Html(_) | Event::InlineHtml(_) => {
                self.refuse(range.start, "HTML does not belong in a lesson; write Markdown");
            }
            _ => self.refuse(range.start, "this kind of Markdown is not used in lessons; use headings, paragraphs, lists, tables and quotations"),
        }
    }

    fn open(&mut self, tag: Tag<'_>, at: usize) {
        let kind = match tag {
            Tag::Heading {
                level: HeadingLevel::H1,
                ..
            } => Kind::Title,
            Tag::Heading {
                level: HeadingLevel::H2,
                ..
            } => Kind::Heading(2),
            Tag::Heading {
                level: HeadingLevel::H3,
                ..
            } => Kind::Heading(3),
            Tag::Paragraph => Kind::Paragraph,
            Tag::List(start) => Kind::List(start.is_some()),
            Tag::Item => Kind::Entry,
            Tag::BlockQuote(_) => Kind::Aside,
            Tag::Table(_) => Kind::Table,
            Tag::TableHead => Kind::Row(true),
            Tag::TableRow => Kind::Row(false),
            Tag::TableCell => Kind::Cell,
            Tag::Emphasis => Kind::Emphasis,
            Tag::Strong => Kind::Strong,
            Tag::Link { dest_url, .. } => Kind::Link(dest_url.into_string(), at),
            Tag::HtmlBlock => Kind::Refused,
            Tag::Image { .. } => {
                self.refuse(
                    at,
                    "images are not loaded from elsewhere; '::drawings' shows the drawings of items",
                );
                Kind::Refused
            }
            _ => {
                self.refuse(at, "this kind of Markdown is not used in lessons; use headings, paragraphs, lists, tables and quotations");
                Kind::Refused
            }
        };
        let mut frame = Frame::new(kind);
        frame.start = at;
        self.frames.push(frame);
    }

    fn close(&mut self, _tag: TagEnd) {
        let Some(mut frame) = self.frames.pop() else {
            return;
        };
        let inlines = std::mem::take(&mut frame.inlines);
        match frame.kind {
            Kind::Title => self.title = plain(&inlines),
            Kind::Heading(level) => self.top().blocks.push(Block::Heading(level, inlines)),
            Kind::Paragraph => self.paragraph(inlines, frame.start),
            Kind::List(numbered) => self.top().blocks.push(Block::List(numbered, frame.entries)),
            Kind::Entry => {
                frame.inlines = inlines;
                frame.settle();
                self.top().entries.push(frame.blocks);
            }
            Kind::Aside => self.top().blocks.push(Block::Aside(frame.blocks)),
            Kind::Table => {
                let mut rows = frame.rows;
                let head = if rows.is_empty() {
                    Vec::new()
                } else {
                    rows.remove(0)
                };
                self.top().blocks.push(Block::Table(head, rows));
            }
            Kind::Row(_) => self.top().rows.push(frame.cells),
            Kind::Cell => self.top().cells.push(inlines),
            Kind::Emphasis => self.top().inlines.push(Inline::Emphasis(inlines)),
            Kind::Strong => self.top().inlines.push(Inline::Strong(inlines)),
            Kind::Link(to, at) => self.link(&to, at, inlines),
            Kind::Root | Kind::Refused => {}
        }
    }

    fn link(&mut self, to: &str, at: usize, inlines: Vec<Inline>) {
        let inline = match to.split_once(':') {
            Some(("item", id)) => Inline::Item(ItemId(id.into()), inlines),
            Some(("procedure", id)) => Inline::Procedure(ProcedureId(id.into()), inlines),
            Some(("source", id)) => Inline::Source(SourceId(id.into())),
            Some(("https", _)) => Inline::Link(to.into(), inlines),
            other => {
                let message = match other.map(|(scheme, _)| scheme.trim().to_lowercase()) {
                    Some(scheme) if scheme.len() < 20 => format!(
                        "a link to '{scheme}:' is refused; a link goes to item:, procedure:, source: or an https address"
                    ),
                    _ => "a link goes to item:, procedure:, source: or an https address".into(),
                };
                return self.refuse(at, &message);
            }
        };
        self.top().inlines.push(inline);
    }

    fn paragraph(&mut self, inlines: Vec<Inline>, at: usize) {
        let text = plain(&inlines);
        let Some(directive) = text.strip_prefix("::") else {
            return self.top().blocks.push(Block::Paragraph(inlines));
        };
        let (name, rest) = directive.split_once(' ').unwrap_or((directive, ""));
        match self.directive(name, rest.trim()) {
            Ok(block) => self.top().blocks.push(block),
            Err(message) => self.refuse(at, &message),
        }
    }

    fn directive(&self, name: &str, rest: &str) -> Result<Block, String> {
        let own = || {
            self.procedure.cloned().ok_or(format!(
                "'::{name}' stands only in a procedure's lesson; here there is no procedure to derive it from"
            ))
        };
        match name {
            "tray" => Ok(Block::Tray(if rest.is_empty() {
                own()?
            } else {
                ProcedureId(rest.into())
            })),
            "steps" => Ok(Block::Steps(
                own()?,
                (!rest.is_empty()).then(|| rest.into()),
            )),
            "advice" => Ok(Block::Advice(own()?)),
            "slips" => Ok(Block::Slips(own()?)),
            "mixing" => Ok(Block::Mixing(ItemId(rest.into()))),
            "drawings" => Ok(Block::Drawings(
                rest.split_whitespace().map(ItemId::from).collect(),
            )),
            "ask" => match rest.split_once('?') {
                Some((question, answer)) if !answer.trim().is_empty() => Ok(Block::Ask(
                    format!("{}?", question.trim()),
                    answer.trim().into(),
                )),
                _ => Err("write '::ask Question? Answer.'".into()),
            },
            _ => Err(format!(
                "'::{name}' is not known; there are ::tray, ::steps, ::advice, ::slips, ::mixing, ::drawings and ::ask"
            )),
        }
    }
}

#[cfg(test)]
mod tests;

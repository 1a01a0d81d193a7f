//! Lessons: everything they point to exists.

use super::Checker;
use crate::{
    Catalogue,
    lesson::{Block, Inline},
};

/// A reference in a lesson: what kind, and the id.
enum Reference<'l> {
    Item(&'l str),
    Procedure(&'l str),
    Source(&'l str),
    Phase(&'l str, &'l str),
    Mixing(&'l str),
}

impl Checker<'_, '_> {
    pub(super) fn lessons(&mut self, catalogue: &Catalogue) {
        for (i, lesson) in catalogue.lessons.iter().enumerate() {
            let mut references = Vec::new();
            blocks(&lesson.blocks, &mut references);
            for reference in references {
                if let Some((near, message)) = fault(&reference, catalogue) {
                    self.reading.report_in_lesson(i, near, message);
                }
            }
        }
    }
}

fn fault<'l>(reference: &Reference<'l>, catalogue: &Catalogue) -> Option<(&'l str, String)> {
    match *reference {
        Reference::Item(id) => catalogue
            .item(&id.into())
            .is_none()
            .then(|| (id, format!("there is no item '{id}'"))),
        Reference::Procedure(id) => catalogue
            .procedure(&id.into())
            .is_none()
            .then(|| (id, format!("there is no procedure '{id}'"))),
        Reference::Source(id) => catalogue.source(&id.into()).is_none().then(|| {
            (
                id,
                format!("there is no source '{id}'; add it to sources.toml"),
            )
        }),
        Reference::Phase(id, phase) => {
            let procedure = catalogue.procedure(&id.into())?;
            let known = procedure.steps.iter().any(|s| s.phase == phase);
            (!known).then(|| {
                (
                    phase,
                    format!(
                        "'{id}' has no phase '{phase}'; '::steps' names a phase as the steps do"
                    ),
                )
            })
        }
        Reference::Mixing(id) => {
            let mixes = catalogue
                .material(&id.into())
                .is_some_and(|m| m.mixing.is_some());
            (!mixes).then(|| (id, format!("'{id}' is no material with mixing data")))
        }
    }
}

fn blocks<'l>(all: &'l [Block], into: &mut Vec<Reference<'l>>) {
    for block in all {
        match block {
            Block::Heading(_, text) | Block::Paragraph(text) => inlines(text, into),
            Block::List(_, entries) => entries.iter().for_each(|e| blocks(e, into)),
            Block::Aside(inner) => blocks(inner, into),
            Block::Table(head, rows) => {
                head.iter()
                    .chain(rows.iter().flatten())
                    .for_each(|cell| inlines(cell, into));
            }
            Block::Tray(id) | Block::Advice(id) | Block::Slips(id) => {
                into.push(Reference::Procedure(id.as_str()));
            }
            Block::Steps(id, phase) => {
                into.push(Reference::Procedure(id.as_str()));
                into.extend(phase.as_deref().map(|p| Reference::Phase(id.as_str(), p)));
            }
            Block::Mixing(id) => into.push(Reference::Mixing(id.as_str())),
            Block::Drawings(ids) => into.extend(ids.iter().map(|id| Reference::Item(id.as_str()))),
            Block::Ask(..) => {}
        }
    }
}

fn inlines<'l>(all: &'l [Inline], into: &mut Vec<Reference<'l>>) {
    for inline in all {
        match inline {
            Inline::Text(_) => {}
            Inline::Emphasis(inner) | Inline::Strong(inner) | Inline::Link(_, inner) => {
                inlines(inner, into);
            }
            Inline::Item(id, inner) => {
                into.push(Reference::Item(id.as_str()));
                inlines(inner, into);
            }
            Inline::Procedure(id, inner) => {
                into.push(Reference::Procedure(id.as_str()));
                inlines(inner, into);
            }
            Inline::Source(id) => into.push(Reference::Source(id.as_str())),
        }
    }
}

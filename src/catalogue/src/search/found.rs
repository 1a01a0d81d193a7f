//! What a search can find.

use crate::{
    glossary::Term,
    lesson::{Block, Lesson, plain},
    lookup::Item,
    procedures::{Procedure, ProcedureKind, Step},
    rules::Rule,
    sources::Source,
    stops::Stop,
};

/// One thing that was found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Found<'c> {
    /// A treatment or set-up.
    Procedure(&'c Procedure),
    /// An instrument or material.
    Item(Item<'c>),
    /// A word of the trade.
    Term(&'c Term),
    /// A whole lesson.
    Lesson(&'c Lesson),
    /// A part of a lesson, from a heading on: the index of its block.
    Section(&'c Lesson, usize),
    /// A step of a procedure.
    Step(&'c Procedure, &'c Step),
    /// A rule of reasoning.
    Rule(&'c Rule),
    /// A moment at which the assistant speaks up.
    Moment(&'c Stop),
    /// A published source.
    Source(&'c Source),
}

/// What kind of thing was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A treatment.
    Treatment,
    /// A set-up that treatments share.
    SetUp,
    /// An instrument, device or disposable.
    Instrument,
    /// A material.
    Material,
    /// A word of the trade.
    Word,
    /// A lesson.
    Lesson,
    /// A part of a lesson.
    Section,
    /// A step.
    Step,
    /// A reason: why a rule holds.
    Reason,
    /// A moment to speak up.
    Moment,
    /// A source.
    Source,
}

impl Kind {
    /// What it is called on screen.
    pub fn label(self) -> &'static str {
        match self {
            Self::Treatment => "treatment",
            Self::SetUp => "set-up",
            Self::Instrument => "instrument",
            Self::Material => "material",
            Self::Word => "word",
            Self::Lesson => "lesson",
            Self::Section => "in a lesson",
            Self::Step => "step",
            Self::Reason => "reason",
            Self::Moment => "moment to speak up",
            Self::Source => "source",
        }
    }

    /// How much sooner things come than their parts do.
    pub(super) fn weight(self) -> u32 {
        match self {
            Self::Treatment => 24,
            Self::Instrument | Self::Material => 23,
            Self::Word | Self::SetUp | Self::Lesson => 22,
            Self::Section => 15,
            Self::Step | Self::Moment => 12,
            Self::Reason => 11,
            Self::Source => 9,
        }
    }
}

impl<'c> Found<'c> {
    /// What kind of thing it is.
    pub fn kind(self) -> Kind {
        match self {
            Self::Procedure(procedure) => match procedure.kind {
                ProcedureKind::Treatment => Kind::Treatment,
                ProcedureKind::SetUp => Kind::SetUp,
            },
            Self::Item(Item::Instrument(_)) => Kind::Instrument,
            Self::Item(Item::Material(_)) => Kind::Material,
            Self::Term(_) => Kind::Word,
            Self::Lesson(_) => Kind::Lesson,
            Self::Section(..) => Kind::Section,
            Self::Step(..) => Kind::Step,
            Self::Rule(_) => Kind::Reason,
            Self::Moment(_) => Kind::Moment,
            Self::Source(_) => Kind::Source,
        }
    }

    /// Its name, or its first words.
    pub fn title(self) -> String {
        match self {
            Self::Procedure(procedure) => procedure.name.clone(),
            Self::Item(item) => item.name().into(),
            Self::Term(term) => term.term.clone(),
            Self::Lesson(lesson) => lesson.title.clone(),
            Self::Section(lesson, at) => match lesson.blocks.get(at) {
                Some(Block::Heading(_, text)) => plain(text),
                _ => lesson.title.clone(),
            },
            Self::Step(_, step) => step.does.clone(),
            Self::Rule(rule) => rule.because.clone(),
            Self::Moment(stop) => stop.name.clone(),
            Self::Source(source) => source.title.clone(),
        }
    }

    /// What tells it from others of its name: its purpose, its meaning, or
    /// what it is part of.
    pub fn about(self) -> &'c str {
        match self {
            Self::Procedure(procedure) => &procedure.purpose,
            Self::Item(item) => item.purpose(),
            Self::Term(term) => &term.meaning,
            Self::Lesson(_) | Self::Rule(_) => "",
            Self::Section(lesson, _) => &lesson.title,
            Self::Step(procedure, _) => &procedure.name,
            Self::Moment(stop) => &stop.sees,
            Self::Source(source) => &source.part,
        }
    }
}

//! Finding one thing in the catalogue by its id.

use crate::{
    Catalogue,
    cases::CaseFrame,
    competencies::Competency,
    findings::Finding,
    glossary::Term,
    ids::{
        CaseId, CheckId, CompetencyId, FindingId, ItemId, LessonId, PlanId, ProcedureId, RuleId,
        SourceId, TermId,
    },
    items::{Instrument, Lookalike, Material, Place},
    lesson::Lesson,
    plans::{Check, Plan},
    procedures::Procedure,
    rules::Rule,
    sources::Source,
};

/// A thing on a tray: an instrument or a material.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Item<'c> {
    /// An instrument, device or disposable.
    Instrument(&'c Instrument),
    /// A material.
    Material(&'c Material),
}

impl<'c> Item<'c> {
    /// Its id.
    pub fn id(self) -> &'c ItemId {
        match self {
            Self::Instrument(i) => &i.id,
            Self::Material(m) => &m.id,
        }
    }

    /// Its name.
    pub fn name(self) -> &'c str {
        match self {
            Self::Instrument(i) => &i.name,
            Self::Material(m) => &m.name,
        }
    }

    /// The family it belongs to.
    pub fn family(self) -> &'c str {
        match self {
            Self::Instrument(i) => &i.family,
            Self::Material(m) => &m.family,
        }
    }

    /// What it is for.
    pub fn purpose(self) -> &'c str {
        match self {
            Self::Instrument(i) => &i.purpose,
            Self::Material(m) => &m.purpose,
        }
    }

    /// Where it waits.
    pub fn place(self) -> Place {
        match self {
            Self::Instrument(i) => i.place,
            Self::Material(m) => m.place,
        }
    }

    /// What it contains that rules and allergies care about.
    pub fn contains(self) -> &'c [crate::ids::SubstanceId] {
        match self {
            Self::Instrument(i) => &i.contains,
            Self::Material(m) => &m.contains,
        }
    }

    /// What is easily taken for it.
    pub fn lookalikes(self) -> &'c [Lookalike] {
        match self {
            Self::Instrument(i) => &i.lookalikes,
            Self::Material(m) => &m.lookalikes,
        }
    }

    /// Other names it goes by.
    pub fn also(self) -> &'c [String] {
        match self {
            Self::Instrument(i) => &i.also,
            Self::Material(m) => &m.also,
        }
    }

    /// Where its description is from.
    pub fn sources(self) -> &'c [SourceId] {
        match self {
            Self::Instrument(i) => &i.sources,
            Self::Material(m) => &m.sources,
        }
    }
}

macro_rules! find {
    ($($(#[$doc:meta])* $name:ident: $list:ident, $id:ty => $kind:ty;)*) => {
        impl Catalogue {$(
            $(#[$doc])*
            pub fn $name(&self, id: &$id) -> Option<&$kind> {
                self.$list.iter().find(|each| each.id == *id)
            }
        )*}
    };
}

find! {
    /// The source with this id.
    source: sources, SourceId => Source;
    /// The competency with this id.
    competency: competencies, CompetencyId => Competency;
    /// The finding with this id.
    finding: findings, FindingId => Finding;
    /// The instrument with this id.
    instrument: instruments, ItemId => Instrument;
    /// The material with this id.
    material: materials, ItemId => Material;
    /// The procedure or set-up with this id.
    procedure: procedures, ProcedureId => Procedure;
    /// The plan with this id.
    plan: plans, PlanId => Plan;
    /// The recall check or sign with this id.
    check: checks, CheckId => Check;
    /// The rule with this id.
    rule: rules, RuleId => Rule;
    /// The case frame with this id.
    case: cases, CaseId => CaseFrame;
    /// The lesson with this id.
    lesson: lessons, LessonId => Lesson;
    /// The word of the trade with this id.
    term: glossary, TermId => Term;
}

impl Catalogue {
    /// The instrument or material with this id.
    pub fn item(&self, id: &ItemId) -> Option<Item<'_>> {
        self.instrument(id)
            .map(Item::Instrument)
            .or_else(|| self.material(id).map(Item::Material))
    }

    /// Every instrument and material, instruments first.
    pub fn items(&self) -> impl Iterator<Item = Item<'_>> {
        self.instruments
            .iter()
            .map(Item::Instrument)
            .chain(self.materials.iter().map(Item::Material))
    }

    /// The name of an item, or its id where the catalogue has no such item.
    pub fn item_name<'c>(&'c self, id: &'c ItemId) -> &'c str {
        self.item(id).map_or(id.as_str(), Item::name)
    }

    /// The drawing of an item.
    pub fn drawing(&self, id: &ItemId) -> Option<&drawing::Drawing> {
        self.drawings
            .iter()
            .find_map(|(item, drawing)| (item == id).then_some(drawing))
    }
}

//! The catalogue laid out for writing questions: what is where, found at once.
//!
//! Made once for a bank. Everything in it is counted in one pass over the
//! catalogue, so that ten times the catalogue takes ten times as long.

mod layout;

use super::shape::apart;
use crate::question::Study;
use catalogue::{
    Catalogue, Item,
    ids::{CompetencyId, ItemId, LessonId, ProcedureId, SourceId},
    items::Place,
    procedures::{Procedure, ProcedureKind},
};
use clinic::{Clinic, Reason, patient::Patient};
use drawing::Drawing;
use std::collections::{HashMap, HashSet};

/// An item that a treatment needs for the usual patient, at its first use.
pub struct Laid {
    pub(crate) item: ItemId,
    pub(crate) stage: String,
    /// The procedure or set-up whose step uses it first.
    pub(crate) from: ProcedureId,
    pub(crate) reason: String,
    /// Whether it is used in more than one stage.
    pub(crate) again: bool,
}

/// The catalogue laid out for writing.
pub struct Desk {
    pub(crate) clinic: Clinic,
    pub(crate) usual: Patient,
    items: HashMap<ItemId, usize>,
    procedures: HashMap<ProcedureId, usize>,
    families: HashMap<String, Vec<ItemId>>,
    /// By procedure: what it uses for some patient, set-ups included.
    any: Vec<HashSet<ItemId>>,
    /// By item: the treatments that use it for some patient.
    users: HashMap<ItemId, Vec<usize>>,
    /// By procedure: what lies on its tray; empty for set-ups.
    laid: Vec<Vec<Laid>>,
    lessons: HashSet<LessonId>,
    /// By item: the set-ups whose own steps use it.
    sets: HashMap<ItemId, Vec<ProcedureId>>,
    /// By item: its drawing without what is written on it.
    shapes: HashMap<ItemId, Drawing>,
}

impl Desk {
    pub(crate) fn catalogue(&self) -> &Catalogue {
        self.clinic.catalogue()
    }

    pub(crate) fn item(&self, id: &str) -> Option<Item<'_>> {
        let at = *self.items.get(&ItemId::from(id))?;
        let catalogue = self.catalogue();
        let instruments = catalogue.instruments.len();
        if at < instruments {
            Some(Item::Instrument(&catalogue.instruments[at]))
        } else {
            Some(Item::Material(&catalogue.materials[at - instruments]))
        }
    }

    pub(crate) fn name<'d>(&'d self, id: &'d ItemId) -> &'d str {
        self.item(id.as_str()).map_or(id.as_str(), Item::name)
    }

    pub(crate) fn procedure(&self, id: &str) -> Option<&Procedure> {
        let at = *self.procedures.get(&ProcedureId::from(id))?;
        self.catalogue().procedures.get(at)
    }

    pub(crate) fn treatments(&self) -> impl Iterator<Item = &Procedure> {
        let all = self.catalogue().procedures.iter();
        all.filter(|p| p.kind == ProcedureKind::Treatment)
    }

    /// A treatment by its id.
    pub(crate) fn treatment(&self, id: &str) -> Option<&Procedure> {
        self.procedure(id)
            .filter(|p| p.kind == ProcedureKind::Treatment)
    }

    /// The items of a family.
    pub(crate) fn family(&self, family: &str) -> &[ItemId] {
        self.families.get(family).map_or(&[], Vec::as_slice)
    }

    /// What lies on the tray of a treatment for the usual patient, in order of first use.
    pub(crate) fn laid(&self, procedure: &ProcedureId) -> &[Laid] {
        self.procedures
            .get(procedure)
            .map_or(&[], |at| self.laid[*at].as_slice())
    }

    /// Whether a procedure uses an item for any patient, at any step, set-ups included.
    pub(crate) fn uses(&self, procedure: &ProcedureId, item: &ItemId) -> bool {
        self.procedures
            .get(procedure)
            .is_some_and(|at| self.any[*at].contains(item))
    }

    /// Items that a treatment uses for no patient, the closest to `near` first:
    /// its lookalikes, its family, what lies beside it elsewhere, then others by chance.
    pub(crate) fn foreign(
        &self,
        procedure: &ProcedureId,
        near: Item<'_>,
        chance: &mut clinic::case::Seed,
    ) -> Vec<(Item<'_>, f32)> {
        let mut found: Vec<(Item<'_>, f32)> = Vec::new();
        let mut add = |id: &ItemId, close: f32| {
            if id != near.id()
                && !self.uses(procedure, id)
                && let Some(item) = self.item(id.as_str())
                && item.place() == Place::Tray
                && !found.iter().any(|(f, _)| f.id() == id)
            {
                found.push((item, close));
            }
        };
        for other in near.lookalikes() {
            add(&other.item, 0.9);
        }
        let family = self.family(near.family());
        let start = chance.below(family.len());
        for id in family.iter().cycle().skip(start).take(family.len().min(20)) {
            add(id, 0.7);
        }
        // What lies beside it on the trays of other treatments is more tempting
        // than anything else.
        let users = self.users.get(near.id()).map_or(&[][..], Vec::as_slice);
        for _ in 0..10 {
            let beside = chance
                .pick(users)
                .and_then(|at| chance.pick(&self.laid[*at]));
            if let Some(laid) = beside {
                add(&laid.item, 0.5);
            }
        }
        let catalogue = self.catalogue();
        for _ in 0..6 {
            if let Some(other) = chance.pick(&catalogue.instruments) {
                add(&other.id, 0.3);
            }
            if let Some(other) = chance.pick(&catalogue.materials) {
                add(&other.id, 0.3);
            }
        }
        found
    }

    /// The drawing of an item without labels and engraved numbers.
    pub(crate) fn shape(&self, id: &ItemId) -> Option<&Drawing> {
        self.shapes.get(id)
    }

    /// Whether two drawings can be told apart by their shapes alone.
    pub(crate) fn apart(a: &Drawing, b: &Drawing) -> bool {
        apart(a, b)
    }

    /// How close two items are, from 0 to 1.
    pub(crate) fn close(a: Item<'_>, b: Item<'_>) -> f32 {
        if a.lookalikes().iter().any(|l| l.item == *b.id()) {
            0.9
        } else if a.family() == b.family() {
            0.7
        } else {
            0.35
        }
    }

    /// The competency that laying an item shows: that of the set-up that brings
    /// it, or of laying trays.
    pub(crate) fn laying(&self, from: &ProcedureId) -> CompetencyId {
        match self.procedure(from.as_str()) {
            Some(p) if p.kind == ProcedureKind::SetUp => p.competency.clone(),
            _ => "tray-set-ups".into(),
        }
    }

    /// The competency that knowing an item shows: that of materials, that of the
    /// one set-up that uses it, or that of laying trays.
    pub(crate) fn knowing(&self, item: Item<'_>) -> CompetencyId {
        if let Item::Material(_) = item {
            return "materials".into();
        }
        match self.sets.get(item.id()).map(Vec::as_slice) {
            Some([only]) if self.families_of(only).contains(item.family()) => self.laying(only),
            _ => "tray-set-ups".into(),
        }
    }

    /// The families that a set-up draws most of its items from.
    fn families_of(&self, set: &ProcedureId) -> HashSet<&str> {
        let uses = self
            .procedure(set.as_str())
            .map(super::texts::own_uses)
            .unwrap_or_default();
        let families: Vec<&str> = uses
            .iter()
            .filter_map(|u| Some(self.item(u.item.as_str())?.family()))
            .collect();
        let often = |family: &&str| families.iter().filter(|f| *f == family).count() >= 3;
        families.iter().copied().filter(often).collect()
    }

    /// The reason that the steps of a procedure give, with their sources.
    pub(crate) fn by(procedure: &Procedure, because: impl Into<String>) -> Vec<Reason> {
        Self::reason(because, &procedure.sources)
    }

    /// A reason with its sources; custom of the trade where none is named.
    pub(crate) fn reason(because: impl Into<String>, sources: &[SourceId]) -> Vec<Reason> {
        let sources = if sources.is_empty() {
            vec!["common-practice".into()]
        } else {
            sources.to_vec()
        };
        vec![Reason {
            because: super::text::sentence(&because.into()),
            sources,
            rule: None,
        }]
    }

    /// What to study about a procedure, and about an item of it.
    pub(crate) fn study(procedure: Option<&Procedure>, item: Option<&ItemId>) -> Vec<Study> {
        let procedure = procedure.map(|p| Study::Procedure(p.id.clone()));
        let item = item.map(|i| Study::Item(i.clone()));
        procedure.into_iter().chain(item).collect()
    }

    /// A lesson to study, if it is there.
    pub(crate) fn lesson(&self, id: &str) -> Vec<Study> {
        let id = LessonId::from(id);
        self.lessons
            .contains(&id)
            .then_some(Study::Lesson(id))
            .into_iter()
            .collect()
    }
}

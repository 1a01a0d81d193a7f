//! The tray of a procedure for a patient: derived from the steps, in order of
//! first use, with the reason for each item.

mod steps;

pub use steps::PlacedStep;
pub(crate) use steps::changed;

use crate::{
    Clinic, Reason,
    patient::Patient,
    preference::{Refusal, Swap},
    sequence::Target,
};
use catalogue::{
    Item,
    ids::{ItemId, ProcedureId},
    items::Place,
    procedures::{Procedure, Use},
};

/// Whether an item is used for certain.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Need {
    /// A step uses it.
    Needed,
    /// It lies ready in case the dentist calls for it.
    IfCalled,
}

/// An item on the tray.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TrayItem {
    /// The item.
    pub item: ItemId,
    /// Whether it is used for certain.
    pub need: Need,
    /// Why it is there, as the end of 'It is there …'.
    pub reason: String,
    /// Where it waits.
    pub place: Place,
    /// The set-up that brings it, if one does.
    pub set: Option<ProcedureId>,
}

/// A stage of use.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stage {
    /// Its title.
    pub title: String,
    /// Its items, in order of first use.
    pub items: Vec<TrayItem>,
}

/// An item that went or was exchanged for this patient.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// What the standard set-up has.
    pub from: ItemId,
    /// What takes its place; none where it is left out.
    pub to: Option<ItemId>,
    /// Why.
    pub reason: Reason,
}

/// The tray of a procedure for a patient.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Tray {
    /// The stages in order of use.
    pub stages: Vec<Stage>,
    /// What differs from the standard set-up.
    pub changes: Vec<Change>,
    /// Pairs that have to stand in order, with the reason.
    pub must_before: Vec<(ItemId, ItemId, String)>,
    /// Wishes of a preference card that were refused.
    pub refused: Vec<Refusal>,
}

impl Tray {
    /// All items in order of use, with the title of their stage.
    pub fn items(&self) -> impl Iterator<Item = (&str, &TrayItem)> {
        self.stages
            .iter()
            .flat_map(|s| s.items.iter().map(move |i| (s.title.as_str(), i)))
    }

    /// What a student has to lay: the needed items that wait on the tray, by stage.
    pub fn target(&self) -> Target<ItemId> {
        let laid = |i: &&TrayItem| i.need == Need::Needed && i.place == Place::Tray;
        Target {
            stages: self
                .stages
                .iter()
                .map(|s| {
                    s.items
                        .iter()
                        .filter(laid)
                        .map(|i| i.item.clone())
                        .collect()
                })
                .collect(),
            must_before: self
                .must_before
                .iter()
                .map(|(a, b, _)| (a.clone(), b.clone()))
                .collect(),
        }
    }

    /// What may lie there and counts neither way: items to be called for, and
    /// those that wait at the unit or are worn.
    pub fn neutral(&self) -> Vec<ItemId> {
        self.items()
            .filter(|(_, i)| i.need == Need::IfCalled || i.place != Place::Tray)
            .map(|(_, i)| i.item.clone())
            .collect()
    }
}

impl Clinic {
    /// The tray of a procedure for a patient.
    pub fn tray(&self, procedure: &ProcedureId, patient: &Patient) -> Tray {
        let mut tray = Tray::default();
        let (steps, swaps) = self.carded_steps(procedure, patient);
        for placed in &steps {
            for each in &placed.step.uses.0 {
                self.lay(&mut tray, placed, each, Need::Needed);
            }
        }
        let needed: Vec<ItemId> = tray.items().map(|(_, i)| i.item.clone()).collect();
        for placed in &steps {
            for each in placed
                .step
                .at_hand
                .0
                .iter()
                .filter(|u| !needed.contains(&u.item))
            {
                self.lay(&mut tray, placed, each, Need::IfCalled);
            }
        }
        let order: Vec<&str> = steps.iter().map(|s| s.stage.as_str()).collect();
        let place = |title: &str| order.iter().position(|s| *s == title);
        tray.stages.sort_by_key(|s| place(&s.title));
        if let Some(procedure) = self.catalogue.procedure(procedure) {
            self.note_changes(procedure, patient, &mut tray);
        }
        for swap in swaps {
            self.note_swap(swap, &mut tray);
        }
        self.grant(procedure, patient, &mut tray);
        tray
    }

    /// Notes a preferred material: it stands in the order where the standard one stood.
    fn note_swap(&self, swap: Swap, tray: &mut Tray) {
        for (first, then, _) in &mut tray.must_before {
            for own in [first, then] {
                if *own == swap.from {
                    *own = swap.to.clone();
                }
            }
        }
        tray.changes.push(Change {
            from: swap.from,
            to: Some(swap.to),
            reason: self.card_reason(),
        });
    }

    fn lay(&self, tray: &mut Tray, placed: &PlacedStep, each: &Use, need: Need) {
        if tray.items().any(|(_, i)| i.item == each.item) {
            return;
        }
        let item = TrayItem {
            item: each.item.clone(),
            need,
            reason: each.reason.clone(),
            place: self
                .catalogue
                .item(&each.item)
                .map_or(Place::Tray, Item::place),
            set: placed.set.clone(),
        };
        match tray.stages.iter_mut().find(|s| s.title == placed.stage) {
            Some(stage) => stage.items.push(item),
            None => tray.stages.push(Stage {
                title: placed.stage.clone(),
                items: vec![item],
            }),
        }
    }

    /// Notes the variations that took effect and the pairs that have to stand in order.
    fn note_changes(&self, procedure: &Procedure, patient: &Patient, tray: &mut Tray) {
        for variation in procedure
            .variations
            .iter()
            .filter(|v| self.applies(Some(&v.when), patient))
        {
            let change = Change {
                from: variation.instead_of.clone(),
                to: variation.take.clone(),
                reason: Reason {
                    because: variation.because.clone(),
                    sources: variation.sources.clone(),
                    rule: None,
                },
            };
            let shows = match &change.to {
                Some(to) => tray.items().any(|(_, i)| i.item == *to),
                None => true,
            };
            if shows && !tray.changes.contains(&change) {
                tray.changes.push(change);
            }
        }
        for pair in &procedure.must_before {
            tray.must_before
                .push((pair.first.clone(), pair.then.clone(), pair.because.clone()));
        }
        let included = procedure
            .steps
            .iter()
            .filter(|s| self.applies(s.when.as_ref(), patient))
            .filter_map(|s| self.catalogue.procedure(s.include.as_ref()?));
        for inner in included {
            self.note_changes(inner, patient, tray);
        }
    }
}

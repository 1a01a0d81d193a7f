//! Laying a catalogue out, in one pass.

use super::{Desk, Laid};
use crate::families::{shape::bare, texts};
use catalogue::{
    Item,
    ids::ItemId,
    items::Place,
    procedures::{Procedure, ProcedureKind},
};
use clinic::Clinic;
use std::collections::{HashMap, HashSet};

impl Desk {
    /// Lays a catalogue out, with a pause after each of its parts.
    pub async fn in_slices(clinic: &Clinic, pause: &mut impl AsyncFnMut()) -> Self {
        let clinic = clinic.with_card(None);
        let catalogue = clinic.catalogue().clone();
        let usual = clinic.reason(&clinic.usual_patient()).patient;
        let mut families: HashMap<String, Vec<ItemId>> = HashMap::new();
        for item in catalogue.items() {
            families
                .entry(item.family().into())
                .or_default()
                .push(item.id().clone());
        }
        let mut desk = Self {
            usual,
            items: catalogue
                .items()
                .enumerate()
                .map(|(i, item)| (item.id().clone(), i))
                .collect(),
            procedures: catalogue
                .procedures
                .iter()
                .enumerate()
                .map(|(i, p)| (p.id.clone(), i))
                .collect(),
            families,
            any: Vec::new(),
            users: HashMap::new(),
            laid: Vec::new(),
            sets: HashMap::new(),
            shapes: catalogue
                .drawings
                .iter()
                .map(|(id, d)| (id.clone(), bare(d)))
                .collect(),
            lessons: catalogue.lessons.iter().map(|l| l.id.clone()).collect(),
            clinic,
        };
        for set in catalogue
            .procedures
            .iter()
            .filter(|p| p.kind == ProcedureKind::SetUp)
        {
            for each in texts::own_uses(set) {
                let sets = desk.sets.entry(each.item.clone()).or_default();
                sets.push(set.id.clone());
            }
        }
        for procedure in &catalogue.procedures {
            pause().await;
            let uses = desk.all_uses(procedure);
            desk.any.push(uses);
        }
        for (at, any) in desk.any.iter().enumerate() {
            if catalogue.procedures[at].kind == ProcedureKind::Treatment {
                for item in any {
                    desk.users.entry(item.clone()).or_default().push(at);
                }
            }
        }
        for procedure in &catalogue.procedures {
            pause().await;
            let laid = desk.lay(procedure);
            desk.laid.push(laid);
        }
        desk
    }

    fn all_uses(&self, procedure: &Procedure) -> HashSet<ItemId> {
        let mut all = HashSet::new();
        for step in &procedure.steps {
            all.extend(
                step.uses
                    .0
                    .iter()
                    .chain(&step.at_hand.0)
                    .map(|u| u.item.clone()),
            );
            if let Some(inner) = step
                .include
                .as_ref()
                .and_then(|id| self.procedure(id.as_str()))
            {
                all.extend(self.all_uses(inner));
            }
        }
        all.extend(procedure.variations.iter().filter_map(|v| v.take.clone()));
        all
    }

    fn lay(&self, procedure: &Procedure) -> Vec<Laid> {
        if procedure.kind != ProcedureKind::Treatment {
            return Vec::new();
        }
        let mut laid: Vec<Laid> = Vec::new();
        let mut at: HashMap<ItemId, usize> = HashMap::new();
        for placed in self.clinic.steps(&procedure.id, &self.usual) {
            for each in placed.step.uses.0 {
                if let Some(first) = at.get(&each.item) {
                    laid[*first].again |= laid[*first].stage != placed.stage;
                } else if self.item(each.item.as_str()).map(Item::place) == Some(Place::Tray) {
                    at.insert(each.item.clone(), laid.len());
                    laid.push(Laid {
                        item: each.item,
                        stage: placed.stage.clone(),
                        from: placed.procedure.clone(),
                        reason: each.reason,
                        again: false,
                    });
                }
            }
        }
        laid
    }
}

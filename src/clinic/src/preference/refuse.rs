//! Why a wish about an item is not granted: a substance that the patient must not
//! meet, a critical step that counts on the item, or an order that has to stand.

use crate::{Clinic, Reason, engine::Conclusions, patient::Patient, tray::Tray};
use catalogue::{
    ids::{ItemId, ProcedureId},
    preference::Wish,
};

impl Clinic {
    /// Why a wish is not granted for this patient and tray.
    pub(super) fn refusal(
        &self,
        wish: &Wish,
        procedure: &ProcedureId,
        patient: &Patient,
        tray: &Tray,
    ) -> Option<Reason> {
        let all = self.reason(patient);
        let (comes, goes) = match wish {
            Wish::Exchange {
                instead_of, take, ..
            } => {
                // An exchange within one kind keeps what the step needs.
                let kin = self.kin(instead_of, take);
                (Some(take), (!kin).then_some(instead_of))
            }
            Wish::Add { item, .. } => (Some(item), None),
            Wish::LeaveOut { item, .. } => (None, Some(item)),
            Wish::Before { first, then } => return self.order_refusal(first, then, tray),
            _ => (None, None),
        };
        comes
            .and_then(|item| self.allergen(&all, item))
            .or_else(|| goes.and_then(|item| self.needed_by(procedure, patient, item, tray)))
    }

    fn kin(&self, one: &ItemId, other: &ItemId) -> bool {
        let family = |id: &ItemId| self.catalogue.item(id).map(|i| i.family().to_owned());
        family(one).is_some() && family(one) == family(other)
    }

    pub(super) fn allergen(&self, all: &Conclusions, item: &ItemId) -> Option<Reason> {
        let item = self.catalogue.item(item)?;
        self.avoided(all)
            .into_iter()
            .find(|(s, _)| item.contains().contains(s))
            .map(|(_, r)| r)
    }

    /// The critical step, or the pair that has to stand in order, that counts on an item.
    fn needed_by(
        &self,
        procedure: &ProcedureId,
        patient: &Patient,
        item: &ItemId,
        tray: &Tray,
    ) -> Option<Reason> {
        let pair = tray.must_before.iter().find(|(first, ..)| first == item);
        if let Some((.., because)) = pair {
            return Some(Reason {
                because: because.clone(),
                sources: Vec::new(),
                rule: None,
            });
        }
        let steps = self.steps_of(procedure, patient);
        let step = steps
            .iter()
            .find(|s| s.step.critical && s.step.uses.0.iter().any(|u| u.item == *item))?;
        Some(Reason {
            because: format!("A critical step needs it: {}", step.step.does),
            sources: self.catalogue.procedure(&step.procedure)?.sources.clone(),
            rule: None,
        })
    }

    fn order_refusal(&self, first: &ItemId, then: &ItemId, tray: &Tray) -> Option<Reason> {
        let standing = tray
            .must_before
            .iter()
            .find(|(a, b, _)| a == then && b == first)?;
        let name = |id: &ItemId| self.catalogue.item_name(id).to_lowercase();
        Some(Reason {
            because: format!(
                "The {} has to come before the {}: {}",
                name(then),
                name(first),
                standing.2
            ),
            sources: Vec::new(),
            rule: None,
        })
    }
}

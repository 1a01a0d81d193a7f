//! Wishes about the items of a tray: granted one after another, in the order of the card.

use super::{Judged, Refusal};
use crate::{
    Clinic,
    patient::Patient,
    tray::{Change, Need, Tray, TrayItem},
};
use catalogue::{
    Item,
    ids::{ItemId, ProcedureId},
    items::Place,
    preference::Wish,
};

impl Clinic {
    /// Grants the wishes that concern a tray, and notes those refused.
    pub(crate) fn grant(&self, procedure: &ProcedureId, patient: &Patient, tray: &mut Tray) {
        for (place, wish) in self.wishes() {
            let here = |procedures: &[ProcedureId]| {
                procedures.is_empty() || procedures.contains(procedure)
            };
            // A wish about what does not lie there has nothing to change.
            let lies = |item: &ItemId| tray.items().any(|(_, i)| i.item == *item);
            let concerned = match wish {
                Wish::Exchange {
                    instead_of,
                    procedures,
                    ..
                } => here(procedures) && lies(instead_of),
                Wish::Add {
                    beside, procedures, ..
                } => here(procedures) && lies(beside),
                Wish::LeaveOut { item, procedures } => here(procedures) && lies(item),
                Wish::Before { first, then } => lies(first) && lies(then),
                Wish::Dam { always: false } => {
                    if let Some(reason) = self.dam_refusal(patient, procedure) {
                        tray.refused.push(Refusal {
                            wish: place,
                            reason,
                        });
                    }
                    continue;
                }
                Wish::PreferPlan { plan } => {
                    self.note_plan((place, plan), procedure, patient, tray);
                    continue;
                }
                Wish::Prefer { item, role } => {
                    let steps = self.steps_of(procedure, &self.isolated(patient, procedure));
                    if let Judged::Refused(reason) =
                        self.judged((item, *role), procedure, patient, &steps)
                    {
                        tray.refused.push(Refusal {
                            wish: place,
                            reason,
                        });
                    }
                    continue;
                }
                _ => continue,
            };
            if !concerned {
                continue;
            }
            match self.refusal(wish, procedure, patient, tray) {
                Some(reason) => tray.refused.push(Refusal {
                    wish: place,
                    reason,
                }),
                None => self.carry_out(wish, tray),
            }
        }
    }

    fn carry_out(&self, wish: &Wish, tray: &mut Tray) {
        match wish {
            Wish::Exchange {
                instead_of, take, ..
            } => {
                let already = tray.items().any(|(_, i)| i.item == *take);
                for stage in &mut tray.stages {
                    if already {
                        stage.items.retain(|i| i.item != *instead_of);
                    }
                    for laid in stage.items.iter_mut().filter(|i| i.item == *instead_of) {
                        laid.item = take.clone();
                    }
                }
                tray.changes.push(Change {
                    from: instead_of.clone(),
                    to: Some(take.clone()),
                    reason: self.card_reason(),
                });
            }
            Wish::LeaveOut { item, .. } => {
                for stage in &mut tray.stages {
                    stage.items.retain(|i| i.item != *item);
                }
                tray.changes.push(Change {
                    from: item.clone(),
                    to: None,
                    reason: self.card_reason(),
                });
            }
            Wish::Add { item, beside, .. } => self.add(item, beside, tray),
            Wish::Before { first, then } => {
                tray.must_before
                    .push((first.clone(), then.clone(), self.card_reason().because));
                move_before(first, then, tray);
            }
            _ => {}
        }
    }

    fn add(&self, item: &ItemId, beside: &ItemId, tray: &mut Tray) {
        for stage in &mut tray.stages {
            if let Some(laid) = stage.items.iter_mut().find(|i| i.item == *item) {
                laid.need = Need::Needed;
                return;
            }
        }
        let Some(stage) = tray
            .stages
            .iter_mut()
            .find(|s| s.items.iter().any(|i| i.item == *beside))
        else {
            return;
        };
        let set = stage
            .items
            .iter()
            .find(|i| i.item == *beside)
            .and_then(|i| i.set.clone());
        stage.items.push(TrayItem {
            item: item.clone(),
            need: Need::Needed,
            reason: "because the preference card asks for it".into(),
            place: self.catalogue.item(item).map_or(Place::Tray, Item::place),
            set,
        });
    }
}

fn move_before(first: &ItemId, then: &ItemId, tray: &mut Tray) {
    let place = |id: &ItemId| {
        tray.stages
            .iter()
            .position(|s| s.items.iter().any(|i| i.item == *id))
    };
    let (Some(from), Some(to)) = (place(first), place(then)) else {
        return;
    };
    if from <= to {
        return;
    }
    let Some(at) = tray.stages[from]
        .items
        .iter()
        .position(|i| i.item == *first)
    else {
        return;
    };
    let laid = tray.stages[from].items.remove(at);
    tray.stages[to].items.insert(0, laid);
}

//! A preference card applied over the standard: what the dentist wants done
//! differently, for one patient. A wish that breaks a safety rule is refused,
//! with the rule; the rest of the card stands.

use crate::{
    Clinic, Reason,
    engine::Conclusions,
    layers::{LayerVerdict, Stack},
    patient::Patient,
    recall::Return,
    standing::Standing,
    tray::{Change, Need, PlacedStep, Tray, TrayItem},
};
use catalogue::{
    Item,
    ids::{ItemId, ProcedureId},
    items::{Place, Role},
    plans::Plan,
    preference::{Card, Wish},
};
use std::rc::Rc;

/// A wish that was not granted, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// The place of the wish on its card.
    pub wish: usize,
    /// Why not.
    pub reason: Reason,
}

impl Clinic {
    /// The same reasoning with a dentist's card over it.
    #[must_use]
    pub fn with_card(&self, card: Option<Card>) -> Self {
        Self {
            card: card.map(Rc::new),
            ..self.clone()
        }
    }

    /// The card that is applied, if one is.
    pub fn card(&self) -> Option<&Card> {
        self.card.as_deref()
    }

    fn wishes(&self) -> impl Iterator<Item = (usize, &Wish)> {
        self.card.iter().flat_map(|c| c.wishes.iter().enumerate())
    }

    fn card_reason(&self) -> Reason {
        let name = self.card().map(|c| c.name.clone()).unwrap_or_default();
        Reason {
            because: format!("The preference card asks for it: {name}."),
            sources: Vec::new(),
            rule: None,
        }
    }

    /// The patient as the card has the tooth isolated. 'Always' cannot place a
    /// dam on a tooth that holds none.
    pub(crate) fn isolated(&self, patient: &Patient, booked: &ProcedureId) -> Patient {
        let never = self
            .wishes()
            .any(|(_, w)| matches!(w, Wish::Dam { always: false }));
        if never && self.dam_refusal(patient, booked).is_none() {
            self.with(patient, "isolation", "cotton-rolls")
        } else {
            patient.clone()
        }
    }

    /// Why a dam cannot be left out: without it, what is otherwise open to this
    /// patient would do harm, or a step of the procedure itself counts on it.
    fn dam_refusal(&self, patient: &Patient, booked: &ProcedureId) -> Option<Reason> {
        let without = self.reason(&self.with(patient, "isolation", "cotton-rolls"));
        let open = self.open_plans(&self.reason(patient));
        let plan = self
            .plan_verdicts(&without)
            .into_iter()
            .find(|v| v.standing == Standing::Unsafe && open.contains(&v.plan));
        let plan = plan.and_then(|v| v.reasons.into_iter().next());
        let always = || {
            let steps = self.steps_of(booked, &without.patient);
            let dam = steps.iter().find(|s| {
                s.step.critical
                    && s.step
                        .uses
                        .0
                        .iter()
                        .any(|u| u.item.as_str() == "clamp-forceps")
            })?;
            Some(Reason {
                because: format!(
                    "A critical step of this procedure needs the dam: {}",
                    dam.step.does
                ),
                sources: self.catalogue.procedure(&dam.procedure)?.sources.clone(),
                rule: None,
            })
        };
        plan.or_else(always)
    }

    /// Hand-overs as the card has them.
    pub(crate) fn hand_overs(&self, steps: &mut [PlacedStep]) {
        for (_, wish) in self.wishes() {
            let Wish::HandOver { item, how } = wish else {
                continue;
            };
            for hand_over in steps
                .iter_mut()
                .filter_map(|s| s.step.hand_over.as_mut())
                .filter(|h| h.item == *item)
            {
                hand_over.how.clone_from(how);
            }
        }
    }

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

    /// Why a wish is not granted for this patient and tray.
    fn refusal(
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

    fn allergen(&self, all: &Conclusions, item: &ItemId) -> Option<Reason> {
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

    /// The verdicts on a role with the card's preference: what it prefers is
    /// right where it is admissible, and what was as good becomes acceptable.
    pub(crate) fn preferred(
        &self,
        role: Role,
        mut verdicts: Vec<LayerVerdict>,
    ) -> Vec<LayerVerdict> {
        let wanted = self.wishes().find_map(|(_, w)| match w {
            Wish::Prefer { item, role: own } if *own == role => Some(item),
            _ => None,
        });
        let Some(wanted) = wanted else {
            return verdicts;
        };
        let open = |v: &LayerVerdict| {
            v.item.as_ref() == Some(wanted) && v.standing <= Standing::Acceptable
        };
        if !verdicts.iter().any(open) {
            return verdicts;
        }
        for verdict in &mut verdicts {
            if verdict.item.as_ref() == Some(wanted) {
                verdict.standing = Standing::Right;
                verdict.reasons.insert(0, self.card_reason());
            } else if verdict.standing == Standing::Right {
                verdict.standing = Standing::Acceptable;
            }
        }
        verdicts
    }

    /// Why a preferred material is refused for a patient; none where it is admissible.
    pub fn preference_refusals(&self, all: &Conclusions) -> Vec<Refusal> {
        self.wishes()
            .filter_map(|(place, wish)| {
                let Wish::Prefer { item, role } = wish else {
                    return None;
                };
                let verdicts = self.layer_verdicts(all, *role, &Stack::default());
                let verdict = verdicts
                    .into_iter()
                    .find(|v| v.item.as_ref() == Some(item))?;
                let reason = verdict.reasons.into_iter().next()?;
                (verdict.standing > Standing::Acceptable).then_some(Refusal {
                    wish: place,
                    reason,
                })
            })
            .collect()
    }

    /// The return visit with the card's date, where some source wants a date in it.
    pub(crate) fn recalled(&self, plan: &Plan, mut visit: Return) -> Return {
        let wanted = self.wishes().find_map(|(_, w)| match w {
            Wish::Recall { plan: own, days } if *own == plan.id => Some(*days),
            _ => None,
        });
        if let Some(days) = wanted
            && visit
                .spans
                .iter()
                .any(|(span, _)| span.from <= days.to && days.from <= span.to)
        {
            visit.preferred = Some((days, self.card_reason()));
        }
        visit
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

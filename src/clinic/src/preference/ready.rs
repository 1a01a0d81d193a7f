//! The preferred material in the steps, so that it lies ready.
//!
//! How a material is mixed and placed is not known here. It is taken from the
//! procedure's own variation between the two, if it has one, and otherwise from
//! the steps of the catalogue that mix and place the preferred material, with
//! the facts of the material itself. What was standard stays at hand.

use super::Judged;
use crate::{
    Clinic,
    patient::Patient,
    tray::{PlacedStep, changed},
};
use catalogue::{
    Catalogue,
    ids::{ItemId, ProcedureId},
    items::{Material, Role},
    procedures::{Slip, Step, Use, Uses, Variation},
};

/// One material in the place of another, as a wish has it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Swap {
    /// What the standard has.
    pub from: ItemId,
    /// What is preferred.
    pub to: ItemId,
}

/// The steps that show how a material is mixed and how it is placed.
struct Shown<'c> {
    mix: &'c Step,
    place: Option<&'c Step>,
}

impl Clinic {
    /// Puts the preferred materials into the steps, where they may come first
    /// and it is known how they are brought to use; says what was exchanged.
    pub(crate) fn put_first(
        &self,
        procedure: &ProcedureId,
        patient: &Patient,
        steps: &mut [PlacedStep],
    ) -> Vec<Swap> {
        let mut swaps = Vec::new();
        for (_, item, role) in self.preferences() {
            if self.judged((item, role), procedure, patient, steps) != Judged::Open {
                continue;
            }
            let closing = self.closing_of(steps, self.plan_for(procedure));
            let standard = self.standard(steps, role, closing.as_ref());
            if standard.contains(item) {
                continue;
            }
            self.beside(steps, item, role);
            for from in standard {
                let closes = closing.as_ref() == Some(&from);
                if self.exchange(steps, &from, item, closes) {
                    let to = item.clone();
                    swaps.push(Swap { from, to });
                }
            }
        }
        swaps
    }

    /// What plays a role in the steps as they stand.
    fn standard(&self, steps: &[PlacedStep], role: Role, closing: Option<&ItemId>) -> Vec<ItemId> {
        let mut all: Vec<ItemId> = Vec::new();
        for each in steps.iter().flat_map(|s| &s.step.uses.0) {
            if plays(self.catalogue(), &each.item, role, closing) && !all.contains(&each.item) {
                all.push(each.item.clone());
            }
        }
        all
    }

    /// Where something for a role is only kept at hand, the preferred material waits before it.
    fn beside(&self, steps: &mut [PlacedStep], item: &ItemId, role: Role) {
        for at_hand in steps.iter_mut().map(|s| &mut s.step.at_hand.0) {
            let first = at_hand
                .iter()
                .position(|u| plays(self.catalogue(), &u.item, role, None));
            if let Some(first) = first
                && !at_hand.iter().any(|u| u.item == *item)
            {
                let reason = at_hand[first].reason.clone();
                let item = item.clone();
                at_hand.insert(first, Use { item, reason });
            }
        }
    }

    /// Exchanges a material in all steps that touch on it; false where nobody
    /// knows how the other is brought to use, and the steps stay as they are. What
    /// closes the tooth shapes the whole procedure, so that only the procedure's
    /// own variation can say it.
    fn exchange(&self, steps: &mut [PlacedStep], from: &ItemId, to: &ItemId, closes: bool) -> bool {
        let Some(material) = self.catalogue().material(to) else {
            return false;
        };
        let own = self.own_variations(steps, from, to);
        let shown = if closes { None } else { self.shown(to) };
        if own.is_empty() && shown.is_none() {
            return false;
        }
        for placed in steps.iter_mut().filter(|p| touches(&p.step, from)) {
            let own: Vec<&Variation> = own
                .iter()
                .filter(|(procedure, _)| *procedure == placed.procedure)
                .map(|(_, v)| *v)
                .collect();
            let reason = reason_of(&placed.step, from);
            let needed = placed.step.uses.0.iter().any(|u| u.item == *from);
            placed.step.at_hand.0.retain(|u| u.item != *to);
            match &shown {
                _ if !own.is_empty() => {
                    placed.step = changed(&placed.step, &own);
                    tell_of(&mut placed.step, from, material);
                }
                Some(shown) => as_shown(&mut placed.step, from, material, shown),
                None => continue,
            }
            if needed && !placed.step.uses.0.iter().any(|u| u.item == *to) {
                let item = to.clone();
                placed.step.uses.0.insert(0, Use { item, reason });
            }
            if needed {
                let reason = "if the dentist asks for it after all".into();
                let item = from.clone();
                placed.step.at_hand.0.push(Use { item, reason });
            }
        }
        true
    }

    /// The variations of the procedures concerned that take one material for the
    /// other, with what goes along with them for the same patients.
    fn own_variations(
        &self,
        steps: &[PlacedStep],
        from: &ItemId,
        to: &ItemId,
    ) -> Vec<(ProcedureId, &Variation)> {
        let mut all: Vec<(ProcedureId, &Variation)> = Vec::new();
        for placed in steps.iter().filter(|p| touches(&p.step, from)) {
            let id = &placed.procedure;
            let Some(procedure) = self.catalogue().procedure(id) else {
                continue;
            };
            let takes = |v: &&Variation| v.instead_of == *from && v.take.as_ref() == Some(to);
            let Some(main) = procedure.variations.iter().find(takes) else {
                continue;
            };
            if !all.iter().any(|(known, _)| known == id) {
                let along = procedure.variations.iter().filter(|v| v.when == main.when);
                all.extend(along.map(|v| (id.clone(), v)));
            }
        }
        all
    }

    /// The fullest step that mixes a material, and the step after it that places it.
    fn shown(&self, item: &ItemId) -> Option<Shown<'_>> {
        let mut best: Option<Shown<'_>> = None;
        for procedure in &self.catalogue().procedures {
            for (at, mix) in procedure.steps.iter().enumerate() {
                let fuller = |b: &Shown<'_>| mix.uses.0.len() > b.mix.uses.0.len();
                if mix.mixes.as_ref() == Some(item) && best.as_ref().is_none_or(fuller) {
                    let mut after = procedure.steps[at..].iter();
                    let place = after.find(|s| s.places.as_ref() == Some(item));
                    best = Some(Shown { mix, place });
                }
            }
        }
        best
    }
}

/// A step with the preferred material in it, brought to use as the catalogue shows it.
fn as_shown(step: &mut Step, from: &ItemId, to: &Material, shown: &Shown<'_>) {
    let all = |uses: &Uses| -> Vec<Use> {
        let others = uses.0.iter().filter(|u| u.item != *from);
        others.cloned().collect()
    };
    let mixed = step.mixes.as_ref() == Some(from);
    let placed = step.places.as_ref() == Some(from);
    if mixed {
        let reason = reason_of(step, from);
        let item = to.id.clone();
        step.uses = Uses(vec![Use { item, reason }]);
        let along = all(&shown.mix.uses).into_iter().filter(|u| u.item != to.id);
        step.uses.0.extend(along);
    } else if placed {
        if let Some(place) = shown.place {
            step.uses = Uses(all(&place.uses));
        }
    } else {
        for each in step.uses.0.iter_mut().filter(|u| u.item == *from) {
            each.item = to.id.clone();
        }
    }
    if step.hand_over.as_ref().is_some_and(|h| h.item != *from) && (mixed || placed) {
        step.hand_over = None;
    }
    tell_of(step, from, to);
}

/// The words of a step that was written for another material: how the
/// preferred one is mixed, and what goes wrong with it, are its own facts.
fn tell_of(step: &mut Step, from: &ItemId, to: &Material) {
    let own = |of: &Option<ItemId>| of.as_ref().is_some_and(|id| id == from || *id == to.id);
    if own(&step.mixes) {
        step.mixes = Some(to.id.clone());
        if let Some(mixing) = &to.mixing {
            step.does = mixing.order.join(" ");
            step.seconds = Some(mixing.mix_seconds);
            step.slips = mixing
                .faults
                .iter()
                .map(|f| Slip {
                    slip: f.sign.clone(),
                    mend: f.mend.clone(),
                })
                .collect();
        }
    }
    if own(&step.places) {
        step.places = Some(to.id.clone());
        step.does = format!(
            "{} goes in here, as the preference card asks. {}",
            to.name, to.purpose
        );
        step.slips.clear();
    }
    if let Some(hand_over) = step.hand_over.as_mut().filter(|h| h.item == *from) {
        hand_over.item = to.id.clone();
    }
}

/// Whether an item plays a role in a procedure. What closes the tooth plays no
/// other part in it, though its material might.
pub(super) fn plays(
    catalogue: &Catalogue,
    item: &ItemId,
    role: Role,
    closing: Option<&ItemId>,
) -> bool {
    let closes = matches!(role, Role::Temporary | Role::Permanent);
    let serves = catalogue
        .material(item)
        .is_some_and(|m| m.roles.contains(&role));
    serves && closing.is_none_or(|c| (c == item) == closes)
}

fn touches(step: &Step, item: &ItemId) -> bool {
    let mut used = step.uses.0.iter().chain(&step.at_hand.0);
    step.mixes.as_ref() == Some(item)
        || step.places.as_ref() == Some(item)
        || used.any(|u| u.item == *item)
}

fn reason_of(step: &Step, item: &ItemId) -> String {
    let mut used = step.uses.0.iter().chain(&step.at_hand.0);
    used.find(|u| u.item == *item).map_or_else(
        || "as the preference card asks".into(),
        |u| u.reason.clone(),
    )
}

//! The steps of a procedure for a patient, set-ups included, with items changed
//! as the patient and the card in use want it.

use crate::{Clinic, patient::Patient, preference::Swap};
use catalogue::{
    ids::{ItemId, ProcedureId},
    procedures::{NotFor, Procedure, Step, Variation},
};

/// A step in its place: with the procedure it comes from and the stage it stands in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlacedStep {
    /// The procedure or set-up that the step is written in.
    pub procedure: ProcedureId,
    /// The stage: the phase of the treatment in which the step stands.
    pub stage: String,
    /// The set-up that the treatment includes here, if the step comes with one.
    pub set: Option<ProcedureId>,
    /// The step, with items changed as the patient needs.
    pub step: Step,
}

impl Clinic {
    /// The steps of a procedure for a patient, set-ups included, in order.
    pub fn steps(&self, procedure: &ProcedureId, patient: &Patient) -> Vec<PlacedStep> {
        self.carded_steps(procedure, patient).0
    }

    /// The steps with the card applied, and the materials that it exchanged in them.
    pub(super) fn carded_steps(
        &self,
        procedure: &ProcedureId,
        patient: &Patient,
    ) -> (Vec<PlacedStep>, Vec<Swap>) {
        let mut steps = self.steps_of(procedure, &self.isolated(patient, procedure));
        let swaps = self.put_first(procedure, patient, &mut steps);
        self.hand_overs(&mut steps);
        (steps, swaps)
    }

    /// The steps of the standard set-up, without a card.
    pub(crate) fn steps_of(&self, procedure: &ProcedureId, patient: &Patient) -> Vec<PlacedStep> {
        let mut steps = Vec::new();
        if let Some(procedure) = self.catalogue.procedure(procedure) {
            self.collect(procedure, patient, None, &mut Vec::new(), &mut steps);
        }
        steps
    }

    fn collect<'c>(
        &'c self,
        procedure: &'c Procedure,
        patient: &Patient,
        within: Option<(&str, &ProcedureId)>,
        changes: &mut Vec<&'c Variation>,
        into: &mut Vec<PlacedStep>,
    ) {
        let outer = changes.len();
        changes.extend(
            procedure
                .variations
                .iter()
                .filter(|v| self.applies(Some(&v.when), patient)),
        );
        for step in procedure
            .steps
            .iter()
            .filter(|s| self.applies(s.when.as_ref(), patient))
        {
            // A set-up's steps stand in the stage of the treatment that includes it.
            match step
                .include
                .as_ref()
                .and_then(|id| self.catalogue.procedure(id))
            {
                Some(included) => {
                    let within = within.unwrap_or((&step.phase, &included.id));
                    self.collect(included, patient, Some(within), changes, into);
                }
                None => into.push(PlacedStep {
                    procedure: procedure.id.clone(),
                    stage: within.map_or(&*step.phase, |(stage, _)| stage).to_owned(),
                    set: within.map(|(_, set)| set.clone()),
                    step: changed(step, changes),
                }),
            }
        }
        changes.truncate(outer);
    }

    /// Why a procedure is not for a patient as it stands, by itself or by a set-up it includes.
    pub fn not_for<'c>(
        &'c self,
        procedure: &'c Procedure,
        patient: &Patient,
    ) -> Option<&'c NotFor> {
        let own = procedure
            .not_for
            .iter()
            .find(|n| self.applies(Some(&n.when), patient));
        own.or_else(|| {
            procedure
                .steps
                .iter()
                .filter(|s| self.applies(s.when.as_ref(), patient))
                .filter_map(|s| self.catalogue.procedure(s.include.as_ref()?))
                .find_map(|included| self.not_for(included, patient))
        })
    }
}

/// The step with its items changed; an exchanged item keeps the reason of the first.
pub(crate) fn changed(step: &Step, changes: &[&Variation]) -> Step {
    let mut step = step.clone();
    for uses in [&mut step.uses.0, &mut step.at_hand.0] {
        for variation in changes {
            match &variation.take {
                Some(take) => {
                    for each in uses.iter_mut().filter(|u| u.item == variation.instead_of) {
                        each.item = take.clone();
                    }
                }
                None => uses.retain(|u| u.item != variation.instead_of),
            }
        }
        // An exchange may bring in what the step has already.
        let mut seen: Vec<ItemId> = Vec::new();
        uses.retain(|u| {
            let new = !seen.contains(&u.item);
            seen.push(u.item.clone());
            new
        });
    }
    for variation in changes {
        if let Some(take) = &variation.take {
            for own in [&mut step.mixes, &mut step.places] {
                if own.as_ref() == Some(&variation.instead_of) {
                    *own = Some(take.clone());
                }
            }
            if let Some(hand_over) = step
                .hand_over
                .as_mut()
                .filter(|h| h.item == variation.instead_of)
            {
                hand_over.item = take.clone();
            }
        }
    }
    step
}

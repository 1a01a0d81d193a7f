//! Where an item is used: computed from the steps.

use crate::parts::within::within;
use catalogue::{
    Catalogue,
    ids::{ItemId, ProcedureId},
    procedures::{Procedure, ProcedureKind, Step, Variation},
};

/// A step that uses an item, and why.
pub struct UseOf<'c> {
    /// The phase in which the step stands.
    pub phase: &'c str,
    /// Why the item is there: `to lift the soft dentine in one piece`.
    pub reason: &'c str,
    /// Whether it only waits in case it is called for.
    pub if_called: bool,
}

/// Every procedure that uses an item, with each use in the order of steps.
pub fn uses_of<'c>(
    catalogue: &'c Catalogue,
    item: &ItemId,
) -> Vec<(&'c Procedure, Vec<UseOf<'c>>)> {
    let uses = |procedure: &'c Procedure| -> Vec<UseOf<'c>> {
        let steps = procedure.steps.iter();
        steps.flat_map(|step| uses_in(step, item)).collect()
    };
    let procedures = catalogue.procedures.iter();
    procedures
        .map(|procedure| (procedure, uses(procedure)))
        .filter(|(_, uses)| !uses.is_empty())
        .collect()
}

fn uses_in<'c>(step: &'c Step, item: &ItemId) -> Vec<UseOf<'c>> {
    [(&step.uses, false), (&step.at_hand, true)]
        .into_iter()
        .flat_map(|(uses, if_called)| uses.0.iter().map(move |each| (each, if_called)))
        .filter(|(each, _)| each.item == *item)
        .map(|(each, if_called)| UseOf {
            phase: &step.phase,
            reason: &each.reason,
            if_called,
        })
        .collect()
}

/// The treatments that include a set-up, straight or within another one.
pub fn including<'c>(catalogue: &'c Catalogue, set_up: &ProcedureId) -> Vec<&'c Procedure> {
    let includes = |it: &&Procedure| {
        it.kind == ProcedureKind::Treatment
            && within(catalogue, &it.id)
                .iter()
                .any(|part| part.id == *set_up)
    };
    catalogue.procedures.iter().filter(includes).collect()
}

/// The procedures in which the item takes another's place for some patients.
pub fn comes_for<'c>(
    catalogue: &'c Catalogue,
    item: &ItemId,
) -> Vec<(&'c Procedure, &'c Variation)> {
    catalogue
        .procedures
        .iter()
        .flat_map(|procedure| procedure.variations.iter().map(move |it| (procedure, it)))
        .filter(|(_, variation)| variation.take.as_ref() == Some(item))
        .collect()
}

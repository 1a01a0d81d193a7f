//! Where an item is used: computed from the steps.

use catalogue::{
    Catalogue,
    ids::ItemId,
    procedures::{Procedure, Step},
};

/// A step that uses an item, and why.
pub struct UseOf<'c> {
    /// The procedure the step belongs to.
    pub procedure: &'c Procedure,
    /// Why the item is there: `to lift the soft dentine in one piece`.
    pub reason: &'c str,
    /// Whether it only waits in case it is called for.
    pub if_called: bool,
}

/// Every use of an item, in the order of procedures and steps.
pub fn uses_of<'c>(catalogue: &'c Catalogue, item: &ItemId) -> Vec<UseOf<'c>> {
    catalogue
        .procedures
        .iter()
        .flat_map(|procedure| {
            procedure
                .steps
                .iter()
                .flat_map(move |step| uses_in(procedure, step, item))
        })
        .collect()
}

fn uses_in<'c>(procedure: &'c Procedure, step: &'c Step, item: &ItemId) -> Vec<UseOf<'c>> {
    [(&step.uses, false), (&step.at_hand, true)]
        .into_iter()
        .flat_map(|(uses, if_called)| uses.0.iter().map(move |each| (each, if_called)))
        .filter(|(each, _)| each.item == *item)
        .map(|(each, if_called)| UseOf {
            procedure,
            reason: &each.reason,
            if_called,
        })
        .collect()
}

/// The procedures in which the item takes another's place for some patients.
pub fn comes_for<'c>(
    catalogue: &'c Catalogue,
    item: &ItemId,
) -> Vec<(&'c Procedure, &'c catalogue::procedures::Variation)> {
    catalogue
        .procedures
        .iter()
        .flat_map(|procedure| procedure.variations.iter().map(move |it| (procedure, it)))
        .filter(|(_, variation)| variation.take.as_ref() == Some(item))
        .collect()
}

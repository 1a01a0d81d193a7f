//! A procedure with the set-ups it includes.

use catalogue::{Catalogue, ids::ProcedureId, procedures::Procedure};

/// A procedure and every set-up within it, each once, in the order met.
/// Nothing where the catalogue has no such procedure.
pub fn within<'c>(catalogue: &'c Catalogue, id: &ProcedureId) -> Vec<&'c Procedure> {
    let mut found = Vec::new();
    gather(catalogue, id, &mut found);
    found
}

fn gather<'c>(catalogue: &'c Catalogue, id: &ProcedureId, found: &mut Vec<&'c Procedure>) {
    let Some(procedure) = catalogue.procedure(id) else {
        return;
    };
    if found.iter().any(|each| each.id == *id) {
        return;
    }
    found.push(procedure);
    for included in procedure
        .steps
        .iter()
        .filter_map(|step| step.include.as_ref())
    {
        gather(catalogue, included, found);
    }
}

//! In what order lessons are best read: what others build on comes first.

use catalogue::{Catalogue, ids::ProcedureId, lesson::Lesson, procedures::ProcedureKind};

/// All lessons: those of procedures, each after the set-ups it includes, then
/// the others.
pub fn in_reading_order(catalogue: &Catalogue) -> Vec<&Lesson> {
    let mut order: Vec<&ProcedureId> = Vec::new();
    for kind in [ProcedureKind::SetUp, ProcedureKind::Treatment] {
        let kin = catalogue.procedures.iter().filter(|it| it.kind == kind);
        kin.for_each(|procedure| visit(catalogue, &procedure.id, &mut order));
    }
    let of_procedures = order
        .iter()
        .filter_map(|id| catalogue.lesson(&id.as_str().into()));
    let others = catalogue
        .lessons
        .iter()
        .filter(|lesson| catalogue.procedure(&lesson.id.as_str().into()).is_none());
    of_procedures.chain(others).collect()
}

/// Puts a procedure after everything it includes. A ring of includes, which
/// checked content does not have, ends where it meets itself.
fn visit<'c>(catalogue: &'c Catalogue, id: &'c ProcedureId, order: &mut Vec<&'c ProcedureId>) {
    fn inner<'c>(
        catalogue: &'c Catalogue,
        id: &'c ProcedureId,
        order: &mut Vec<&'c ProcedureId>,
        open: &mut Vec<&'c ProcedureId>,
    ) {
        if order.contains(&id) || open.contains(&id) {
            return;
        }
        open.push(id);
        for step in catalogue.procedure(id).into_iter().flat_map(|it| &it.steps) {
            if let Some(included) = &step.include {
                inner(catalogue, included, order, open);
            }
        }
        open.pop();
        order.push(id);
    }
    inner(catalogue, id, order, &mut Vec::new());
}

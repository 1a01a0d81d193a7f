//! In what order lessons are best read: what others build on comes first.

use crate::{
    Catalogue,
    ids::ProcedureId,
    lesson::Lesson,
    procedures::{Procedure, ProcedureKind},
};
use std::cmp::Reverse;

/// All lessons: those of set-ups, the most widely used first, then those of
/// treatments, each after the set-ups it includes; then the others.
pub fn in_reading_order(catalogue: &Catalogue) -> Vec<&Lesson> {
    let mut set_ups = of_kind(catalogue, ProcedureKind::SetUp);
    set_ups.sort_by_cached_key(|it| Reverse(including(catalogue, &it.id)));
    let treatments = of_kind(catalogue, ProcedureKind::Treatment);
    let mut order: Vec<&ProcedureId> = Vec::new();
    for procedure in set_ups.into_iter().chain(treatments) {
        place(catalogue, &procedure.id, &mut Vec::new(), &mut order);
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

fn of_kind(catalogue: &Catalogue, kind: ProcedureKind) -> Vec<&Procedure> {
    let procedures = catalogue.procedures.iter();
    procedures.filter(|each| each.kind == kind).collect()
}

fn includes(procedure: &Procedure) -> impl Iterator<Item = &ProcedureId> {
    procedure
        .steps
        .iter()
        .filter_map(|step| step.include.as_ref())
}

/// How many procedures include a set-up.
fn including(catalogue: &Catalogue, set_up: &ProcedureId) -> usize {
    let all = catalogue.procedures.iter();
    all.filter(|each| includes(each).any(|it| it == set_up))
        .count()
}

/// Puts a procedure after everything it includes. A ring of includes, which
/// checked content does not have, ends where it meets itself.
fn place<'c>(
    catalogue: &'c Catalogue,
    id: &'c ProcedureId,
    open: &mut Vec<&'c ProcedureId>,
    order: &mut Vec<&'c ProcedureId>,
) {
    if order.contains(&id) || open.contains(&id) {
        return;
    }
    open.push(id);
    for included in catalogue.procedure(id).into_iter().flat_map(includes) {
        place(catalogue, included, open, order);
    }
    open.pop();
    order.push(id);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[derive(serde::Deserialize)]
    struct File {
        procedure: Vec<Procedure>,
    }

    fn procedure(id: &str, kind: &str, includes: &[&str]) -> String {
        let steps: Vec<String> = includes
            .iter()
            .map(|it| format!(r#"{{ id = "{it}", phase = "A", who = "team", include = "{it}" }}"#))
            .collect();
        format!(
            r#"
            [[procedure]]
            id = "{id}"
            name = "{id}"
            short = "{id}"
            kind = "{kind}"
            purpose = ""
            competency = "c"
            sources = []
            step = [{}]
            "#,
            steps.join(", ")
        )
    }

    #[test]
    fn what_others_build_on_is_read_first() {
        let text = [
            procedure("crown", "treatment", &["numb", "basic"]),
            procedure("filling", "treatment", &["basic", "numb", "dam"]),
            procedure("dam", "set-up", &["basic"]),
            procedure("numb", "set-up", &[]),
            procedure("basic", "set-up", &[]),
        ];
        let file: File = toml::from_str(&text.concat()).unwrap();
        let lesson = |id: &str| Lesson {
            id: id.into(),
            title: id.into(),
            blocks: Vec::new(),
            words: 0,
        };
        let ids = ["alone", "basic", "crown", "dam", "filling", "numb"];
        let catalogue = Catalogue {
            procedures: file.procedure,
            lessons: ids.map(lesson).into(),
            ..Catalogue::default()
        };
        let order: Vec<&str> = in_reading_order(&catalogue)
            .iter()
            .map(|lesson| lesson.id.as_str())
            .collect();
        assert_eq!(order, ["basic", "numb", "dam", "crown", "filling", "alone"]);
    }
}

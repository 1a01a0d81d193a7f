//! Place on the tray: the items of one stage, among others.

use super::{
    Desk, Draft, Family,
    draft::{Offer, several, wording},
    text::within,
};
use crate::question::{Form, Shown};
use catalogue::ids::ProcedureId;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "lay",
    name: "Lay a stage of the tray",
    facts,
    write,
};

/// A stage is named by the item that is used first in it.
fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in desk.treatments() {
        let laid = desk.laid(&procedure.id);
        for (at, each) in laid.iter().enumerate() {
            let first = laid[..at].iter().all(|l| l.stage != each.stage);
            let count = laid.iter().filter(|l| l.stage == each.stage).count();
            if first && (2..=6).contains(&count) {
                facts.push(format!("{}.{}", procedure.id, each.item));
            }
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, first] = fact else {
        return None;
    };
    let id = ProcedureId::from(procedure);
    let procedure = desk.treatment(procedure)?;
    let laid = desk.laid(&id);
    let stage = &laid.iter().find(|l| l.item.as_str() == first)?.stage;
    let wanted: Vec<_> = laid.iter().filter(|l| l.stage == *stage).collect();
    let (mut right, mut pool) = (Vec::new(), Vec::new());
    for each in &wanted {
        let item = desk.item(each.item.as_str())?;
        right.push(
            Offer::of(item.id(), item.name()).because(format!("It is there {}.", each.reason)),
        );
        for (other, close) in desk.foreign(&id, item, chance).into_iter().take(2) {
            pool.push(
                Offer::of(other.id(), other.name())
                    .close(close)
                    .because(format!("No step of {} uses it.", within(&procedure.name))),
            );
        }
    }
    let want = right.len().clamp(3, 5);
    let (choices, closeness) = several(right, pool, want, chance)?;
    Some(Draft {
        competency: desk.laying(&wanted.first()?.from),
        stem: wording(
            chance,
            &[
                "Lay the tray for {}: what is new at the stage “{}”?",
                "Which of these do you place on the tray for {} because the stage “{}” needs them first?",
            ],
            &[&within(&procedure.name), stage],
        ),
        shown: Shown::Nothing,
        form: Form::Place(choices),
        closeness,
        reasons: Desk::by(
            procedure,
            format!("The steps of the stage “{stage}” use these, and no step uses the others"),
        ),
        study: Desk::study(Some(procedure), None),
    })
}

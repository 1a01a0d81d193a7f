//! What is missing: a stage of a tray is laid with one item left out.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::within,
};
use crate::question::{Form, Shown};
use catalogue::ids::ProcedureId;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "missing",
    name: "What is missing from this tray",
    facts,
    write,
};

/// How many items a stage has to have for the rest of it to say what it is.
const ENOUGH: usize = 3;

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in desk.treatments() {
        let laid = desk.laid(&procedure.id);
        for each in laid {
            if laid.iter().filter(|l| l.stage == each.stage).count() >= ENOUGH {
                facts.push(format!("{}.{}", procedure.id, each.item));
            }
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, item] = fact else {
        return None;
    };
    let id = ProcedureId::from(procedure);
    let procedure = desk.treatment(procedure)?;
    let laid = desk.laid(&id);
    let gone = laid.iter().find(|l| l.item.as_str() == item)?;
    let right = desk.item(item)?;
    let shown: Vec<_> = laid
        .iter()
        .filter(|l| l.stage == gone.stage && l.item != gone.item)
        .map(|l| l.item.clone())
        .collect();
    let pool = desk
        .foreign(&id, right, chance)
        .into_iter()
        .map(|(other, close)| {
            Offer::of(other.id(), other.name())
                .close(close)
                .because(format!("No step of {} uses it.", within(&procedure.name)))
        })
        .collect();
    let (choices, closeness) = one(Offer::of(right.id(), right.name()), pool, chance)?;
    Some(Draft {
        competency: desk.laying(&gone.from),
        stem: wording(
            chance,
            &[
                "The tray for {} is being laid. This is what lies there for the stage “{}”. What is still missing?",
                "You check the tray for {}, stage “{}”. Which item has been forgotten?",
                "For {}, stage “{}”, these items are ready. Which one more does a step of it use?",
            ],
            &[&within(&procedure.name), &gone.stage],
        ),
        shown: Shown::Items(shown),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(
            procedure,
            format!("{}: there {}", right.name(), gone.reason),
        ),
        study: Desk::study(Some(procedure), Some(right.id())),
    })
}

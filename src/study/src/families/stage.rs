//! Phase of the procedure: in which stage an item is first used.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{echoes, within},
};
use crate::question::{Form, Shown};
use catalogue::ids::ProcedureId;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "stage",
    name: "In which stage is it used",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in desk.treatments() {
        let laid = desk.laid(&procedure.id);
        let mut stages: Vec<&str> = laid.iter().map(|l| l.stage.as_str()).collect();
        stages.dedup();
        if stages.len() < 3 {
            continue;
        }
        for each in laid {
            // An item of a set-up is asked about in the set-up's own questions.
            if !each.again
                && each.from == procedure.id
                && !echoes(&each.stage, desk.name(&each.item))
            {
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
    let own = laid
        .iter()
        .position(|l| l.item.as_str() == item && !l.again)?;
    let item = desk.item(item)?;
    // The item lies for one stage only, so every other stage is wrong.
    let pool = laid
        .iter()
        .enumerate()
        .filter(|(_, l)| l.stage != laid[own].stage)
        .map(|(at, l)| {
            let away = u16::try_from(own.abs_diff(at)).unwrap_or(u16::MAX);
            Offer::new(l.stage.as_str(), l.stage.as_str())
                .close(0.9 - 0.02 * f32::from(away.min(40)))
                .because(format!("No step of this stage uses “{}”.", item.name()))
        })
        .collect();
    let stage = laid[own].stage.as_str();
    let (choices, closeness) = one(Offer::new(stage, stage), pool, chance)?;
    Some(Draft {
        competency: "tray-set-ups".into(),
        stem: wording(
            chance,
            &[
                "In which stage of {} is this used: “{}”?",
                "The stages of {} are laid one after the other. For which of them is this laid: “{}”?",
            ],
            &[&within(&procedure.name), item.name()],
        ),
        shown: Shown::Items(vec![item.id().clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(
            procedure,
            format!("In the stage “{stage}” it is there {}", laid[own].reason),
        ),
        study: Desk::study(Some(procedure), Some(item.id())),
    })
}

//! Hand-over: how and in which zone something passes to the dentist.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{sentence, within},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "hand-over",
    name: "How and where it is handed over",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        for step in &procedure.steps {
            if step.hand_over.as_ref().is_some_and(|h| h.not.len() >= 2) {
                facts.push(format!("{}.{}", procedure.id, step.id));
            }
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, step] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let step = procedure.steps.iter().find(|s| s.id.as_str() == step)?;
    let hand_over = step.hand_over.as_ref()?;
    let pool = hand_over
        .not
        .iter()
        .enumerate()
        .map(|(n, way)| {
            Offer::new(format!("not-{}", n + 1), way.way.as_str())
                .close(0.6)
                .because(way.because.as_str())
                .harm(way.harm)
        })
        .collect();
    let (choices, closeness) = one(Offer::new("how", sentence(&hand_over.how)), pool, chance)?;
    Some(Draft {
        competency: "chairside".into(),
        stem: wording(
            chance,
            &[
                "{}, under “{}”: you hand over “{}”. How, and where?",
                "During {}, under “{}”, the dentist holds out a hand for this: “{}”. Which hand-over is right?",
            ],
            &[
                &within(&procedure.name),
                &step.phase,
                desk.name(&hand_over.item),
            ],
        ),
        shown: Shown::Items(vec![hand_over.item.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(hand_over.how.as_str(), &hand_over.sources),
        study: Desk::study(Some(procedure), Some(&hand_over.item)),
    })
}

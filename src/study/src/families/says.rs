//! What is said at a step, to the patient or to the dentist.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, marks, opening, within},
    texts::acts,
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "says",
    name: "What is said at this step",
    facts,
    write,
};

/// Shorter words, such as “Ready.”, fit many steps.
const SHORT: usize = 16;

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        let speaking: Vec<_> = acts(procedure).filter(|s| s.says.len() >= SHORT).collect();
        let said: Vec<u128> = speaking.iter().map(|s| marks(&s.says)).collect();
        for (step, own) in speaking.iter().zip(&said) {
            if said.iter().filter(|s| alike(**s, *own) < 0.4).count() >= 3 {
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
    let step = acts(procedure).find(|s| s.id.as_str() == step && s.says.len() >= SHORT)?;
    let own = marks(&step.says);
    let pool = acts(procedure)
        .filter(|s| s.id != step.id && s.says.len() >= SHORT && alike(marks(&s.says), own) < 0.4)
        .map(|s| {
            let close = if s.phase == step.phase { 0.7 } else { 0.45 };
            Offer::new(s.id.as_str(), format!("“{}”", s.says))
                .close(close)
                .because(format!("That is said under “{}”.", s.phase))
        })
        .collect();
    let (choices, closeness) = one(
        Offer::new(step.id.as_str(), format!("“{}”", step.says)),
        pool,
        chance,
    )?;
    Some(Draft {
        competency: "chairside".into(),
        stem: wording(
            chance,
            &[
                "What is said at this step of {}?",
                "Which words go with this step of {}?",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Lines(vec![opening(&step.does).into()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(procedure, format!("At this step is said: “{}”", step.says)),
        study: Desk::study(Some(procedure), None),
    })
}

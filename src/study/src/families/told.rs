//! Spot the slip in a told sequence: one line tells a slip instead of the step.

use super::{
    Desk, Draft, Family,
    draft::wording,
    next::step_competency,
    text::{opening, sentence, within},
    texts::{at, places},
};
use crate::question::{Choice, Form, Shown};
use clinic::{case::Seed, standing::Standing};

pub(super) const FAMILY: Family = Family {
    id: "told",
    name: "Spot the slip in what is told",
    facts,
    write,
};

/// A telling has this many lines.
const LINES: usize = 4;

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        let told = procedure
            .steps
            .iter()
            .filter(|s| !s.does.is_empty())
            .count();
        for step in procedure
            .steps
            .iter()
            .filter(|s| told >= LINES && !s.does.is_empty())
        {
            facts.extend(places(
                &format!("{}.{}", procedure.id, step.id),
                step.slips.len(),
            ));
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, step, place] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let told: Vec<_> = procedure
        .steps
        .iter()
        .filter(|s| !s.does.is_empty())
        .collect();
    let here = told.iter().position(|s| s.id.as_str() == step)?;
    let slip = at(&told[here].slips, place)?;
    if told.len() < LINES {
        return None;
    }
    let first = here
        .saturating_sub(chance.below(LINES))
        .min(told.len() - LINES);
    let lines = told[first..first + LINES]
        .iter()
        .map(|s| {
            let slipped = s.id == told[here].id;
            let text = if slipped {
                slip.slip.as_str()
            } else {
                opening(&s.does)
            };
            Choice {
                key: s.id.to_string(),
                text: sentence(text),
                item: None,
                standing: if slipped {
                    Standing::Right
                } else {
                    Standing::Wrong
                },
                because: if slipped {
                    slip.mend.clone()
                } else {
                    "This is as it should be.".into()
                },
            }
        })
        .collect();
    Some(Draft {
        competency: step_competency(procedure),
        stem: wording(
            chance,
            &[
                "Somebody tells how {} went. In which line is the slip?",
                "A report on {}, line by line. Which line must not stand like this?",
                "Read how {} was done here. Which line do you mend?",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Nothing,
        form: Form::Slip(lines),
        closeness: 0.35,
        reasons: Desk::by(procedure, slip.mend.as_str()),
        study: Desk::study(Some(procedure), None),
    })
}

//! Put in order: steps of a procedure.

use super::{
    Desk, Draft, Family,
    draft::wording,
    next::step_competency,
    order::mix,
    text::{opening, within},
};
use crate::question::{Form, Piece, Shown};
use catalogue::procedures::{Procedure, Step};
use clinic::{case::Seed, sequence::Target};

pub(super) const FAMILY: Family = Family {
    id: "steps",
    name: "Put the steps in order",
    facts,
    write,
};

/// How many steps are to be put in order.
const STEPS: usize = 4;

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        for step in &procedure.steps {
            if run(procedure, step.id.as_str()).is_some() {
                facts.push(format!("{}.{}", procedure.id, step.id));
            }
        }
    }
    facts
}

/// A run of steps from this one on, one from each phase, so that their order is
/// that of the phases and not a matter of taste.
fn run<'p>(procedure: &'p Procedure, step: &str) -> Option<Vec<&'p Step>> {
    let at = procedure.steps.iter().position(|s| s.id.as_str() == step)?;
    let mut run: Vec<&Step> = Vec::new();
    for step in procedure.steps[at..].iter().filter(|s| !s.does.is_empty()) {
        if run.iter().all(|s| s.phase != step.phase) {
            run.push(step);
        }
    }
    run.truncate(STEPS);
    (run.len() == STEPS && run[0].id.as_str() == step).then_some(run)
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, step] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let run = run(procedure, step)?;
    let target = run.iter().map(|s| vec![s.id.to_string()]).collect();
    let mut pieces: Vec<Piece> = run
        .iter()
        .map(|s| Piece {
            key: s.id.to_string(),
            text: opening(&s.does).into(),
            item: None,
        })
        .collect();
    mix(&mut pieces, chance);
    let phases: Vec<&str> = run.iter().map(|s| s.phase.as_str()).collect();
    Some(Draft {
        competency: step_competency(procedure),
        stem: wording(
            chance,
            &[
                "Put these steps of {} in order.",
                "In which order do these happen in {}?",
                "These steps of {} have been mixed up. Which comes first, and what then?",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Nothing,
        form: Form::Order {
            pieces,
            target: Target {
                stages: target,
                must_before: Vec::new(),
            },
        },
        closeness: 0.4,
        reasons: Desk::by(
            procedure,
            format!("The phases follow one another: {}", phases.join(", then ")),
        ),
        study: Desk::study(Some(procedure), None),
    })
}

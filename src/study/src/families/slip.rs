//! A slip and its mending.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    next::step_competency,
    text::{alike, lower, marks, within},
    texts::{at, places},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "slip",
    name: "A slip, and how it is mended",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        if procedure.steps.iter().map(|s| s.slips.len()).sum::<usize>() < 6 {
            continue;
        }
        for step in &procedure.steps {
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
    let step = procedure.steps.iter().find(|s| s.id.as_str() == step)?;
    let slip = at(&step.slips, place)?;
    let (own, mend) = (marks(&slip.slip), marks(&slip.mend));
    // The mend of another slip is wrong where it speaks neither of this slip nor of this mend.
    let pool = procedure
        .steps
        .iter()
        .flat_map(|s| {
            s.slips
                .iter()
                .enumerate()
                .map(move |(n, slip)| (s, n, slip))
        })
        .filter(|(_, _, other)| {
            let words = marks(&other.mend);
            alike(words, own) < 0.34
                && alike(words, mend) < 0.34
                && alike(marks(&other.slip), own) < 0.4
        })
        .map(|(s, n, other)| {
            let close = if s.phase == step.phase { 0.75 } else { 0.5 };
            Offer::new(format!("{}.{}", s.id, n + 1), other.mend.as_str())
                .close(close)
                .because(format!("That mends another slip: {}", lower(&other.slip)))
        })
        .collect();
    let (choices, closeness) = one(
        Offer::new(format!("{}.{place}", step.id), slip.mend.as_str()),
        pool,
        chance,
    )?;
    Some(Draft {
        competency: step_competency(procedure),
        stem: wording(
            chance,
            &[
                "This goes wrong in {}. How is it mended, or kept from happening?",
                "{}, under “{}”: you see this slip. What is right?",
                "A slip in {}: which of these belongs to it?",
            ],
            &[&within(&procedure.name), &step.phase],
        ),
        shown: Shown::Lines(vec![slip.slip.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(procedure, slip.mend.as_str()),
        study: Desk::study(Some(procedure), None),
    })
}

//! Who does this step: the dentist, the assistant, or both hand in hand.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{lower, opening, within},
};
use crate::question::{Form, Shown};
use catalogue::procedures::{Actor, Step};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "who",
    name: "Who does this step",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        for step in procedure.steps.iter().filter(|s| asks(s)) {
            facts.push(format!("{}.{}", procedure.id, step.id));
        }
    }
    facts
}

/// A step whose first words do not say who acts. Where local law may give it to
/// an assistant, more than one answer would be acceptable.
fn asks(step: &Step) -> bool {
    let says = |word: &str| step.does.contains(word);
    !step.does.is_empty()
        && !step.local_law
        && !["entist", "You ", "you ", "your", "ssistant", "team"]
            .into_iter()
            .any(says)
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, step] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let step = procedure
        .steps
        .iter()
        .find(|s| s.id.as_str() == step && asks(s))?;
    let offer = |actor| match actor {
        Actor::Dentist => Offer::new("dentist", "The dentist alone"),
        Actor::Assistant => Offer::new("assistant", "The assistant alone"),
        Actor::Team => Offer::new("team", "Both, hand in hand"),
    };
    let pool = [Actor::Dentist, Actor::Assistant, Actor::Team]
        .into_iter()
        .filter(|a| *a != step.who)
        .map(offer)
        .collect();
    let right = offer(step.who);
    let answer = lower(&right.text);
    let (choices, closeness) = one(right, pool, chance)?;
    Some(Draft {
        competency: "chairside".into(),
        stem: wording(
            chance,
            &[
                "Who does this in {}?",
                "A step of {}: whose is it?",
                "{}: who sees to this?",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Lines(vec![opening(&step.does).into()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(
            procedure,
            format!("As the steps are taught it is done by {answer}"),
        ),
        study: Desk::study(Some(procedure), None),
    })
}

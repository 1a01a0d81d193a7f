//! Acts that an assistant may do only where local law allows.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{opening, within},
};
use crate::question::{Form, Shown};
use catalogue::procedures::Actor;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "law",
    name: "Only where local law allows",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        let free = procedure
            .steps
            .iter()
            .filter(|s| s.who == Actor::Assistant && !s.local_law && !s.does.is_empty());
        if free.count() < 2 {
            continue;
        }
        for step in procedure
            .steps
            .iter()
            .filter(|s| s.local_law && !s.does.is_empty())
        {
            facts.push(format!("{}.{}", procedure.id, step.id));
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, step] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let step = procedure
        .steps
        .iter()
        .find(|s| s.id.as_str() == step && s.local_law)?;
    // Only what the steps give to the assistant outright is wrong here.
    let pool = procedure
        .steps
        .iter()
        .filter(|s| s.who == Actor::Assistant && !s.local_law && !s.does.is_empty())
        .map(|s| {
            let close = if s.phase == step.phase { 0.7 } else { 0.5 };
            Offer::new(s.id.as_str(), plain(opening(&s.does)))
                .close(close)
                .because("This is the assistant's own work.")
        })
        .collect();
    let (choices, closeness) = one(
        Offer::new(step.id.as_str(), plain(opening(&step.does))),
        pool,
        chance,
    )?;
    Some(Draft {
        competency: "chairside".into(),
        stem: wording(
            chance,
            &[
                "Which of these acts in {} may an assistant do only where local law allows it?",
                "Local law decides whether an assistant may do one of these in {}. Which one?",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(
            procedure,
            "The steps mark this act as one that local law settles; the others are the assistant's own work",
        ),
        study: Desk::study(Some(procedure), None),
    })
}

/// Without the words that say who acts as the step is taught.
fn plain(text: &str) -> String {
    text.replace("The dentist ", "Somebody ")
        .replace("You ", "Somebody ")
}

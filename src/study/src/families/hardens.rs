//! How it hardens: by itself or with the light.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    mixed::mixed,
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "hardens",
    name: "How it hardens",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    mixed(desk)
        .map(|(material, _)| material.id.to_string())
        .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let (material, mixing) = mixed(desk).find(|(m, _)| m.id.as_str() == id)?;
    let offer = |key: &str| match key {
        "light" => Offer::new("light", "It needs the curing light"),
        "self" => Offer::new("self", "It sets by itself, without the light"),
        _ => Offer::new("drying", "It only dries as its solvent leaves"),
    };
    // What sets by itself and may also be lit, or the other way round, has no single answer.
    let says = mixing.hardens.to_lowercase();
    if !mixing.light && says.contains("light") {
        return None;
    }
    let key = if mixing.light { "light" } else { "self" };
    let pool = ["light", "self", "drying"]
        .into_iter()
        .filter(|k| *k != key)
        .map(offer)
        .collect();
    let (choices, closeness) = one(offer(key), pool, chance)?;
    Some(Draft {
        competency: "materials".into(),
        stem: wording(
            chance,
            &[
                "How does this harden: “{}”?",
                "This has been placed: “{}”. What makes it hard?",
                "Do you bring the curing light for this: “{}”?",
            ],
            &[&material.name],
        ),
        shown: Shown::Items(vec![material.id.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: desk.reason(mixing.hardens.as_str(), &mixing.sources),
        study: desk.study(None, Some(&material.id)),
    })
}

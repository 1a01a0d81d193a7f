//! With what a material is mixed.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    mixed::{self, mixed},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "spatula",
    name: "With what it is mixed",
    facts: mixed::ids,
    write,
};

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let (material, mixing) = mixed::of_fact(desk, fact)?;
    let with = desk.item(mixing.with.as_str())?;
    // Whatever a step that mixes this material uses could be meant too.
    let beside = |item: &catalogue::ids::ItemId| {
        desk.catalogue()
            .procedures
            .iter()
            .flat_map(|p| &p.steps)
            .any(|s| {
                s.mixes.as_ref() == Some(&material.id)
                    && s.uses.0.iter().chain(&s.at_hand.0).any(|u| u.item == *item)
            })
    };
    let pool = mixed(desk)
        .map(|(_, mix)| &mix.with)
        .chain(desk.family(with.family()))
        .filter(|other| **other != mixing.with && !beside(other))
        .filter_map(|other| desk.item(other.as_str()))
        .map(|other| {
            Offer::of(other.id(), other.name())
                .close(Desk::close(with, other))
                .because(other.purpose())
        })
        .collect();
    let (choices, closeness) = one(Offer::of(with.id(), with.name()), pool, chance)?;
    Some(Draft {
        competency: "mixing".into(),
        stem: wording(
            chance,
            &[
                "With what is this mixed: “{}”?",
                "What do you take up to mix this: “{}”?",
            ],
            &[&material.name],
        ),
        shown: Shown::Items(vec![material.id.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(
            format!("{} is mixed with this: {}", material.name, with.name()),
            &mixing.sources,
        ),
        study: Desk::study(None, Some(&material.id)),
    })
}

//! Mixing ratio: told of one material among others.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    mixed::{mixed, parts_apart},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "proportion",
    name: "Mixing ratio",
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
    let pool = mixed(desk)
        .filter(|(other, mix)| {
            other.id != material.id && parts_apart(&mix.proportion, &mixing.proportion)
        })
        .map(|(other, mix)| {
            let close = if other.family == material.family {
                0.8
            } else {
                0.5
            };
            Offer::new(other.id.as_str(), mix.proportion.as_str())
                .close(close)
                .because(format!("So it is with this: {}.", other.name))
        })
        .collect();
    let (choices, closeness) = one(Offer::new(id, mixing.proportion.as_str()), pool, chance)?;
    Some(Draft {
        competency: "mixing".into(),
        stem: wording(
            chance,
            &[
                "In which proportion is this mixed: “{}”?",
                "You dispense this: “{}”. How much of each?",
            ],
            &[&material.name],
        ),
        shown: Shown::Items(vec![material.id.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(
            format!("{}: {}", material.name, mixing.proportion),
            &mixing.sources,
        ),
        study: Desk::study(None, Some(&material.id)),
    })
}

//! Storage: which material is kept like this.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, echoes, marks},
};
use crate::question::{Form, Shown};
use catalogue::items::Material;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "storage",
    name: "How it is kept",
    facts,
    write,
};

/// A shorter text, such as “Keep it closed.”, fits many materials.
const SHORT: usize = 48;

fn facts(desk: &Desk) -> Vec<String> {
    let all = desk.catalogue().materials.iter();
    all.filter(|m| asks(m)).map(|m| m.id.to_string()).collect()
}

fn asks(material: &Material) -> bool {
    material.storage.len() >= SHORT && !echoes(&material.storage, &material.name)
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let all = &desk.catalogue().materials;
    let own = all.iter().find(|m| m.id.as_str() == id && asks(m))?;
    let kept = marks(&own.storage);
    let start = chance.below(all.len());
    let pool = all
        .iter()
        .cycle()
        .skip(start)
        .take(all.len().min(40))
        .filter(|m| {
            m.id != own.id
                && m.class != own.class
                && alike(marks(&m.storage), kept) < 0.34
                && !echoes(&own.storage, &m.name)
        })
        .map(|m| {
            let close = if m.family == own.family { 0.8 } else { 0.45 };
            Offer::of(&m.id, &m.name)
                .close(close)
                .because(m.storage.as_str())
        })
        .collect();
    let (choices, closeness) = one(Offer::of(&own.id, &own.name), pool, chance)?;
    Some(Draft {
        competency: "materials".into(),
        stem: wording(
            chance,
            &[
                "Which of these is kept like this?",
                "For which of these does the shelf note say this?",
            ],
            &[],
        ),
        shown: Shown::Lines(vec![own.storage.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(format!("{}: {}", own.name, own.storage), &own.sources),
        study: Desk::study(None, Some(&own.id)),
    })
}

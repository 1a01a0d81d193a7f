//! What is called for: from what has to be done to the item that does it.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, echoes, lower, marks},
    texts::own_uses,
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "called",
    name: "Which item does this",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        let uses = own_uses(procedure);
        if uses.len() < 5 {
            continue;
        }
        for each in &uses {
            if each.reason.starts_with("to ") && !echoes(&each.reason, desk.name(&each.item)) {
                facts.push(format!("{}.{}", procedure.id, each.item));
            }
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, item] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let uses = own_uses(procedure);
    let own = uses.iter().find(|u| u.item.as_str() == item)?;
    if !own.reason.starts_with("to ") {
        return None;
    }
    let item = desk.item(item)?;
    let wanted = marks(&own.reason);
    let serves = |id: &catalogue::ids::ItemId, purpose: &str| {
        let all = procedure
            .steps
            .iter()
            .flat_map(|s| s.uses.0.iter().chain(&s.at_hand.0));
        alike(marks(purpose), wanted) >= 0.4
            || all
                .into_iter()
                .any(|u| u.item == *id && alike(marks(&u.reason), wanted) >= 0.4)
    };
    let pool = uses
        .iter()
        .filter(|u| u.item != own.item)
        .filter_map(|u| {
            let other = desk.item(u.item.as_str())?;
            let apart = other.family() != item.family()
                && !echoes(&own.reason, other.name())
                && !serves(&u.item, other.purpose());
            apart.then(|| {
                Offer::of(other.id(), other.name())
                    .close(0.45)
                    .because(format!("It is there {}.", u.reason))
            })
        })
        .collect();
    let (choices, closeness) = one(Offer::of(item.id(), item.name()), pool, chance)?;
    Some(Draft {
        competency: desk.laying(&procedure.id),
        stem: wording(
            chance,
            &[
                "{}: which of these is used {}?",
                "{}: something is needed {}. What do you hand over or take up?",
                "{}: which of these is on the tray {}?",
            ],
            &[&procedure.name, &own.reason],
        ),
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness,
        reasons: desk.by(
            procedure,
            format!("{} is there {}", item.name(), own.reason),
        ),
        study: desk.study(Some(procedure), Some(item.id())),
    })
    .filter(|d| !d.stem.contains(&lower(item.name())))
}

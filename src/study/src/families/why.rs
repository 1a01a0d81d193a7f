//! Why is it here: the reason that a step gives for an item.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, capital, echoes, lower, marks},
    texts::own_uses,
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "why",
    name: "Why is it here",
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
            if !echoes(&each.reason, desk.name(&each.item)) {
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
    let item = desk.item(item)?;
    // Every reason that any step of this procedure gives for the item is true of it.
    let stated: Vec<u128> = procedure
        .steps
        .iter()
        .flat_map(|s| s.uses.0.iter().chain(&s.at_hand.0))
        .filter(|u| u.item == *item.id())
        .map(|u| marks(&u.reason))
        .collect();
    let purpose = marks(item.purpose());
    let pool = uses
        .iter()
        .filter(|u| u.item != own.item)
        .filter_map(|u| {
            let other = desk.item(u.item.as_str())?;
            let reason = marks(&u.reason);
            let apart = other.family() != item.family()
                && !echoes(&u.reason, item.name())
                && alike(reason, purpose) < 0.4
                && stated.iter().all(|s| alike(*s, reason) < 0.4);
            apart.then(|| {
                Offer::new(u.item.as_str(), format!("{}.", capital(&u.reason)))
                    .close(0.5)
                    .because(format!(
                        "That is what this is there for: {}.",
                        lower(other.name())
                    ))
            })
        })
        .collect();
    let right = Offer::new(own.item.as_str(), format!("{}.", capital(&own.reason)));
    let (choices, closeness) = one(right, pool, chance)?;
    Some(Draft {
        competency: desk.laying(&procedure.id),
        stem: wording(
            chance,
            &[
                "On the tray for {} lies this item: “{}”. Why is it there?",
                "In {} a step uses “{}”. What for?",
                "A student asks you why the set-up for {} has this on it: “{}”. What do you answer?",
            ],
            &[&lower(&procedure.name), item.name()],
        ),
        shown: Shown::Items(vec![item.id().clone()]),
        form: Form::One(choices),
        closeness,
        reasons: desk.by(procedure, format!("It is there {}", own.reason)),
        study: desk.study(Some(procedure), Some(item.id())),
    })
}

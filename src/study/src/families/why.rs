//! Why is it here: the reason that a step gives for an item.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, capital, echoes, marks, within},
    texts::{elsewhere, own_uses},
};
use crate::question::{Form, Shown};
use catalogue::procedures::Use;
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
    let untrue = |u: &&Use| {
        let reason = marks(&u.reason);
        u.item != own.item
            && desk
                .item(u.item.as_str())
                .is_some_and(|o| o.family() != item.family())
            && !echoes(&u.reason, item.name())
            && alike(reason, purpose) < 0.4
            && stated.iter().all(|s| alike(*s, reason) < 0.4)
    };
    let offer = |u: &Use, close: f32| {
        Offer::new(u.item.as_str(), format!("{}.", capital(&u.reason)))
            .close(close)
            .because(format!(
                "That is what this is there for: {}.",
                desk.name(&u.item)
            ))
    };
    let mut pool: Vec<Offer> = uses
        .iter()
        .copied()
        .filter(untrue)
        .map(|u| offer(u, 0.5))
        .collect();
    if pool.len() < 3 {
        let others = elsewhere(desk, procedure, chance);
        pool.extend(
            others
                .into_iter()
                .filter(|u| untrue(u))
                .map(|u| offer(u, 0.3)),
        );
    }
    let right = Offer::new(own.item.as_str(), format!("{}.", capital(&own.reason)));
    let (choices, closeness) = one(right, pool, chance)?;
    Some(Draft {
        competency: desk.laying(&procedure.id),
        stem: wording(
            chance,
            &[
                "On the tray for {} lies this item: “{}”. Why is it there?",
                "{}: a step uses “{}”. What for?",
                "A student asks you why the set-up for {} has this on it: “{}”. What do you answer?",
            ],
            &[&within(&procedure.name), item.name()],
        ),
        shown: Shown::Items(vec![item.id().clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(procedure, format!("It is there {}", own.reason)),
        study: Desk::study(Some(procedure), Some(item.id())),
    })
}

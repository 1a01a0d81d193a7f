//! What is called for: from what has to be done to the item that does it.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, echoes, marks},
    texts::{elsewhere, own_uses},
};
use crate::question::{Form, Shown};
use catalogue::procedures::Use;
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
    let unfit = |u: &&Use| {
        u.item != own.item
            && desk.item(u.item.as_str()).is_some_and(|other| {
                other.family() != item.family()
                    && !echoes(&own.reason, other.name())
                    && !serves(&u.item, other.purpose())
            })
    };
    let offer = |u: &Use, close: f32| {
        Offer::of(&u.item, desk.name(&u.item))
            .close(close)
            .because(format!("It is there {}.", u.reason))
    };
    let mut pool: Vec<Offer> = uses
        .iter()
        .copied()
        .filter(unfit)
        .map(|u| offer(u, 0.45))
        .collect();
    if pool.len() < 3 {
        let others = elsewhere(desk, procedure, chance).into_iter();
        let foreign = others.filter(|u| unfit(u) && !desk.uses(&procedure.id, &u.item));
        pool.extend(foreign.map(|u| offer(u, 0.3)));
    }
    let (choices, closeness) = one(Offer::of(item.id(), item.name()), pool, chance)?;
    let need = own.reason.split(';').next().unwrap_or_default();
    let name = procedure.name.to_lowercase();
    let stem = if name.contains(&item.name().to_lowercase()) {
        // The name of the procedure would give the item away.
        wording(
            chance,
            &["Something is needed {}. Which of these is it?"],
            &[need],
        )
    } else {
        let wordings = [
            "{}: which of these is used {}?",
            "{}: something is needed {}. What do you hand over or take up?",
            "{}: which of these is on the tray {}?",
        ];
        wording(chance, &wordings, &[&procedure.name, need])
    };
    Some(Draft {
        competency: desk.laying(&procedure.id),
        stem,
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(procedure, format!("{}: there {}", item.name(), own.reason)),
        study: Desk::study(Some(procedure), Some(item.id())),
    })
}

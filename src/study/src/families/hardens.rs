//! How it hardens: by itself or with the light.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    mixed::mixed,
};
use crate::question::{Form, Shown};
use catalogue::items::Mixing;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "hardens",
    name: "How it hardens",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    mixed(desk)
        .filter(|(_, mixing)| plain(mixing))
        .map(|(material, _)| material.id.to_string())
        .collect()
}

/// What sets by itself and may be lit as well has no single answer.
fn plain(mixing: &Mixing) -> bool {
    mixing.light || !mixing.hardens.to_lowercase().contains("light")
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let (material, mixing) = mixed(desk).find(|(m, _)| m.id.as_str() == id)?;
    let offer = |key: &str| match key {
        "light" => Offer::new("light", "It needs the curing light"),
        "self" => Offer::new("self", "It sets by itself, without the light"),
        _ => Offer::new("drying", "It only dries as its solvent leaves"),
    };
    if !plain(mixing) {
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
            ],
            &[&material.name],
        ),
        shown: Shown::Items(vec![material.id.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(mixing.hardens.as_str(), &mixing.sources),
        study: Desk::study(None, Some(&material.id)),
    })
}

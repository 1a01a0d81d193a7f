//! Know it by its looks: a description to be named.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, echoes, marks},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "look",
    name: "Know it by its description",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    desk.catalogue()
        .instruments
        .iter()
        .filter(|i| desk.family(&i.family).len() >= 4 && !echoes(&i.look, &i.name))
        .map(|i| i.id.to_string())
        .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let item = desk.item(id)?;
    let own = desk
        .catalogue()
        .instruments
        .iter()
        .find(|i| i.id.as_str() == id)?;
    let looks = marks(&own.look);
    let start = chance.below(desk.family(&own.family).len());
    let mut pool = Vec::new();
    let family = desk
        .family(&own.family)
        .iter()
        .cycle()
        .skip(start)
        .take(desk.family(&own.family).len());
    for other in family.filter(|f| **f != own.id) {
        let Some(catalogue::Item::Instrument(other)) = desk.item(other.as_str()) else {
            continue;
        };
        if alike(marks(&other.look), looks) < 0.75 && !echoes(&own.look, &other.name) {
            let close = Desk::close(item, catalogue::Item::Instrument(other));
            pool.push(
                Offer::of(&other.id, &other.name)
                    .close(close)
                    .because(other.look.as_str()),
            );
        }
    }
    for other in (0..12).filter_map(|_| chance.pick(&desk.catalogue().instruments)) {
        if other.family != own.family
            && alike(marks(&other.look), looks) < 0.5
            && !echoes(&own.look, &other.name)
        {
            pool.push(
                Offer::of(&other.id, &other.name)
                    .close(0.25)
                    .because(other.look.as_str()),
            );
        }
    }
    let (choices, closeness) = one(Offer::of(&own.id, &own.name), pool, chance)?;
    Some(Draft {
        competency: desk.knowing(item),
        stem: wording(
            chance,
            &[
                "What is described here?",
                "Which of these looks like this?",
                "You are told only how it looks. Which one is it?",
            ],
            &[],
        ),
        shown: Shown::Lines(vec![own.look.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(format!("{}: {}", own.name, own.look), &own.sources),
        study: Desk::study(None, Some(&own.id)),
    })
}

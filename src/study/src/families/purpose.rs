//! Which instrument of a family, or which material, is for this.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, echoes, marks},
};
use crate::question::{Form, Shown};
use catalogue::Item;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "purpose",
    name: "Which one of a family is for this",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    desk.catalogue()
        .items()
        .filter(|i| desk.family(i.family()).len() >= 4 && !echoes(i.purpose(), i.name()))
        .map(|i| i.id().to_string())
        .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let item = desk.item(id)?;
    let own = marks(item.purpose());
    let start = chance.below(desk.family(item.family()).len());
    let family = desk
        .family(item.family())
        .iter()
        .cycle()
        .skip(start)
        .take(desk.family(item.family()).len());
    let mut pool: Vec<Offer> = family
        .filter_map(|other| desk.item(other.as_str()))
        .filter(|other| other.id() != item.id())
        .filter(|other| {
            alike(marks(other.purpose()), own) < 0.5 && !echoes(item.purpose(), other.name())
        })
        .map(|other: Item<'_>| {
            Offer::of(other.id(), other.name())
                .close(Desk::close(item, other))
                .because(other.purpose())
        })
        .collect();
    for other in (0..12).filter_map(|_| chance.pick(&desk.catalogue().instruments)) {
        if other.family != item.family()
            && alike(marks(&other.purpose), own) < 0.34
            && !echoes(item.purpose(), &other.name)
        {
            pool.push(
                Offer::of(&other.id, &other.name)
                    .close(0.25)
                    .because(other.purpose.as_str()),
            );
        }
    }
    let (choices, closeness) = one(Offer::of(item.id(), item.name()), pool, chance)?;
    Some(Draft {
        competency: desk.knowing(item),
        stem: wording(
            chance,
            &[
                "Which of these is meant?",
                "Of which of these is this said?",
                "Which one do you fetch for this?",
            ],
            &[],
        ),
        shown: Shown::Lines(vec![item.purpose().into()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(
            format!("{}: {}", item.name(), item.purpose()),
            item.sources(),
        ),
        study: Desk::study(None, Some(item.id())),
    })
}

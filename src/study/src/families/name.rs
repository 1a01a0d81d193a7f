//! Name the drawing, shown without labels and engraved numbers.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "name",
    name: "Name the drawing",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    desk.catalogue()
        .items()
        .filter(|i| desk.shape(i.id()).is_some() && desk.family(i.family()).len() >= 3)
        .map(|i| i.id().to_string())
        .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let item = desk.item(id)?;
    let own = desk.shape(item.id())?;
    let start = chance.below(desk.family(item.family()).len());
    let family = desk
        .family(item.family())
        .iter()
        .cycle()
        .skip(start)
        .take(desk.family(item.family()).len());
    let mut pool = Vec::new();
    for id in item.lookalikes().iter().map(|l| &l.item).chain(family) {
        let Some(other) = desk.item(id.as_str()).filter(|o| o.id() != item.id()) else {
            continue;
        };
        // Where the two drawings are told apart only by what is written on them,
        // the drawing does not say which one it is.
        if desk.shape(id).is_some_and(|shape| Desk::apart(own, shape)) {
            pool.push(
                Offer::of(other.id(), other.name())
                    .close(Desk::close(item, other))
                    .because(other.purpose()),
            );
        }
    }
    for other in (0..6).filter_map(|_| chance.pick(&desk.catalogue().instruments)) {
        if other.id != *item.id()
            && desk
                .shape(&other.id)
                .is_some_and(|shape| Desk::apart(own, shape))
        {
            pool.push(
                Offer::of(&other.id, &other.name)
                    .close(0.25)
                    .because(other.purpose.as_str()),
            );
        }
    }
    // An option with its own drawing beside it would only have to be compared.
    for offer in &mut pool {
        offer.item = None;
    }
    let (choices, closeness) = one(Offer::new(item.id().as_str(), item.name()), pool, chance)?;
    Some(Draft {
        competency: desk.knowing(item),
        stem: wording(
            chance,
            &[
                "What is drawn here?",
                "Name what you see.",
                "Which of these is it?",
            ],
            &[],
        ),
        shown: Shown::Drawing(item.id().clone()),
        form: Form::Name(choices),
        closeness,
        reasons: Desk::reason(
            match item {
                catalogue::Item::Instrument(i) => format!("{}: {}", i.name, i.look),
                catalogue::Item::Material(m) => format!("{}: {}", m.name, m.form),
            },
            item.sources(),
        ),
        study: Desk::study(None, Some(item.id())),
    })
}

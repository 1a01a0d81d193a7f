//! Speaking up: a moment at which silence could hurt somebody.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "speak-up",
    name: "When something is wrong",
    facts,
    write,
};

/// A tooth for the stories that name one; any would do.
const TOOTH: &str = "36";

fn facts(desk: &Desk) -> Vec<String> {
    let stops = desk.catalogue().stops.iter().filter(|s| s.not.len() >= 2);
    stops.map(|s| s.id.to_string()).collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let stop = desk
        .catalogue()
        .stops
        .iter()
        .find(|s| s.id.as_str() == id)?;
    let told = |text: &str| text.replace("{tooth}", TOOTH);
    let pool = stop
        .not
        .iter()
        .enumerate()
        .map(|(n, way)| {
            Offer::new(format!("not-{}", n + 1), told(&way.way))
                .close(0.6)
                .because(way.because.as_str())
                .harm(way.harm)
        })
        .collect();
    let (choices, closeness) = one(Offer::new("speak", told(&stop.speak)), pool, chance)?;
    Some(Draft {
        competency: stop.competency.clone(),
        stem: wording(
            chance,
            &["What do you say and do?", "You see this. What now?"],
            &[],
        ),
        shown: Shown::Lines(vec![told(&stop.sees)]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(stop.because.as_str(), &stop.sources),
        study: [
            desk.lesson("four-handed-working"),
            Desk::study(None, stop.item.as_ref()),
        ]
        .concat(),
    })
}

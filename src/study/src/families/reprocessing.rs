//! Reprocessing class: what an instrument needs between patients.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
};
use crate::question::{Form, Shown};
use catalogue::items::Reprocessing;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "reprocessing",
    name: "What it needs between patients",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    desk.catalogue()
        .instruments
        .iter()
        .map(|i| i.id.to_string())
        .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let own = desk
        .catalogue()
        .instruments
        .iter()
        .find(|i| i.id.as_str() == id)?;
    let classes = [
        Reprocessing::Critical,
        Reprocessing::SemiCritical,
        Reprocessing::NonCritical,
        Reprocessing::SingleUse,
    ];
    let pool = classes
        .into_iter()
        .filter(|c| *c != own.reprocessing)
        .map(|c| class(c).close(0.5))
        .collect();
    let right = class(own.reprocessing);
    let because = format!("{}: {}", own.name, right.text);
    let (choices, closeness) = one(right, pool, chance)?;
    Some(Draft {
        competency: "infection-control".into(),
        stem: wording(
            chance,
            &[
                "To which class does this belong, and what follows: “{}”?",
                "The visit is over. What does this need before the next patient: “{}”?",
                "You clear the tray. How is this classed: “{}”?",
            ],
            &[&own.name],
        ),
        shown: Shown::Items(vec![own.id.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(because, &own.sources),
        study: [
            desk.lesson("reprocessing"),
            Desk::study(None, Some(&own.id)),
        ]
        .concat(),
    })
}

/// The classes and what they ask for, in the words of the catalogue's schema.
fn class(of: Reprocessing) -> Offer {
    match of {
        Reprocessing::Critical => Offer::new(
            "critical",
            "Critical, it enters tissue or bone: sterilise it.",
        ),
        Reprocessing::SemiCritical => Offer::new(
            "semi-critical",
            "Semi-critical, it touches mucosa: sterilise it if it bears heat.",
        ),
        Reprocessing::NonCritical => Offer::new(
            "non-critical",
            "Non-critical, it touches intact skin at most: clean and disinfect it, or cover it.",
        ),
        Reprocessing::SingleUse => Offer::new(
            "single-use",
            "Single-use: it serves one patient and is thrown away.",
        ),
    }
}

//! Must come before: which item has to be in use before another.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::within,
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "before",
    name: "What has to come first",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        for pair in &procedure.must_before {
            facts.push(format!("{}.{}.{}", procedure.id, pair.first, pair.then));
        }
    }
    facts
}

/// Why the one comes before the other.
fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, first, then] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let pair = procedure
        .must_before
        .iter()
        .find(|m| m.first.as_str() == first && m.then.as_str() == then)?;
    // The reason for another pair is wrong where neither of the two is in it,
    // and where it does not speak of the same thing.
    let own = super::text::marks(&pair.because);
    let near = procedure.must_before.iter().map(|m| (m, 0.8));
    let far = desk
        .catalogue()
        .procedures
        .iter()
        .flat_map(|p| &p.must_before)
        .map(|m| (m, 0.5));
    let start = chance.below(40);
    let pool = near
        .chain(far.skip(start).take(24))
        .filter(|(m, _)| {
            let both = [&m.first, &m.then];
            !both.contains(&&pair.first)
                && !both.contains(&&pair.then)
                && super::text::alike(super::text::marks(&m.because), own) < 0.4
        })
        .map(|(m, close)| {
            Offer::new(format!("{}-{}", m.first, m.then), m.because.as_str())
                .close(close)
                .because(format!(
                    "That is why “{}” comes before “{}”.",
                    desk.name(&m.first),
                    desk.name(&m.then)
                ))
        })
        .collect();
    let (choices, closeness) = one(
        Offer::new(format!("{first}-{then}"), pair.because.as_str()),
        pool,
        chance,
    )?;
    Some(Draft {
        competency: desk.laying(&procedure.id),
        stem: wording(
            chance,
            &[
                "{}: “{}” always comes before “{}”. Why?",
                "Why does {} need “{}” before “{}”?",
                "You lay the tray for {}. Why does “{}” stand before “{}”?",
            ],
            &[
                &within(&procedure.name),
                desk.name(&pair.first),
                desk.name(&pair.then),
            ],
        ),
        shown: Shown::Items(vec![pair.first.clone(), pair.then.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(procedure, pair.because.as_str()),
        study: Desk::study(Some(procedure), Some(&pair.then)),
    })
}

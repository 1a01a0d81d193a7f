//! Hazards of a procedure, and what keeps each from doing harm.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, echoes, lower, marks, sentence, within},
    texts::{at, places},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "hazard",
    name: "A hazard, and what keeps it off",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        let told = procedure
            .hazards
            .iter()
            .filter(|h| parted(h).is_some())
            .count();
        if told >= 3 {
            let all = places(procedure.id.as_str(), procedure.hazards.len());
            facts.extend(
                all.zip(&procedure.hazards)
                    .filter(|(_, h)| parted(h).is_some())
                    .map(|(p, _)| p),
            );
        }
    }
    facts.retain(|fact| {
        let parts: Vec<&str> = fact.split('.').collect();
        write(desk, &parts, &mut Seed::new(0)).is_some()
    });
    facts
}

/// A hazard and what is done about it, where it is written as 'this: that', and
/// the second half does not name the first.
fn parted(hazard: &str) -> Option<(&str, &str)> {
    hazard
        .split_once(": ")
        .filter(|(what, then)| what.len() < 70 && then.len() > 24 && !echoes(then, what))
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, place] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let own = at(&procedure.hazards, place)?;
    let (what, then) = parted(own)?;
    let words = marks(own);
    let pool = procedure
        .hazards
        .iter()
        .enumerate()
        .filter_map(|(n, h)| Some((n, h, parted(h)?)))
        .filter(|(_, h, _)| alike(marks(h), words) < 0.34)
        .map(|(n, _, (other, rest))| {
            Offer::new(format!("{}", n + 1), sentence(rest))
                .close(0.5)
                .because(format!("That is about another hazard: {}.", lower(other)))
        })
        .collect();
    let (choices, closeness) = one(Offer::new(place, sentence(then)), pool, chance)?;
    Some(Draft {
        competency: if procedure.competency.as_str() == "tray-set-ups" {
            "chairside".into()
        } else {
            procedure.competency.clone()
        },
        stem: wording(
            chance,
            &[
                "This is a hazard of {}. Which of these belongs to it?",
                "{}: you guard against this. Which of these goes with it?",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Lines(vec![sentence(what)]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(procedure, own.as_str()),
        study: Desk::study(Some(procedure), None),
    })
}

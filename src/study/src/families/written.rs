//! What is written in the record: a line that only one treatment leaves there.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, echoes, marks},
    texts::{at, places},
};
use crate::question::{Form, Shown};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "record",
    name: "What is written in the record",
    facts,
    write,
};

/// Two lines as like as this say the same thing.
const SAME: f32 = 0.4;

fn facts(desk: &Desk) -> Vec<String> {
    let lines: Vec<(usize, u128)> = desk
        .treatments()
        .enumerate()
        .flat_map(|(n, p)| p.records.iter().map(move |r| (n, marks(r))))
        .collect();
    let mut facts = Vec::new();
    for (n, procedure) in desk.treatments().enumerate() {
        for (place, line) in
            places(procedure.id.as_str(), procedure.records.len()).zip(&procedure.records)
        {
            let own = marks(line);
            // A bounded look at the others keeps a large catalogue quick; writing looks at all.
            let shared = lines
                .iter()
                .take(400)
                .filter(|(m, r)| *m != n && alike(*r, own) >= SAME)
                .count();
            if shared <= 8 && own.count_ones() >= 5 && !echoes(line, &procedure.name) {
                facts.push(place);
            }
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, place] = fact else {
        return None;
    };
    let procedure = desk.treatment(procedure)?;
    let line = at(&procedure.records, place)?;
    let own = marks(line);
    let pool = desk
        .treatments()
        .filter(|p| p.id != procedure.id && p.records.iter().all(|r| alike(marks(r), own) < SAME))
        .filter(|p| !echoes(line, &p.name))
        .map(|p| {
            let shared = procedure
                .steps
                .iter()
                .filter(|s| s.include.is_some() && p.steps.iter().any(|o| o.include == s.include))
                .count();
            let close = 0.35 + 0.1 * f32::from(u16::try_from(shared.min(5)).unwrap_or(5));
            Offer::new(p.id.as_str(), p.name.as_str())
                .close(close)
                .because("Its record has no such line.")
        })
        .collect();
    let (choices, closeness) = one(
        Offer::new(procedure.id.as_str(), procedure.name.as_str()),
        pool,
        chance,
    )?;
    Some(Draft {
        competency: super::next::step_competency(procedure),
        stem: wording(
            chance,
            &[
                "After which of these is this written in the record?",
                "A line of a record asks for this. Which treatment was it?",
            ],
            &[],
        ),
        shown: Shown::Lines(vec![line.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(
            procedure,
            format!("The record of this treatment holds: {line}"),
        ),
        study: Desk::study(Some(procedure), None),
    })
}

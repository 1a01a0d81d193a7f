//! Mixing, working and setting time: a number to type.

use super::{Desk, Draft, Family, draft::wording};
use crate::question::{Form, Shown};
use catalogue::{
    items::Mixing,
    quantity::{Milli, Span},
};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "mix-time",
    name: "How long it is mixed, worked and setting",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for material in &desk.catalogue().materials {
        let Some(mixing) = &material.mixing else {
            continue;
        };
        for kind in ["mix", "work", "set"] {
            if span(mixing, kind).is_some() {
                facts.push(format!("{}.{kind}", material.id));
            }
        }
    }
    facts
}

fn span(mixing: &Mixing, kind: &str) -> Option<Span> {
    match kind {
        "mix" => Some(mixing.mix_seconds),
        "work" => Some(mixing.work_seconds),
        // Nobody can know hours by the minute, and kinds differ by as much.
        "set" => mixing.set_seconds.filter(|s| s.from < 3600),
        _ => None,
    }
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id, kind] = fact else { return None };
    let item = desk.item(id)?;
    let catalogue::Item::Material(material) = item else {
        return None;
    };
    let mixing = material.mixing.as_ref()?;
    let span = span(mixing, kind)?;
    // Times of some minutes are asked for in minutes, where they are whole or half ones.
    let minutes = span.from >= 120 && span.from % 30 == 0 && span.to % 30 == 0;
    let (unit, from, to) = if minutes {
        (
            "min",
            thousandths(span.from, 60)?,
            thousandths(span.to, 60)?,
        )
    } else {
        ("s", thousandths(span.from, 1)?, thousandths(span.to, 1)?)
    };
    let long = if minutes { "minutes" } else { "seconds" };
    let wordings: &[&str] = match kind {
        "mix" => &[
            "For how many {} is this mixed: “{}”?",
            "How many {} does mixing take for this: “{}”?",
        ],
        "work" => &[
            "How many {} of working time, from the start of the mix, does this leave: “{}”?",
            "From the start of the mix, for how many {} can this be worked: “{}”?",
        ],
        _ => &[
            "How many {} after the start of the mix has this set in the mouth: “{}”?",
            "From the start of the mix, how many {} does this take to set in the mouth: “{}”?",
        ],
    };
    let mut stem = wording(chance, wordings, &[long, &material.name]);
    if from != to {
        stem.push_str(" Any number in the accepted range is right.");
    }
    let said = if from == to {
        format!("{from}")
    } else {
        format!("{from} to {to}")
    };
    Some(Draft {
        competency: "mixing".into(),
        stem,
        shown: Shown::Items(vec![material.id.clone()]),
        form: Form::Number {
            unit: unit.into(),
            from,
            to,
        },
        closeness: 0.5,
        reasons: Desk::reason(
            format!("It is {said} {long} as a rule; the label of the product comes first"),
            &mixing.sources,
        ),
        study: Desk::study(None, Some(&material.id)),
    })
}

fn thousandths(seconds: u32, per: u32) -> Option<Milli> {
    i32::try_from(seconds * 1000 / per).ok().map(Milli)
}

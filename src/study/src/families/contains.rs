//! What contains a substance that some patients must not meet.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::echoes,
};
use crate::question::{Form, Shown};
use catalogue::{
    ids::SubstanceId,
    rules::{Conclusion, Rule},
};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "contains",
    name: "What an allergic patient must not meet",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for item in desk.catalogue().items() {
        for substance in item.contains() {
            if rule(desk, substance).is_some() && !echoes(&substance.0, item.name()) {
                facts.push(format!("{substance}.{}", item.id()));
            }
        }
    }
    facts
}

/// The rule that keeps a substance from somebody.
fn rule<'d>(desk: &'d Desk, substance: &SubstanceId) -> Option<&'d Rule> {
    let avoids = |c: &Conclusion| matches!(c, Conclusion::Avoid { substance: s } if s == substance);
    desk.catalogue()
        .rules
        .iter()
        .find(|r| r.then.iter().any(avoids))
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[substance, item] = fact else {
        return None;
    };
    let substance = SubstanceId::from(substance);
    let rule = rule(desk, &substance)?;
    let item = desk
        .item(item)
        .filter(|i| i.contains().contains(&substance))?;
    let mut pool = Vec::new();
    let mut add = |id: &catalogue::ids::ItemId, close: f32| {
        if let Some(other) = desk.item(id.as_str())
            && !other.contains().contains(&substance)
        {
            pool.push(
                Offer::of(id, other.name())
                    .close(close)
                    .because(format!("It contains no {substance}.")),
            );
        }
    };
    for id in item
        .lookalikes()
        .iter()
        .map(|l| &l.item)
        .chain(desk.family(item.family()))
    {
        add(id, 0.75);
    }
    for _ in 0..12 {
        let id = match item {
            catalogue::Item::Material(_) => chance.pick(&desk.catalogue().materials).map(|m| &m.id),
            catalogue::Item::Instrument(_) => {
                chance.pick(&desk.catalogue().instruments).map(|i| &i.id)
            }
        };
        add(id?, 0.4);
    }
    let (choices, closeness) = one(Offer::of(item.id(), item.name()), pool, chance)?;
    Some(Draft {
        competency: rule.competency.clone(),
        stem: wording(
            chance,
            &[
                "A patient must not meet {}. Which of these stays in the drawer?",
                "Which of these contains {}?",
                "The chart warns of {}. Which of these do you keep off the tray?",
            ],
            &[&substance.0],
        ),
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness,
        reasons: [
            Desk::reason(
                format!("{} contains {substance}", item.name()),
                item.sources(),
            ),
            vec![clinic::Reason::of(rule)],
        ]
        .concat(),
        study: Desk::study(None, Some(item.id())),
    })
}

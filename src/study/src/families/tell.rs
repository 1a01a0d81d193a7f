//! Tell two lookalikes apart in words.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, marks},
};
use crate::question::{Form, Shown};
use catalogue::ids::ItemId;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "tell",
    name: "How two lookalikes differ",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for item in desk.catalogue().items() {
        for other in item.lookalikes() {
            if neutral(&other.tell, item.name(), desk.name(&other.item)) {
                facts.push(format!("{}.{}", item.id(), other.item));
            }
        }
    }
    facts
}

/// Whether a text says how two things differ without their names, which would
/// give it away among others.
fn neutral(tell: &str, a: &str, b: &str) -> bool {
    let names = |name: &str| {
        super::text::echoes(tell, name)
            || name
                .split(' ')
                .any(|w| w.bytes().any(|b| b.is_ascii_digit()) && tell.contains(w))
    };
    !names(a) && !names(b)
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[a, b] = fact else { return None };
    let (a, b) = (desk.item(a)?, desk.item(b)?);
    let tell = a.lookalikes().iter().find(|l| l.item == *b.id())?;
    let own = marks(&tell.tell);
    let mut pool = Vec::new();
    let family = desk.family(a.family());
    let start = chance.below(family.len());
    let near = family.iter().cycle().skip(start).take(family.len().min(12));
    let far: Vec<ItemId> = (0..30)
        .filter_map(|_| chance.pick(&desk.catalogue().instruments))
        .map(|i| i.id.clone())
        .collect();
    for (id, close) in near
        .map(|id| (id, 0.75))
        .chain(far.iter().map(|id| (id, 0.45)))
    {
        let Some(other) = desk.item(id.as_str()) else {
            continue;
        };
        for told in other.lookalikes() {
            let both = [id, &told.item];
            if !both.contains(&a.id())
                && !both.contains(&b.id())
                && neutral(&told.tell, a.name(), b.name())
                && neutral(&told.tell, other.name(), desk.name(&told.item))
                && alike(marks(&told.tell), own) < 0.5
            {
                pool.push(
                    Offer::new(format!("{id}-{}", told.item), told.tell.as_str())
                        .close(close)
                        .because(format!(
                            "That tells these apart: {} and {}.",
                            other.name(),
                            desk.name(&told.item)
                        )),
                );
            }
        }
    }
    let (choices, closeness) = one(
        Offer::new(format!("{}-{}", a.id(), b.id()), tell.tell.as_str()),
        pool,
        chance,
    )?;
    Some(Draft {
        competency: desk.knowing(a),
        stem: wording(
            chance,
            &[
                "How do you tell “{}” from “{}”?",
                "“{}” is easily taken for “{}”. How do the two differ?",
            ],
            &[a.name(), b.name()],
        ),
        shown: Shown::Items(vec![a.id().clone(), b.id().clone()]),
        form: Form::One(choices),
        closeness,
        reasons: desk.reason(tell.tell.as_str(), a.sources()),
        study: [
            desk.study(None, Some(a.id())),
            desk.study(None, Some(b.id())),
        ]
        .concat(),
    })
}

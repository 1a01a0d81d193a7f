//! Tray reading: from what lies there to what it is laid for.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::echoes,
};
use crate::question::{Form, Shown};
use catalogue::{ids::ItemId, procedures::Procedure};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "reading",
    name: "What is this tray laid for",
    facts,
    write,
};

/// A treatment, and an item that lies on the tray shown.
fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in desk.treatments() {
        for each in telling(desk, procedure).take(4) {
            facts.push(format!("{}.{each}", procedure.id));
        }
    }
    facts
}

/// What the own steps use, without what names the treatment.
fn telling<'d>(desk: &'d Desk, procedure: &'d Procedure) -> impl Iterator<Item = &'d ItemId> {
    desk.laid(&procedure.id)
        .iter()
        .filter(|l| l.from == procedure.id && !echoes(&procedure.name, desk.name(&l.item)))
        .map(|l| &l.item)
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, item] = fact else {
        return None;
    };
    let procedure = desk.treatment(procedure)?;
    let item = telling(desk, procedure).find(|i| i.as_str() == item)?;
    let mut shown: Vec<ItemId> = telling(desk, procedure)
        .filter(|i| *i != item)
        .cloned()
        .collect();
    chance.shuffle(&mut shown);
    shown.truncate(5);
    shown.push(item.clone());
    chance.shuffle(&mut shown);
    // Another treatment is wrong only where it never uses something that lies there.
    let never = |other: &Procedure| -> Vec<&ItemId> {
        shown.iter().filter(|i| !desk.uses(&other.id, i)).collect()
    };
    let pool: Vec<Offer> = desk
        .treatments()
        .filter(|p| p.id != procedure.id)
        .filter_map(|other| {
            let strange = never(other);
            let first = strange.first()?;
            let shared = u16::try_from(shown.len() - strange.len()).unwrap_or(0);
            // One odd item could have strayed there; two speak for another treatment.
            (strange.len() >= 2).then(|| {
                Offer::new(other.id.as_str(), other.name.as_str())
                    .close(0.2 + 0.15 * f32::from(shared))
                    .because(format!("It never uses this: {}.", desk.name(first)))
            })
        })
        .collect();
    let right = Offer::new(procedure.id.as_str(), procedure.name.as_str());
    let (choices, closeness) = one(right, pool, chance)?;
    Some(Draft {
        competency: "tray-set-ups".into(),
        stem: wording(
            chance,
            &[
                "Among other things these lie on a tray. What is it laid for?",
                "You come into a room and see this on the tray. Which treatment is about to begin?",
                "Which of these treatments uses all of this?",
            ],
            &[],
        ),
        shown: Shown::Items(shown),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(
            procedure,
            "All of these are used in its own steps, and each of the other treatments lacks at least two of them",
        ),
        study: Desk::study(Some(procedure), None),
    })
}

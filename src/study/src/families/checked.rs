//! What is looked at when the patient comes back, and why.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, marks},
};
use crate::question::{Form, Shown};
use catalogue::plans::{Check, CheckKind};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "checked",
    name: "What is checked at recall, and why",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    desk.catalogue()
        .checks
        .iter()
        .map(|c| c.id.to_string())
        .collect()
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id] = fact else { return None };
    let check = desk.catalogue().check(&id.into())?;
    let own = marks(&check.because);
    let pool = desk
        .catalogue()
        .checks
        .iter()
        .filter(|c| {
            c.id != check.id && c.kind == check.kind
                || check.kind == CheckKind::Expected && c.kind == CheckKind::Sign
        })
        .filter(|c| alike(marks(&c.because), own) < 0.4)
        .map(|c: &Check| {
            Offer::new(c.id.as_str(), c.because.as_str())
                .close(0.6)
                .because(format!("That is said of this: {}.", c.name))
        })
        .collect();
    let (choices, closeness) = one(Offer::new(id, check.because.as_str()), pool, chance)?;
    let wordings: &[&str] = match check.kind {
        CheckKind::AtVisit => &[
            "At the recall visit this belongs to what is done: {}. What for?",
            "Why does the recall visit include {}?",
        ],
        CheckKind::Sign => &[
            "The patient is told to come at once for {}. Why?",
            "Why does {} bring a patient back before the date?",
        ],
        CheckKind::Expected => &[
            "The patient is told to expect {}. Why is that no cause for worry?",
            "Why is {} to be expected after the visit?",
        ],
    };
    Some(Draft {
        competency: "patient-care".into(),
        stem: wording(chance, wordings, &[&check.name]),
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(check.because.as_str(), &[]),
        study: desk.lesson("pulp-protection"),
    })
}

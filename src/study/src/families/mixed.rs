//! What the families about mixing share.

use super::{
    Desk, Draft,
    draft::{Offer, one, wording},
    text::{alike, marks},
};
use crate::question::{Form, Shown};
use catalogue::items::{Material, Mixing};
use clinic::case::Seed;

/// The materials that are mixed.
pub(super) fn mixed(desk: &Desk) -> impl Iterator<Item = (&Material, &Mixing)> {
    desk.catalogue()
        .materials
        .iter()
        .filter_map(|m| Some((m, m.mixing.as_ref()?)))
}

/// The ids of the materials that are mixed, as facts.
pub(super) fn ids(desk: &Desk) -> Vec<String> {
    mixed(desk)
        .map(|(material, _)| material.id.to_string())
        .collect()
}

/// A material that is mixed, by the fact that names it.
pub(super) fn of_fact<'d>(desk: &'d Desk, fact: &[&str]) -> Option<(&'d Material, &'d Mixing)> {
    let &[id] = fact else { return None };
    mixed(desk).find(|(material, _)| material.id.as_str() == id)
}

/// A question of which text holds for a material, told from what holds for
/// other materials. `says` picks the text; the wordings name the material.
pub(super) fn told_apart(
    desk: &Desk,
    fact: &[&str],
    chance: &mut Seed,
    says: fn(&Mixing) -> &str,
    wordings: &[&str],
) -> Option<Draft> {
    let (material, mixing) = of_fact(desk, fact)?;
    let right = says(mixing);
    let pool = mixed(desk)
        .filter(|(other, mix)| other.id != material.id && parts_apart(says(mix), right))
        .map(|(other, mix)| {
            let close = if other.family == material.family {
                0.8
            } else {
                0.5
            };
            Offer::new(other.id.as_str(), says(mix))
                .close(close)
                .because(format!("So it is with this: {}.", other.name))
        })
        .collect();
    let (choices, closeness) = one(Offer::new(material.id.as_str(), right), pool, chance)?;
    Some(Draft {
        competency: "mixing".into(),
        stem: wording(chance, wordings, &[&material.name]),
        shown: Shown::Items(vec![material.id.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(format!("{}: {right}", material.name), &mixing.sources),
        study: Desk::study(None, Some(&material.id)),
    })
}

/// Whether no part of one text says what a part of the other says. A text may
/// give alternatives: `a paper pad, or a glass slab`.
fn parts_apart(a: &str, b: &str) -> bool {
    fn parts(text: &str) -> impl Iterator<Item = &str> {
        text.split([',', ';']).flat_map(|p| p.split(" or "))
    }
    let apart = |p: &str, q: &str| {
        let (p, q) = (p.trim(), q.trim());
        !p.eq_ignore_ascii_case(q) && alike(marks(p), marks(q)) < 0.6
    };
    parts(a).all(|p| parts(b).all(|q| p.trim().is_empty() || q.trim().is_empty() || apart(p, q)))
}

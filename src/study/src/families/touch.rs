//! Which material must not lie under which, and why.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, marks},
};
use crate::question::{Form, Shown};
use catalogue::items::{Conflict, Material, Role};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "touch",
    name: "Which materials must not touch",
    facts,
    write,
};

/// So many candidates are as good as all, and keep a large catalogue quick.
const ENOUGH: usize = 24;

/// A material, the class above it, and whether the question is which or why.
fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for material in &desk.catalogue().materials {
        for conflict in &material.not_under {
            facts.push(format!("{}.{}.why", material.id, conflict.class));
            if !under(material).is_empty() {
                facts.push(format!("{}.{}.which", material.id, conflict.class));
            }
        }
    }
    facts.retain(|fact| {
        let parts: Vec<&str> = fact.split('.').collect();
        write(desk, &parts, &mut Seed::new(0)).is_some()
    });
    facts
}

/// The roles in which a material lies under another.
fn under(material: &Material) -> Vec<Role> {
    let below = [Role::Liner, Role::Base, Role::Sealer];
    material
        .roles
        .iter()
        .filter(|r| below.contains(r))
        .copied()
        .collect()
}

/// The class in words.
fn class(id: &str) -> String {
    id.replace('-', " ")
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[id, above, asked] = fact else {
        return None;
    };
    let all = &desk.catalogue().materials;
    let own = all.iter().find(|m| m.id.as_str() == id)?;
    let conflict = own.not_under.iter().find(|c| c.class.as_str() == above)?;
    let above = class(above);
    let (choices, closeness, stem) = if asked == "which" {
        let pool = all
            .iter()
            .filter(|m| {
                !under(m).is_empty()
                    && m.class != conflict.class
                    && m.not_under.iter().all(|c| c.class != conflict.class)
            })
            .map(|m| {
                let close = if under(m).iter().any(|r| own.roles.contains(r)) {
                    0.75
                } else {
                    0.5
                };
                Offer::of(&m.id, &m.name)
                    .close(close)
                    .because("Nothing speaks against it there.")
            })
            .take(ENOUGH)
            .collect();
        let (choices, closeness) = one(Offer::of(&own.id, &own.name), pool, chance)?;
        let stem = wording(
            chance,
            &[
                "Which of these must not lie under {}?",
                "The dentist plans {} on top. Which of these may not be underneath?",
            ],
            &[&above],
        );
        (choices, closeness, stem)
    } else {
        let words = marks(&conflict.because);
        let others = all
            .iter()
            .flat_map(|m| m.not_under.iter().map(move |c| (m, c)));
        let covers = all.iter().filter_map(|m| Some((m, m.cover.as_ref()?)));
        let reason = |m: &Material, of: &str, text: &str| {
            let close = if m.family == own.family { 0.7 } else { 0.5 };
            Offer::new(format!("{}.{of}", m.id), text)
                .close(close)
                .because(format!("That is said of this: {}.", m.name))
        };
        let pool = others
            .filter(|(m, c): &(&Material, &Conflict)| {
                m.id != own.id && m.class != own.class && alike(marks(&c.because), words) < 0.4
            })
            .map(|(m, c)| reason(m, c.class.as_str(), &c.because))
            .chain(
                covers
                    .filter(|(m, c)| m.id != own.id && alike(marks(&c.because), words) < 0.4)
                    .map(|(m, c)| reason(m, "cover", &c.because)),
            )
            .take(ENOUGH)
            .collect();
        let (choices, closeness) =
            one(Offer::new("right", conflict.because.as_str()), pool, chance)?;
        let stem = wording(
            chance,
            &[
                "Why must “{}” not lie under {}?",
                "Why does “{}” have no place under {}?",
            ],
            &[&own.name, &above],
        );
        (choices, closeness, stem)
    };
    Some(Draft {
        competency: "materials".into(),
        stem,
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(conflict.because.as_str(), &conflict.sources),
        study: [
            desk.lesson("materials-side-by-side"),
            Desk::study(None, Some(&own.id)),
        ]
        .concat(),
    })
}

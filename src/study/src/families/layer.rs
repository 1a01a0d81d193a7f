//! Which liner, base, temporary or filling may lie there, for one patient.

use super::{
    Desk, Draft, Family,
    draft::{Offer, several, wording},
    patients::{chart, patient, words},
};
use crate::question::{Form, Shown};
use catalogue::{ids::ItemId, items::Role};
use clinic::{
    Reason,
    case::Seed,
    engine::Conclusions,
    layers::{LayerVerdict, Stack},
    standing::Standing,
};

pub(super) const FAMILY: Family = Family {
    id: "layer",
    name: "Which material may lie there",
    facts,
    write,
};

const ROLES: [(&str, Role); 4] = [
    ("liner", Role::Liner),
    ("base", Role::Base),
    ("temporary", Role::Temporary),
    ("permanent", Role::Permanent),
];
/// Thickness in millimetres with exposure and bleeding: one depth of each band.
const DEPTHS: [(&str, &str, &str, &str); 5] = [
    ("ample", "2.5", "none", "none"),
    ("fair", "1.7", "none", "none"),
    ("thin", "1", "none", "none"),
    ("very-thin", "0.3", "none", "none"),
    ("exposed", "0", "pin-point", "stops"),
];
const ALLERGIES: [&str; 3] = ["none", "allergy-eugenol", "allergy-methacrylate"];

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for (role, _) in ROLES {
        for (band, ..) in DEPTHS {
            for planned in words(desk, "planned-permanent") {
                // How the tooth is kept dry decides about the filling only.
                let kept = if role == "permanent" { 2 } else { 1 };
                for isolation in words(desk, "isolation").into_iter().take(kept) {
                    for allergy in ALLERGIES {
                        let fact = [role, band, planned, isolation, allergy];
                        if verdicts(desk, &fact).is_some_and(|(_, v)| asks(&v)) {
                            facts.push(fact.join("."));
                        }
                    }
                }
            }
        }
    }
    facts
}

/// Something is right for a stated reason, and at least two things are wrong for one.
fn asks(verdicts: &[LayerVerdict]) -> bool {
    let good = |v: &&LayerVerdict| v.standing <= Standing::Acceptable && !v.reasons.is_empty();
    let bad = verdicts.iter().filter(|v| spoken_against(v)).count();
    verdicts.iter().any(|v| good(&v)) && bad >= 2
}

/// What no rule and no fact of a material speaks against could still be right in
/// some practice, so it is not offered as wrong.
fn spoken_against(verdict: &LayerVerdict) -> bool {
    verdict.standing >= Standing::Wrong && !verdict.reasons.is_empty()
}

fn verdicts(desk: &Desk, fact: &[&str]) -> Option<(Conclusions, Vec<LayerVerdict>)> {
    let &[role, band, planned, isolation, allergy] = fact else {
        return None;
    };
    let role = ROLES.iter().find(|(id, _)| *id == role)?.1;
    let (_, thickness, exposure, bleeding) = DEPTHS.into_iter().find(|(id, ..)| *id == band)?;
    if matches!(role, Role::Temporary | Role::Base) && exposure != "none" {
        // An exposed pulp is capped first: no temporary and no bare base goes on it.
        return None;
    }
    let depth = if ["ample", "fair"].contains(&band) {
        "middle"
    } else {
        "inner"
    };
    let closing = if role == Role::Temporary {
        "temporary"
    } else {
        "permanent"
    };
    let mut signs = vec![
        ("radiograph-depth", depth),
        ("planned-permanent", planned),
        ("isolation", isolation),
        ("remaining-dentine", thickness),
        ("exposure", exposure),
        ("bleeding", bleeding),
        ("closing", closing),
    ];
    if allergy != "none" {
        signs.push((allergy, "yes"));
    }
    let all = desk.clinic.reason(&patient(desk, &signs)?);
    let verdicts = desk
        .clinic
        .layer_verdicts(&all, role, &stack(desk, &all, role)?);
    Some((all, verdicts))
}

/// What closes the cavity above a liner or base, as the rules want it.
fn stack(desk: &Desk, all: &Conclusions, role: Role) -> Option<Stack> {
    if matches!(role, Role::Temporary | Role::Permanent) {
        return Some(Stack::default());
    }
    let closing = best(
        desk.clinic
            .layer_verdicts(all, Role::Permanent, &Stack::default()),
    )?;
    Some(Stack {
        closing: Some(closing),
        ..Stack::default()
    })
}

fn best(verdicts: Vec<LayerVerdict>) -> Option<ItemId> {
    let right = verdicts
        .into_iter()
        .filter(|v| v.standing == Standing::Right);
    right
        .min_by(|a, b| a.item.cmp(&b.item))
        .and_then(|v| v.item)
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let (all, verdicts) = verdicts(desk, fact)?;
    let (role, allergy) = (*fact.first()?, *fact.last()?);
    let (mut right, mut pool, mut reasons) = (Vec::new(), Vec::new(), Vec::<Reason>::new());
    for verdict in &verdicts {
        let because = verdict
            .reasons
            .first()
            .map_or("Nothing asks for it here.", |r| r.because.as_str());
        let offer = match &verdict.item {
            Some(item) => Offer::of(item, desk.name(item)),
            None => Offer::new("left-out", "Nothing: it is left out"),
        };
        let offer = offer
            .close(if verdict.reasons.is_empty() { 0.5 } else { 0.8 })
            .because(because);
        if verdict.standing <= Standing::Acceptable {
            reasons.extend(verdict.reasons.iter().cloned());
            right.push(offer);
        } else if spoken_against(verdict) {
            pool.push(offer.harm(verdict.standing == Standing::Unsafe));
        }
    }
    reasons.dedup();
    let single = right.len() == 1;
    let (choices, closeness) = several(right, pool, if single { 3 } else { 4 }, chance)?;
    let mut shown = vec![
        "remaining-dentine",
        "exposure",
        "planned-permanent",
        "isolation",
    ];
    if allergy != "none" {
        shown.push(allergy);
    }
    let mut lines = chart(desk, &all.patient, &shown);
    if let Some(closing) =
        stack(desk, &all, ROLES.iter().find(|(id, _)| *id == role)?.1).and_then(|s| s.closing)
    {
        lines.push(format!("It will be closed with: {}.", desk.name(&closing)));
    }
    let wordings: &[&str] = match role {
        "liner" => &[
            "What may go on the deepest spot as a liner or cap here?",
            "The floor is to be lined or capped, if at all. What may it be?",
        ],
        "base" => &[
            "What may go over the floor as a base here, where no liner is placed?",
            "No liner is placed. What may serve as the base here, if one is wanted?",
        ],
        "temporary" => &[
            "The tooth is closed for some weeks. What may the temporary be?",
            "What may close this tooth as a temporary?",
        ],
        _ => &[
            "The tooth is closed for good. What may the filling be?",
            "What may close this tooth for years?",
        ],
    };
    if reasons.is_empty() {
        return None;
    }
    Some(Draft {
        competency: "materials".into(),
        stem: wording(chance, wordings, &[]),
        shown: Shown::Lines(lines),
        form: if single {
            Form::One(choices)
        } else {
            Form::All(choices)
        },
        closeness,
        reasons,
        study: [
            desk.lesson("pulp-protection"),
            desk.lesson("materials-side-by-side"),
        ]
        .concat(),
    })
}

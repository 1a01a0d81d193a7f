//! Recall interval: when the patient comes back after a plan.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::lower,
};
use crate::question::{Form, Shown};
use catalogue::plans::Plan;
use clinic::{case::Seed, recall::Return};

pub(super) const FAMILY: Family = Family {
    id: "interval",
    name: "When the patient comes back",
    facts,
    write,
};

/// Intervals that people speak in. What is right among them is asked of the plan.
const DAYS: [(u32, &str); 9] = [
    (1, "After one day"),
    (7, "After a week"),
    (14, "After two weeks"),
    (28, "After four weeks"),
    (70, "After ten weeks"),
    (91, "After three months"),
    (182, "After six months"),
    (365, "After twelve months"),
    (1095, "After three years"),
];

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for plan in desk
        .catalogue()
        .plans
        .iter()
        .filter(|p| !p.recalls.is_empty())
    {
        for (band, mm) in BANDS {
            if fits(desk, plan, mm).is_some() {
                facts.push(format!("{}.{band}", plan.id));
            }
        }
    }
    facts
}

/// Two depths, where the plan asks for different dates by depth; one where it does not.
const BANDS: [(&str, &str); 2] = [("fair", "1.7"), ("very-thin", "0.4")];

fn fits(desk: &Desk, plan: &Plan, mm: &str) -> Option<Return> {
    let by_depth = plan.recalls.iter().any(|r| {
        r.when
            .as_ref()
            .is_some_and(|w| w.text().contains("thickness"))
    });
    let visit = visit(desk, plan, mm)?;
    let right = DAYS
        .iter()
        .filter(|(d, _)| visit.reason_for(*d).is_some())
        .count();
    (right >= 1 && (by_depth || mm == BANDS[0].1)).then_some(visit)
}

fn visit(desk: &Desk, plan: &Plan, mm: &str) -> Option<Return> {
    let signs = [
        ("remaining-dentine", mm),
        ("exposure", "none"),
        (
            "radiograph-depth",
            if mm == "1.7" { "middle" } else { "inner" },
        ),
    ];
    let patient = super::patients::patient(desk, &signs)?;
    let all = desk.clinic.reason(&patient);
    Some(desk.clinic.return_visit(plan, &all.patient))
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[plan, band] = fact else { return None };
    let plan = desk.catalogue().plan(&plan.into())?;
    let mm = BANDS.iter().find(|(b, _)| *b == band)?.1;
    let visit = fits(desk, plan, mm)?;
    let right: Vec<_> = DAYS
        .iter()
        .filter(|(d, _)| visit.reason_for(*d).is_some())
        .collect();
    let (days, label) = **chance.pick(&right)?;
    // A date that any source accepts is never a wrong one, nor one close to it.
    let near = |d: u32| {
        visit
            .spans
            .iter()
            .any(|(span, _)| d * 5 >= span.from * 4 && d * 4 <= span.to * 5)
    };
    let pool = DAYS
        .iter()
        .filter(|(d, _)| !near(*d))
        .map(|(d, label)| {
            let because = if *d < days {
                "Too soon to tell anything that matters."
            } else {
                "Too late for what has to be looked at."
            };
            Offer::new(format!("days-{d}"), *label)
                .close(0.6)
                .because(because)
        })
        .collect();
    let reason = visit.reason_for(days)?.clone();
    let (choices, closeness) = one(Offer::new(format!("days-{days}"), label), pool, chance)?;
    let mut lines = vec![super::text::sentence(&plan.about)];
    if plan.recalls.iter().any(|r| r.when.is_some()) {
        lines.push(format!("{mm} mm of dentine were left over the pulp."));
    }
    Some(Draft {
        competency: "patient-care".into(),
        stem: wording(
            chance,
            &[
                "After this plan, when does the patient come back: “{}”?",
                "You write the card for the next visit. Which date goes with this: “{}”?",
            ],
            &[&lower(&plan.name)],
        ),
        shown: Shown::Lines(lines),
        form: Form::One(choices),
        closeness,
        reasons: vec![reason],
        study: [desk.lesson("pulp-protection"), plan_procedure(desk, plan)].concat(),
    })
}

/// The procedure that a plan turns into.
pub(super) fn plan_procedure(desk: &Desk, plan: &Plan) -> Vec<crate::question::Study> {
    let first = plan
        .procedures
        .first()
        .and_then(|p| desk.procedure(p.procedure.as_str()));
    Desk::study(first, None)
}

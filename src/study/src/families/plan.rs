//! What the visit turns into, from the findings and the depth.

use super::{
    Desk, Draft, Family,
    draft::{Offer, several, wording},
    patients::{chart, patient, words},
};
use crate::question::{Form, Shown};
use catalogue::plans::Plan;
use clinic::{Reason, case::Seed, engine::Conclusions, standing::Standing};

pub(super) const FAMILY: Family = Family {
    id: "plan",
    name: "What the visit turns into",
    facts,
    write,
};

/// Pain, cold and percussion: one row for each pattern worth telling apart.
const SIGNS: [(&str, &str, &str); 5] = [
    ("none", "brief", "not-tender"),
    ("on-stimulus", "sharp", "not-tender"),
    ("on-stimulus", "ebbs", "not-tender"),
    ("spontaneous", "lingers", "not-tender"),
    ("none", "silent", "tender"),
];
/// Dentine left in millimetres, exposure and bleeding.
const DEPTHS: [(&str, &str, &str); 5] = [
    ("1.7", "none", "none"),
    ("1", "none", "none"),
    ("0.4", "none", "none"),
    ("0", "pin-point", "stops"),
    ("0", "larger", "goes-on"),
];
const SHOWN: [&str; 9] = [
    "dentition",
    "pain",
    "cold",
    "percussion",
    "remaining-dentine",
    "exposure",
    "bleeding",
    "isolation",
    "time-left",
];

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for signs in 1..=SIGNS.len() {
        for depth in 1..=DEPTHS.len() {
            for dentition in words(desk, "dentition") {
                for isolation in words(desk, "isolation") {
                    let fact = format!(
                        "{}.{}.{dentition}.{isolation}",
                        SIGNS[signs - 1].1,
                        depth_id(depth - 1)
                    );
                    if draw(desk, &fact.split('.').collect::<Vec<_>>()).is_some() {
                        facts.push(fact);
                    }
                }
            }
        }
    }
    facts
}

/// A plan that leaves the way open to the dentist is never a wrong one.
fn can_be_wrong(plan: &Plan) -> bool {
    !plan.procedures.is_empty()
}

fn depth_id(at: usize) -> &'static str {
    ["fair", "thin", "very-thin", "pin-point", "larger"][at]
}

fn draw(desk: &Desk, fact: &[&str]) -> Option<Conclusions> {
    let &[cold, depth, dentition, isolation] = fact else {
        return None;
    };
    let (pain, cold, percussion) = *SIGNS.iter().find(|(_, c, _)| *c == cold)?;
    let (thickness, exposure, bleeding) =
        DEPTHS[(0..DEPTHS.len()).find(|at| depth_id(*at) == depth)?];
    let bleeding = if cold == "silent" { "none" } else { bleeding };
    let age = if dentition == "primary" { "7" } else { "35" };
    let signs = [
        ("pain", pain),
        ("cold", cold),
        ("percussion", percussion),
        (
            "radiograph-depth",
            if thickness == "1.7" {
                "middle"
            } else {
                "inner"
            },
        ),
        ("remaining-dentine", thickness),
        ("exposure", exposure),
        ("bleeding", bleeding),
        ("dentition", dentition),
        ("isolation", isolation),
        ("age", age),
    ];
    let all = desk.clinic.reason(&patient(desk, &signs)?);
    let verdicts = desk.clinic.plan_verdicts(&all);
    let wrong = verdicts
        .iter()
        .filter(|v| v.standing >= Standing::Wrong)
        .filter(|v| desk.catalogue().plan(&v.plan).is_some_and(can_be_wrong))
        .count();
    let good = verdicts
        .iter()
        .filter(|v| v.standing <= Standing::Acceptable)
        .count();
    (wrong >= 2 && good >= 1).then_some(all)
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let all = draw(desk, fact)?;
    let verdicts = desk.clinic.plan_verdicts(&all);
    let (mut right, mut pool, mut reasons) = (Vec::new(), Vec::new(), Vec::<Reason>::new());
    for verdict in &verdicts {
        let plan = desk.catalogue().plan(&verdict.plan)?;
        let because = verdict
            .reasons
            .first()
            .map_or("Nothing in these findings asks for it.", |r| {
                r.because.as_str()
            });
        let close = if verdict.reasons.is_empty() { 0.5 } else { 0.8 };
        let offer = Offer::new(plan.id.as_str(), plan.name.as_str())
            .close(close)
            .because(because);
        if verdict.standing <= Standing::Acceptable {
            reasons.extend(verdict.reasons.iter().cloned());
            right.push(offer);
        } else if can_be_wrong(plan) {
            pool.push(offer.harm(verdict.standing == Standing::Unsafe));
        }
    }
    reasons.dedup();
    let single = right.len() == 1;
    let want = if single { 3 } else { 4 };
    let (choices, closeness) = several(right, pool, want, chance)?;
    let wordings: &[&str] = if single {
        &[
            "The tooth is open. What will the dentist most likely call for?",
            "From these findings, what does the visit turn into?",
        ]
    } else {
        &[
            "The tooth is open. Which of these are taught as open to the dentist?",
            "From these findings, what may the visit turn into?",
        ]
    };
    Some(Draft {
        competency: "pulp-and-depth".into(),
        stem: wording(chance, wordings, &[]),
        shown: Shown::Lines(chart(desk, &all.patient, &SHOWN)),
        form: if single {
            Form::One(choices)
        } else {
            Form::All(choices)
        },
        closeness,
        reasons,
        study: desk.lesson("pulp-protection"),
    })
}

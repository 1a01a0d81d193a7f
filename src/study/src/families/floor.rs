//! How deep it is, and what goes on the floor.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    patients::{chart, finding_of, patient, says, words},
};
use crate::question::{Form, Shown};
use catalogue::{findings::Scale, items::Role, quantity::Milli};
use clinic::{Reason, case::Seed, engine::Conclusions, layers::Stack, standing::Standing};

pub(super) const FAMILY: Family = Family {
    id: "floor",
    name: "What the depth asks for on the floor",
    facts,
    write,
};

/// A thickness in tenths of a millimetre and the filling that is planned.
fn facts(desk: &Desk) -> Vec<String> {
    let Some(Scale::Number {
        least, most, step, ..
    }) = finding_of(desk, "remaining-dentine").map(|f| &f.scale)
    else {
        return Vec::new();
    };
    let mut facts = Vec::new();
    for tenths in (least.0 / 100..=most.0 / 100)
        .filter(|t| step.0 > 0 && (t * 100 - least.0) % step.0 == 0 && *t <= 30)
    {
        for planned in words(desk, "planned-permanent") {
            if draw(desk, &tenths.to_string(), planned).is_some() {
                facts.push(format!("{tenths}.{planned}"));
            }
        }
    }
    facts
}

fn draw(desk: &Desk, tenths: &str, planned: &str) -> Option<Conclusions> {
    let tenths: i32 = tenths.parse().ok()?;
    let (exposure, bleeding) = if tenths == 0 {
        ("pin-point", "stops")
    } else {
        ("none", "none")
    };
    let depth = if tenths < 15 { "inner" } else { "middle" };
    let number = Milli(tenths * 100).to_string();
    let signs = [
        ("radiograph-depth", depth),
        ("planned-permanent", planned),
        ("remaining-dentine", number.as_str()),
        ("exposure", exposure),
        ("bleeding", bleeding),
        ("closing", "permanent"),
    ];
    let all = desk.clinic.reason(&patient(desk, &signs)?);
    desk.clinic
        .word(&all.patient, "protection")
        .is_some()
        .then_some(all)
}

/// Whether what another word of the scale stands for is taught for this patient
/// too: where sources disagree, neither way is a wrong one.
fn taught(desk: &Desk, all: &Conclusions, word: &str) -> bool {
    if word == "capping" {
        return desk.clinic.word(&all.patient, "exposure") != Some("none");
    }
    let permanent = desk
        .clinic
        .layer_verdicts(all, Role::Permanent, &Stack::default());
    let closing = permanent
        .into_iter()
        .find(|v| v.standing == Standing::Right)
        .and_then(|v| v.item);
    let mut stack = Stack {
        closing,
        ..Stack::default()
    };
    let layers = [
        (Role::Liner, word.contains("liner")),
        (Role::Base, word.contains("base")),
    ];
    layers.into_iter().all(|(role, placed)| {
        let open = desk
            .clinic
            .layer_verdicts(all, role, &stack)
            .into_iter()
            .find(|v| v.item.is_some() == placed && v.standing <= Standing::Acceptable);
        if role == Role::Liner {
            stack.liner = open.as_ref().and_then(|v| v.item.clone());
        }
        open.is_some()
    })
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[tenths, planned] = fact else {
        return None;
    };
    let all = draw(desk, tenths, planned)?;
    let word = desk.clinic.word(&all.patient, "protection")?;
    let pool = words(desk, "protection")
        .into_iter()
        .filter(|w| *w != word && !taught(desk, &all, w))
        .filter_map(|w| {
            Some(
                Offer::new(w, says(desk, "protection", w)?)
                    .close(0.6)
                    .because("This depth does not ask for it."),
            )
        })
        .collect();
    let (choices, closeness) = one(
        Offer::new(word, says(desk, "protection", word)?),
        pool,
        chance,
    )?;
    let reasons: Vec<Reason> = all
        .fired
        .iter()
        .map(|r| desk.clinic.rule(*r))
        .filter(|rule| {
            rule.then.iter().any(|c| {
                matches!(c, catalogue::rules::Conclusion::Find { finding, .. } if ["protection", "thickness"].contains(&finding.as_str()))
            })
        })
        .map(Reason::of)
        .collect();
    Some(Draft {
        competency: "pulp-and-depth".into(),
        stem: wording(
            chance,
            &[
                "The tooth is open and this is found. As the bands are taught, what goes on the floor before the cavity is closed?",
                "The dentist says how deep it is. By the band that this falls in, what do you ready for the floor?",
            ],
            &[],
        ),
        shown: Shown::Lines(chart(
            desk,
            &all.patient,
            &["remaining-dentine", "exposure", "planned-permanent"],
        )),
        form: Form::One(choices),
        closeness,
        reasons,
        study: desk.lesson("pulp-protection"),
    })
}

//! What is told to the patient, what must not be said, and why.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{alike, marks, within},
    texts::{at, places},
};
use crate::question::{Form, Shown};
use catalogue::procedures::Procedure;
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "advice",
    name: "What the patient is told, and why",
    facts,
    write,
};

/// A line of advice, told or to be kept from, and for advice also why.
fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in &desk.catalogue().procedures {
        let (say, not) = (procedure.advice.len(), procedure.wrong_advice.len());
        for place in places(procedure.id.as_str(), say) {
            if not >= 2 {
                facts.push(format!("{place}.say"));
            }
            if say >= 4 {
                facts.push(format!("{place}.why"));
            }
        }
        if say >= 2 {
            facts.extend(places(procedure.id.as_str(), not).map(|p| format!("{p}.not")));
        }
    }
    facts
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, place, asked] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let (right, pool, because, shown, wordings): (_, _, _, _, &[&str]) = match asked {
        "say" => {
            let advice = at(&procedure.advice, place)?;
            let right = Offer::new(place, advice.say.as_str());
            let pool = untold(procedure);
            (
                right,
                pool,
                &advice.because,
                Shown::Nothing,
                &[
                    "At the end of {}, which of these do you tell the patient?",
                    "The patient gets up after {}. Which sentence is right?",
                ],
            )
        }
        "not" => {
            let wrong = at(&procedure.wrong_advice, place)?;
            let right = Offer::new(format!("not-{place}"), wrong.way.as_str());
            let pool = procedure
                .advice
                .iter()
                .enumerate()
                .map(|(n, a)| {
                    Offer::new(format!("{}", n + 1), a.say.as_str())
                        .close(0.6)
                        .because(a.because.as_str())
                })
                .collect();
            (
                right,
                pool,
                &wrong.because,
                Shown::Nothing,
                &[
                    "After {} a colleague says one of these to the patient by mistake. Which one do you correct?",
                    "Which of these must the patient not be told after {}?",
                ],
            )
        }
        "why" => {
            let advice = at(&procedure.advice, place)?;
            let (own, say) = (marks(&advice.because), marks(&advice.say));
            let pool = procedure
                .advice
                .iter()
                .enumerate()
                .filter(|(_, a)| {
                    !std::ptr::eq(*a, advice)
                        && alike(marks(&a.because), own) < 0.4
                        && alike(marks(&a.because), say) < 0.4
                })
                .map(|(n, a)| {
                    Offer::new(format!("{}", n + 1), a.because.as_str())
                        .close(0.55)
                        .because(format!("That is the reason for this: {}", a.say))
                })
                .collect();
            let right = Offer::new(place, advice.because.as_str());
            (
                right,
                pool,
                &advice.because,
                Shown::Lines(vec![advice.say.clone()]),
                &[
                    "After {} the patient is told this. Why?",
                    "A patient asks you the reason for this advice after {}. What do you answer?",
                ],
            )
        }
        _ => return None,
    };
    let (choices, closeness) = one(right, pool, chance)?;
    Some(Draft {
        competency: "patient-care".into(),
        stem: wording(chance, wordings, &[&within(&procedure.name)]),
        shown,
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(procedure, because.as_str()),
        study: Desk::study(Some(procedure), None),
    })
}

fn untold(procedure: &Procedure) -> Vec<Offer> {
    let all = procedure.wrong_advice.iter().enumerate();
    all.map(|(n, w)| {
        Offer::new(format!("not-{}", n + 1), w.way.as_str())
            .close(0.6)
            .because(w.because.as_str())
            .harm(w.harm)
    })
    .collect()
}

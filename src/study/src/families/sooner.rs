//! What brings the patient back sooner, and what passes by itself.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    interval::plan_procedure,
    text::lower,
};
use crate::question::{Form, Shown};
use catalogue::{
    ids::CheckId,
    plans::{Check, CheckKind, Plan},
};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "sooner",
    name: "What brings the patient back sooner",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for plan in &desk.catalogue().plans {
        let mut signs: Vec<&CheckId> = plan.recalls.iter().flat_map(|r| &r.sooner).collect();
        signs.sort();
        signs.dedup();
        facts.extend(signs.iter().map(|sign| format!("{}.{sign}", plan.id)));
    }
    facts
}

fn wanted(plan: &Plan, sign: &str) -> bool {
    plan.recalls
        .iter()
        .any(|r| r.sooner.iter().any(|s| s.as_str() == sign))
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[plan, sign] = fact else { return None };
    let plan = desk
        .catalogue()
        .plan(&plan.into())
        .filter(|p| wanted(p, sign))?;
    let sign = desk.catalogue().check(&sign.into())?;
    // Only what is to be expected is wrong here: no sign of any plan is.
    let offer = |c: &Check| {
        Offer::new(c.id.as_str(), c.name.as_str())
            .close(0.6)
            .because(c.because.as_str())
    };
    let expected = desk
        .catalogue()
        .checks
        .iter()
        .filter(|c| c.kind == CheckKind::Expected);
    let (choices, closeness) = one(offer(sign), expected.map(offer).collect(), chance)?;
    let recall = plan.recalls.iter().find(|r| r.sooner.contains(&sign.id))?;
    Some(Draft {
        competency: "patient-care".into(),
        stem: wording(
            chance,
            &[
                "After “{}”, which of these brings the patient back before the date?",
                "The plan was “{}”. The patient calls. Which of these does the dentist want to see soon?",
            ],
            &[&lower(&plan.name)],
        ),
        shown: Shown::Nothing,
        form: Form::One(choices),
        closeness,
        reasons: Desk::reason(sign.because.as_str(), &recall.sources),
        study: plan_procedure(desk, plan),
    })
}

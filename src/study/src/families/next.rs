//! What comes next: the step that follows.

use super::{
    Desk, Draft, Family,
    draft::{Offer, one, wording},
    text::{opening, within},
    texts::acts,
};
use crate::question::{Form, Shown};
use catalogue::procedures::{Procedure, Step};
use clinic::case::Seed;

pub(super) const FAMILY: Family = Family {
    id: "next",
    name: "What comes next",
    facts,
    write,
};

fn facts(desk: &Desk) -> Vec<String> {
    let mut facts = Vec::new();
    for procedure in desk
        .catalogue()
        .procedures
        .iter()
        .filter(|p| acts(p).count() >= 5)
    {
        for step in &procedure.steps {
            if follower(procedure, step.id.as_str()).is_some() {
                facts.push(format!("{}.{}", procedure.id, step.id));
            }
        }
    }
    facts
}

/// The places of a step and of the one that follows it for every patient.
fn follower(procedure: &Procedure, step: &str) -> Option<(usize, usize)> {
    let at = procedure.steps.iter().position(|s| s.id.as_str() == step)?;
    let sure = |s: &Step| s.when.is_none() && s.include.is_none() && !s.does.is_empty();
    let next = procedure.steps.get(at + 1).filter(|s| sure(s))?;
    (sure(&procedure.steps[at]) && !next.does.is_empty()).then_some((at, at + 1))
}

fn write(desk: &Desk, fact: &[&str], chance: &mut Seed) -> Option<Draft> {
    let &[procedure, step] = fact else {
        return None;
    };
    let procedure = desk.procedure(procedure)?;
    let (now, next) = follower(procedure, step)?;
    let steps = &procedure.steps;
    // What follows is part of every visit, so nothing after it can come first.
    let pool = steps
        .iter()
        .enumerate()
        .filter(|(at, s)| *at != now && *at != next && !s.does.is_empty())
        .map(|(at, s)| {
            let away = u16::try_from(at.abs_diff(next)).unwrap_or(u16::MAX);
            let because = if at < now {
                "That was done before."
            } else {
                "That comes later."
            };
            Offer::new(s.id.as_str(), opening(&s.does))
                .close(0.9 - 0.06 * f32::from(away.min(10)))
                .because(because)
        })
        .collect();
    let right = Offer::new(steps[next].id.as_str(), opening(&steps[next].does));
    let (choices, closeness) = one(right, pool, chance)?;
    Some(Draft {
        competency: step_competency(procedure),
        stem: wording(
            chance,
            &[
                "This has just been done in {}. What comes next?",
                "You are in the middle of {}, and this is done. Which step follows?",
                "{}: what does the team do right after this?",
            ],
            &[&within(&procedure.name)],
        ),
        shown: Shown::Lines(vec![steps[now].does.clone()]),
        form: Form::One(choices),
        closeness,
        reasons: Desk::by(
            procedure,
            format!(
                "Under “{}” it goes on like this: {}",
                steps[next].phase, steps[next].does
            ),
        ),
        study: Desk::study(Some(procedure), None),
    })
}

/// Knowing the steps at the chair shows what the procedure shows, or chairside
/// working where the procedure is about its tray.
pub(super) fn step_competency(procedure: &Procedure) -> catalogue::ids::CompetencyId {
    if procedure.competency.as_str() == "tray-set-ups" {
        "chairside".into()
    } else {
        procedure.competency.clone()
    }
}

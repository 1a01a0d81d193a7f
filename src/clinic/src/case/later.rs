//! What the patient is told, and the return visit.

use super::{
    cavity::{capital, plain},
    choice::{Choice, Decision, Form},
    draw::Visit,
    seed::Seed,
};
use crate::{Reason, recall::Return, standing::Standing};
use catalogue::{
    ids::{CheckId, ProcedureId},
    plans::CheckKind,
};

/// The intervals to choose from: days, and how they are said.
const INTERVALS: [(u32, &str); 6] = [
    (7, "In about a week"),
    (14, "In two weeks"),
    (63, "In eight to nine weeks"),
    (90, "In about three months"),
    (180, "In about six months"),
    (730, "In two years"),
];

impl Visit<'_> {
    /// What the patient is told before leaving.
    pub fn tell(&self, chance: &mut Seed) -> Option<Decision> {
        let id = self.procedure.as_ref()?;
        let mut choices = self.advice(id);
        if choices.is_empty() {
            return None;
        }
        let procedure = self.clinic.catalogue().procedure(id)?;
        let mut wrong: Vec<Choice> = procedure
            .wrong_advice
            .iter()
            .enumerate()
            .map(|(i, w)| {
                let standing = if w.harm {
                    Standing::Unsafe
                } else {
                    Standing::Wrong
                };
                Choice::new(format!("wrong-{i}"), w.way.clone(), standing)
                    .because(plain(w.because.clone()))
            })
            .collect();
        chance.shuffle(&mut wrong);
        choices.extend(wrong);
        Some(all(
            "tell",
            "Tell the patient",
            "What do you tell the patient, on the dentist's word?",
            choices,
        ))
    }

    /// The advice of a procedure for this patient. What an included set-up adds
    /// may be said as well, and is no fault to leave out.
    fn advice(&self, id: &ProcedureId) -> Vec<Choice> {
        let Some(procedure) = self.clinic.catalogue().procedure(id) else {
            return Vec::new();
        };
        procedure
            .advice
            .iter()
            .filter(|a| self.clinic.applies(a.when.as_ref(), &self.after.patient))
            .enumerate()
            .map(|(i, a)| {
                Choice::new(format!("advice-{i}"), a.say.clone(), Standing::Right)
                    .because(plain(a.because.clone()))
            })
            .collect()
    }

    /// When the patient comes back, what is looked at then, and what brings the patient back sooner.
    pub fn recall(&self) -> Vec<Decision> {
        let Some(plan) = self.plan_data() else {
            return Vec::new();
        };
        let visit = self.clinic.return_visit(plan, &self.after.patient);
        if visit.spans.is_empty() {
            return Vec::new();
        }
        let mut decisions = vec![interval(&visit)];
        decisions.push(all(
            "checks",
            "Plan the return visit",
            "What is looked at when the patient returns?",
            self.checks(
                &visit.checks,
                CheckKind::AtVisit,
                "Not part of what this visit is for.",
            ),
        ));
        decisions.push(all(
            "sooner",
            "Name the signs",
            "Which of these should bring the patient back sooner?",
            self.signs(&visit.sooner),
        ));
        decisions
    }

    fn checks(&self, wanted: &[CheckId], kind: CheckKind, otherwise: &str) -> Vec<Choice> {
        self.clinic
            .catalogue()
            .checks
            .iter()
            .filter(|c| c.kind == kind)
            .map(|check| {
                let belongs = wanted.contains(&check.id);
                let standing = if belongs {
                    Standing::Right
                } else {
                    Standing::Wrong
                };
                let because = if belongs {
                    check.because.clone()
                } else {
                    otherwise.into()
                };
                Choice::new(check.id.as_str(), capital(&check.name), standing)
                    .because(plain(because))
            })
            .collect()
    }

    fn signs(&self, wanted: &[CheckId]) -> Vec<Choice> {
        let passing = self
            .clinic
            .catalogue()
            .checks
            .iter()
            .filter(|c| c.kind == CheckKind::Expected);
        let mut choices: Vec<Choice> = passing
            .map(|c| {
                Choice::new(c.id.as_str(), capital(&c.name), Standing::Wrong)
                    .because(plain(c.because.clone()))
            })
            .collect();
        for check in self
            .clinic
            .catalogue()
            .checks
            .iter()
            .filter(|c| c.kind == CheckKind::Sign)
        {
            // A sign that the plan does not name is still no fault to come for.
            let standing = if wanted.contains(&check.id) {
                Standing::Right
            } else {
                Standing::Acceptable
            };
            choices.push(
                Choice::new(check.id.as_str(), capital(&check.name), standing).because(vec![
                    Reason {
                        because: check.because.clone(),
                        sources: Vec::new(),
                        rule: None,
                    },
                ]),
            );
        }
        choices
    }
}

/// A question of patient care to which several answers belong.
fn all(id: &str, name: &str, question: &str, choices: Vec<Choice>) -> Decision {
    Decision::new(id, name, question, Form::All, choices, "patient-care")
}

fn interval(visit: &Return) -> Decision {
    let mut choices: Vec<Choice> = INTERVALS
        .iter()
        .map(|(days, label)| interval_choice(visit, *days, label))
        .collect();
    choices.push(
        Choice::new("only-if-it-hurts", "Only if it hurts", Standing::Wrong).because(plain(
            "A pulp can die without pain; a date is what brings the patient back.".into(),
        )),
    );
    let question = "When does this patient come back?";
    Decision::new(
        "interval",
        "Set the date",
        question,
        Form::One,
        choices,
        "patient-care",
    )
}

fn interval_choice(visit: &Return, days: u32, label: &str) -> Choice {
    let id = format!("days-{days}");
    if let Some((span, reason)) = &visit.preferred
        && span.contains(days)
    {
        return Choice::new(id, label, Standing::Right).because(vec![reason.clone()]);
    }
    if let Some(reason) = visit.reason_for(days) {
        let standing = match visit.preferred {
            Some(_) => Standing::Acceptable,
            None => Standing::Right,
        };
        return Choice::new(id, label, standing).because(vec![reason.clone()]);
    }
    let first = visit
        .spans
        .iter()
        .map(|(span, _)| span.from)
        .min()
        .unwrap_or_default();
    let why = if days < first {
        "Too soon to tell anything, and a visit for nothing."
    } else {
        "Too late for what has to be looked at."
    };
    Choice::new(id, label, Standing::Wrong).because(plain(why.into()))
}

//! Which plans are open for a patient, and how good each is.

use crate::{
    Clinic, Reason,
    engine::Conclusions,
    patient::{Patient, Value},
    standing::{Standing, standing},
};
use catalogue::{
    ids::{PlanId, ProcedureId},
    items::Role,
    plans::Plan,
    rules::{Conclusion, Strength},
};

/// What the rules say of one plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlanVerdict {
    /// The plan.
    pub plan: PlanId,
    /// How good it is for this patient.
    pub standing: Standing,
    /// Why; empty where no rule speaks of it, which makes it wrong: nothing asks for it.
    pub reasons: Vec<Reason>,
}

impl Clinic {
    /// Every plan of the catalogue, with its standing for a patient; what the
    /// card in use prefers among the open ones comes first.
    pub fn plan_verdicts(&self, all: &Conclusions) -> Vec<PlanVerdict> {
        let said = self.said_of_plans(all);
        let a_must = |except: &PlanId| {
            said.iter()
                .any(|(p, s, _)| *p != except && *s == Strength::Must)
        };
        let verdicts = self
            .catalogue
            .plans
            .iter()
            .map(|plan| {
                let own: Vec<_> = said.iter().filter(|(p, ..)| **p == plan.id).collect();
                let strengths: Vec<_> = own.iter().map(|(_, s, _)| *s).collect();
                PlanVerdict {
                    plan: plan.id.clone(),
                    standing: standing(&strengths, a_must(&plan.id)),
                    reasons: own.iter().map(|(.., r)| r.clone()).collect(),
                }
            })
            .collect();
        self.plans_preferred(verdicts)
    }

    fn said_of_plans<'c>(&'c self, all: &'c Conclusions) -> Vec<(&'c PlanId, Strength, Reason)> {
        self.held(all)
            .filter_map(|(rule, conclusion)| match conclusion {
                Conclusion::Plan { plan, strength } => Some((plan, *strength, Reason::of(rule))),
                _ => None,
            })
            .collect()
    }

    /// The plans that are right for a patient, or acceptable where none is right.
    pub fn open_plans(&self, all: &Conclusions) -> Vec<PlanId> {
        let verdicts = self.plan_verdicts(all);
        let best = verdicts.iter().map(|v| v.standing).min();
        verdicts
            .into_iter()
            .filter(|v| Some(v.standing) == best && v.standing <= Standing::Acceptable)
            .map(|v| v.plan)
            .collect()
    }

    /// The procedure that a plan means for a patient; none where it needs none or has none yet.
    pub fn procedure_of<'c>(
        &'c self,
        plan: &'c Plan,
        patient: &Patient,
    ) -> Option<&'c ProcedureId> {
        plan.procedures
            .iter()
            .find(|p| self.applies(p.when.as_ref(), patient))
            .map(|p| &p.procedure)
    }

    /// The patient once the dentist has settled on a plan: what closes the tooth is known.
    #[must_use]
    pub fn settled(&self, patient: &Patient, plan: &Plan) -> Patient {
        let word = match plan.closes {
            Some(Role::Temporary) => "temporary",
            Some(_) => "permanent",
            None => "nothing",
        };
        self.with(patient, "closing", word)
    }

    /// Whether a finding of a patient is its usual value.
    pub(crate) fn is_usual(&self, patient: &Patient, place: usize) -> bool {
        patient
            .at(place)
            .is_none_or(|v| v == Value::usual(&self.catalogue.findings[place]))
    }
}

//! A rubber dam always, or never.

use crate::{Clinic, Reason, patient::Patient, standing::Standing};
use catalogue::{ids::ProcedureId, preference::Wish};

impl Clinic {
    /// The patient as the card has the tooth isolated. 'Always' cannot place a
    /// dam on a tooth that holds none.
    pub(crate) fn isolated(&self, patient: &Patient, booked: &ProcedureId) -> Patient {
        let never = self
            .wishes()
            .any(|(_, w)| matches!(w, Wish::Dam { always: false }));
        if never && self.dam_refusal(patient, booked).is_none() {
            self.with(patient, "isolation", "cotton-rolls")
        } else {
            patient.clone()
        }
    }

    /// Why a dam cannot be left out: without it, what is otherwise open to this
    /// patient would do harm, or a step of the procedure itself counts on it.
    pub(super) fn dam_refusal(&self, patient: &Patient, booked: &ProcedureId) -> Option<Reason> {
        let without = self.reason(&self.with(patient, "isolation", "cotton-rolls"));
        let open = self.open_plans(&self.reason(patient));
        let plan = self
            .plan_verdicts(&without)
            .into_iter()
            .find(|v| v.standing == Standing::Unsafe && open.contains(&v.plan));
        let plan = plan.and_then(|v| v.reasons.into_iter().next());
        let always = || {
            let steps = self.steps_of(booked, &without.patient);
            let dam = steps.iter().find(|s| {
                s.step.critical
                    && s.step
                        .uses
                        .0
                        .iter()
                        .any(|u| u.item.as_str() == "clamp-forceps")
            })?;
            Some(Reason {
                because: format!(
                    "A critical step of this procedure needs the dam: {}",
                    dam.step.does
                ),
                sources: self.catalogue.procedure(&dam.procedure)?.sources.clone(),
                rule: None,
            })
        };
        plan.or_else(always)
    }
}

//! One plan before the others: right where it is open to the patient, refused
//! with the rule where it is not.

use super::{Judged, Refusal};
use crate::{Clinic, Reason, patient::Patient, plans::PlanVerdict, standing::Standing, tray::Tray};
use catalogue::{
    ids::{PlanId, ProcedureId},
    preference::Wish,
};

impl Clinic {
    /// The plans that the card wants first, with the places of the wishes.
    fn wanted_plans(&self) -> impl Iterator<Item = (usize, &PlanId)> {
        self.wishes().filter_map(|(place, wish)| match wish {
            Wish::PreferPlan { plan } => Some((place, plan)),
            _ => None,
        })
    }

    /// The verdicts on all plans with the card's preference: the first plan it
    /// names that is open is right, and what was as good becomes acceptable. A
    /// plan it names that is not open says so.
    pub(crate) fn plans_preferred(&self, mut verdicts: Vec<PlanVerdict>) -> Vec<PlanVerdict> {
        let mut first = None;
        for (_, wanted) in self.wanted_plans() {
            let Some(own) = verdicts.iter_mut().find(|v| v.plan == *wanted) else {
                continue;
            };
            if own.standing > Standing::Acceptable {
                own.reasons.push(not_granted());
            } else if first.is_none() {
                own.reasons.insert(0, self.card_reason());
                first = Some(wanted.clone());
            }
        }
        let Some(first) = first else {
            return verdicts;
        };
        for verdict in &mut verdicts {
            if verdict.plan == first {
                verdict.standing = Standing::Right;
            } else if verdict.standing == Standing::Right {
                verdict.standing = Standing::Acceptable;
            }
        }
        verdicts
    }

    /// What a wish for one plan first comes to. Before the tooth is open nobody
    /// can tell, and the wish stands.
    pub(crate) fn judged_plan(
        &self,
        plan: &PlanId,
        procedure: &ProcedureId,
        patient: &Patient,
    ) -> Judged {
        if self.plan_for(procedure).is_none() {
            return Judged::Elsewhere;
        }
        if !self.is_open(patient) {
            return Judged::Open;
        }
        let all = self.reason(patient);
        let verdicts = self.with_card(None).plan_verdicts(&all);
        match verdicts.into_iter().find(|v| v.plan == *plan) {
            Some(own) if own.standing <= Standing::Acceptable => Judged::Open,
            found => {
                let reason = found.and_then(|v| v.reasons.into_iter().next());
                Judged::Refused(reason.unwrap_or_else(nothing_asks))
            }
        }
    }

    /// Whether a plan's wish is the one that counts for a patient, and changes
    /// which plan is right.
    pub(crate) fn plan_wish_changes(&self, plan: &PlanId, patient: &Patient) -> bool {
        let all = self.reason(patient);
        let standard = self.with_card(None);
        let open = standard.open_plans(&all);
        let counts = self.open_plans(&all).first() == Some(plan);
        counts && open.as_slice() != std::slice::from_ref(plan)
    }

    /// Notes a plan's wish that is refused for this patient beside the tray.
    pub(super) fn note_plan(
        &self,
        (wish, plan): (usize, &PlanId),
        procedure: &ProcedureId,
        patient: &Patient,
        tray: &mut Tray,
    ) {
        if let Judged::Refused(reason) = self.judged_plan(plan, procedure, patient) {
            tray.refused.push(Refusal { wish, reason });
        }
    }
}

fn not_granted() -> Reason {
    plain("The preference card asks for it; it is not granted for this patient.")
}

fn nothing_asks() -> Reason {
    plain("Nothing in the findings asks for it.")
}

fn plain(because: &str) -> Reason {
    Reason {
        because: because.into(),
        sources: Vec::new(),
        rule: None,
    }
}

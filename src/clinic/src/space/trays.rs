//! No tray holds what its patient must not meet.

use super::{Report, parts::each};
use crate::{
    Clinic,
    patient::{Patient, Value},
};
use catalogue::{procedures::Procedure, rules::Conclusion};
use std::collections::{BTreeSet, HashSet};

impl Clinic {
    /// No tray holds what its patient must not meet. The tray of a plan is laid
    /// only for patients whose plan it can be; a booked tray for everybody.
    pub(super) fn check_trays(&self, samples: &[Vec<Value>], report: &mut Report) {
        for procedure in &self.catalogue.procedures {
            let mut places: BTreeSet<usize> = self.asked_for(procedure);
            for rule in &self.catalogue.rules {
                if rule
                    .then
                    .iter()
                    .any(|c| matches!(c, Conclusion::Avoid { .. }))
                {
                    places.extend(self.compile(&rule.when).places());
                }
            }
            let places: Vec<usize> = places.into_iter().collect();
            let mut told = HashSet::new();
            let Report { run, faults, .. } = report;
            each(&places, samples, &self.usual_patient(), &mut |patient| {
                *run += 1;
                let avoided = self.avoided(&self.reason(patient));
                if avoided.is_empty() || !self.can_be_for(procedure, patient) {
                    return;
                }
                for (_, laid) in self.tray(&procedure.id, patient).items() {
                    let Some(item) = self.catalogue.item(&laid.item) else {
                        continue;
                    };
                    for (substance, _) in &avoided {
                        if item.contains().contains(substance) && told.insert(item.id().clone()) {
                            faults.push(format!(
                                "the tray of '{}' holds '{}', which contains {substance}, for: {}",
                                procedure.id,
                                item.id(),
                                self.describe(patient)
                            ));
                        }
                    }
                }
            });
        }
    }

    /// Whether a procedure can be what a plan means for this patient; a
    /// procedure that no plan names can be anybody's.
    pub(super) fn can_be_for(&self, procedure: &Procedure, patient: &Patient) -> bool {
        if self.not_for(procedure, patient).is_some() {
            return false;
        }
        let mut named = false;
        for plan in &self.catalogue.plans {
            if plan.procedures.iter().any(|p| p.procedure == procedure.id) {
                named = true;
                if self.procedure_of(plan, patient) == Some(&procedure.id) {
                    return true;
                }
            }
        }
        !named
    }

    /// The findings that a procedure's steps and variations, and the plans that lead to it, ask for.
    pub(super) fn asked_for(&self, procedure: &Procedure) -> BTreeSet<usize> {
        let mut places = BTreeSet::new();
        for step in &procedure.steps {
            places.extend(step.when.iter().flat_map(|w| self.compile(w).places()));
            if let Some(included) = step
                .include
                .as_ref()
                .and_then(|id| self.catalogue.procedure(id))
            {
                places.extend(self.asked_for(included));
            }
        }
        places.extend(
            procedure
                .not_for
                .iter()
                .flat_map(|n| self.compile(&n.when).places()),
        );
        places.extend(
            procedure
                .variations
                .iter()
                .flat_map(|v| self.compile(&v.when).places()),
        );
        let plans = self.catalogue.plans.iter().flat_map(|p| &p.procedures);
        for each in plans.filter(|p| p.procedure == procedure.id) {
            places.extend(each.when.iter().flat_map(|w| self.compile(w).places()));
        }
        places
    }
}

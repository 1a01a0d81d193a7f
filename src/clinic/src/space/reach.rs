//! Everything written takes effect for somebody.

use super::{Report, Seen};
use crate::Clinic;
use catalogue::procedures::ProcedureKind;

impl Clinic {
    /// Everything written takes effect for somebody.
    pub(super) fn check_reach(&self, seen: &Seen, report: &mut Report) {
        for (i, rule) in self.catalogue.rules.iter().enumerate() {
            if !seen.fired.contains(&i) {
                report.faults.push(format!(
                    "the rule '{}' never holds for any patient that can be",
                    rule.id
                ));
            }
        }
        for plan in &self.catalogue.plans {
            if !seen.plans.contains(&plan.id) {
                report
                    .faults
                    .push(format!("the plan '{}' is never open", plan.id));
            }
        }
        for procedure in self
            .catalogue
            .procedures
            .iter()
            .filter(|p| p.kind == ProcedureKind::SetUp)
        {
            let included = self.catalogue.procedures.iter().any(|p| {
                p.steps
                    .iter()
                    .any(|s| s.include.as_ref() == Some(&procedure.id))
            });
            if !included {
                report.faults.push(format!(
                    "no procedure includes the set-up '{}'",
                    procedure.id
                ));
            }
        }
        for frame in &self.catalogue.cases {
            if self.case(frame, 1).is_none() {
                report.faults.push(format!(
                    "the case frame '{}' admits no patient that can be",
                    frame.id
                ));
            }
        }
    }
}

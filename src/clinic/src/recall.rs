//! When the patient comes back after a plan, and what is looked at then.

use crate::{Clinic, Reason, patient::Patient};
use catalogue::{
    ids::CheckId,
    plans::{Plan, Recall},
    quantity::Span,
};

/// The return visit after a plan, for one patient. Where sources differ there
/// are several spans, and each is acceptable.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Return {
    /// The spans in days from this visit, with the reason for each.
    pub spans: Vec<(Span, Reason)>,
    /// The date that a preference card asks for, where a source agrees with it.
    pub preferred: Option<(Span, Reason)>,
    /// What is looked at then.
    pub checks: Vec<CheckId>,
    /// What brings the patient back sooner.
    pub sooner: Vec<CheckId>,
}

impl Return {
    /// The reason for coming back after this many days; none where no source wants it.
    pub fn reason_for(&self, days: u32) -> Option<&Reason> {
        self.spans
            .iter()
            .find(|(span, _)| span.contains(days))
            .map(|(_, reason)| reason)
    }
}

impl Clinic {
    /// The return visit after `plan`.
    pub fn return_visit(&self, plan: &Plan, patient: &Patient) -> Return {
        let mut visit = Return::default();
        for recall in plan
            .recalls
            .iter()
            .filter(|r| self.applies(r.when.as_ref(), patient))
        {
            visit.spans.push((recall.days, reason(recall)));
            add_new(&mut visit.checks, &recall.checks);
            add_new(&mut visit.sooner, &recall.sooner);
        }
        self.recalled(plan, visit)
    }
}

fn reason(recall: &Recall) -> Reason {
    Reason {
        because: recall.because.clone(),
        sources: recall.sources.clone(),
        rule: None,
    }
}

fn add_new(all: &mut Vec<CheckId>, more: &[CheckId]) {
    for each in more {
        if !all.contains(each) {
            all.push(each.clone());
        }
    }
}

//! Proof over every patient that can be.
//!
//! Running each combination of all findings would take longer than anybody
//! waits, and most combinations differ in nothing that matters. The reduction
//! is exact and rests on how rules use findings:
//!
//! 1. *Inner* findings are asked for only by rules that set derived findings
//!    and by what is impossible. They are run in full together with the outer
//!    findings those rules ask for as well; what remains of them is the derived
//!    values, so equal results are kept once, with one patient as witness.
//! 2. Each result is run with every combination of the *free* findings: those
//!    that only rules with final conclusions ask for.
//!
//! A number is run at each bound that a condition compares it with and one step
//! to either side of it: between two bounds every value gives the same truth.

mod parts;
mod plans;
mod reach;
mod trays;
mod windows;

use crate::{
    Clinic,
    patient::{Patient, Value},
    test::Test,
};
use catalogue::{findings::Known, ids::PlanId};
use parts::{Parts, each};
use std::collections::{BTreeSet, HashMap, HashSet};

/// What the proof covered and what it found.
#[derive(Clone, Debug, Default)]
pub struct Report {
    /// How many combinations of findings it stands for.
    pub combinations: u128,
    /// How many patients were run after the reduction.
    pub run: u64,
    /// What is wrong, each with a patient as counter-example where there is one.
    pub faults: Vec<String>,
}

/// What was seen to take effect.
#[derive(Default)]
struct Seen {
    fired: HashSet<usize>,
    plans: HashSet<PlanId>,
    faults: HashSet<String>,
}

impl Clinic {
    /// Runs every patient that can be.
    pub fn prove(&self) -> Report {
        let mut report = Report::default();
        let parts = self.parts();
        let samples = self.samples();
        let all = parts.inner.iter().chain(&parts.coupled).chain(&parts.free);
        report.combinations = all.map(|&p| samples[p].len() as u128).product();
        let mut seen = Seen::default();
        let settled = self.inner_results(&parts, &samples, &mut report, &mut seen);
        for witness in settled.values() {
            each(&parts.free, &samples, witness, &mut |patient| {
                report.run += 1;
                self.check_patient(patient, &mut report, &mut seen);
            });
        }
        self.check_trays(&samples, &mut report);
        report.faults.extend(self.closed_windows());
        self.check_reach(&seen, &mut report);
        report.faults.sort();
        report.faults.dedup();
        report
    }

    /// Runs the inner and coupled findings and keeps one patient for each
    /// different result.
    fn inner_results(
        &self,
        parts: &Parts,
        samples: &[Vec<Value>],
        report: &mut Report,
        seen: &mut Seen,
    ) -> HashMap<Vec<Option<Value>>, Patient> {
        let impossible: Vec<Test> = self
            .catalogue
            .impossible
            .iter()
            .map(|i| self.compile(&i.when))
            .collect();
        let places: Vec<usize> = parts.inner.iter().chain(&parts.coupled).copied().collect();
        let keep: Vec<usize> = parts
            .coupled
            .iter()
            .chain(&parts.carried)
            .copied()
            .collect();
        let derived: Vec<usize> = self.derived_by_rules();
        let mut results = HashMap::new();
        each(&places, samples, &self.usual_patient(), &mut |patient| {
            report.run += 1;
            if impossible.iter().any(|t| t.holds(patient) == Some(true)) {
                return;
            }
            let all = self.reason(patient);
            seen.fired.extend(all.fired.iter().copied());
            for (first, second) in &all.contradictions {
                report.faults.push(format!(
                    "rules '{}' and '{}' contradict one another for: {}",
                    self.rule(*first).id,
                    self.rule(*second).id,
                    self.describe(patient)
                ));
            }
            for &place in derived.iter().filter(|&&p| all.patient.at(p).is_none()) {
                report.faults.push(format!(
                    "no rule settles '{}' for: {}",
                    self.catalogue.findings[place].id,
                    self.describe(patient)
                ));
            }
            let key = keep.iter().map(|&p| all.patient.at(p)).collect();
            results.entry(key).or_insert_with(|| patient.clone());
        });
        results
    }

    fn derived_by_rules(&self) -> Vec<usize> {
        let set: BTreeSet<usize> = self
            .rules
            .iter()
            .flat_map(|r| r.finds.iter().map(|(p, _)| *p))
            .collect();
        set.into_iter()
            .filter(|&p| self.catalogue.findings[p].known == Known::Derived)
            .collect()
    }

    fn check_patient(&self, patient: &Patient, report: &mut Report, seen: &mut Seen) {
        let all = self.reason(patient);
        seen.fired.extend(all.fired.iter().copied());
        let mut fault = |text: String| {
            // One counter-example of a kind is enough to mend it.
            if seen.faults.insert(text.clone()) {
                report
                    .faults
                    .push(format!("{text}, for: {}", self.describe(patient)));
            }
        };
        self.check_plans(&all, &mut fault);
        let open = self.open_plans(&all);
        if open.is_empty() {
            fault("no plan is open".into());
        }
        for id in &open {
            let Some(plan) = self.catalogue.plan(id) else {
                continue;
            };
            let settled = self.reason(&self.settled(patient, plan));
            seen.fired.extend(settled.fired.iter().copied());
            if let Some(role) = plan.closes {
                self.check_layers(id, role, &settled, &mut fault);
            }
        }
        seen.plans.extend(open);
    }

    /// A patient in words: everything that is not as usual.
    pub fn describe(&self, patient: &Patient) -> String {
        let remarkable: Vec<String> = self
            .catalogue
            .findings
            .iter()
            .enumerate()
            .filter_map(|(place, finding)| {
                let value = patient.at(place)?;
                (value != Value::usual(finding))
                    .then(|| format!("{} {}", finding.id, value.says(finding)))
            })
            .collect();
        if remarkable.is_empty() {
            "a patient with nothing out of the ordinary".into()
        } else {
            remarkable.join("; ")
        }
    }
}

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

/// How many of the inner findings are fixed within one step of a sweep.
const FIXED: usize = 4;

/// After so many faults no more patients are named. A contradiction shows in
/// thousands of them, and one is enough to mend it.
const MOST_FAULTS: usize = 1000;

/// A run through every patient under way. It goes on in steps, each a small part of a second, so
/// that a page can stay alive meanwhile.
pub struct Sweep<'c> {
    clinic: &'c Clinic,
    parts: Parts,
    samples: Vec<Vec<Value>>,
    report: Report,
    seen: Seen,
    /// Patients in whom the first inner findings are fixed; the rest is run in full.
    heads: std::vec::IntoIter<Patient>,
    settled: HashMap<Vec<Option<Value>>, Patient>,
    witnesses: Option<std::vec::IntoIter<Patient>>,
    steps: (usize, usize),
}

impl<'c> Sweep<'c> {
    fn begin(clinic: &'c Clinic) -> Self {
        let parts = clinic.parts();
        let samples = clinic.samples();
        let all = parts.inner.iter().chain(&parts.coupled).chain(&parts.free);
        let report = Report {
            combinations: all.map(|&p| samples[p].len() as u128).product(),
            ..Report::default()
        };
        let places: Vec<usize> = parts.inner.iter().chain(&parts.coupled).copied().collect();
        let fixed = &places[..places.len().min(FIXED)];
        let mut heads = Vec::new();
        each(fixed, &samples, &clinic.usual_patient(), &mut |patient| {
            heads.push(patient.clone());
        });
        Self {
            clinic,
            steps: (0, heads.len()),
            parts,
            samples,
            report,
            seen: Seen::default(),
            heads: heads.into_iter(),
            settled: HashMap::new(),
            witnesses: None,
        }
    }

    /// How far it is, as a share of the part that is under way; the patients
    /// that remain are known only once the inner findings have been run.
    pub fn share(&self) -> f64 {
        let (done, all) = self.steps;
        #[expect(
            clippy::cast_precision_loss,
            reason = "a share in words is rounded anyway"
        )]
        let share = done as f64 / all.max(1) as f64;
        // The inner findings are the smaller part.
        match self.witnesses {
            None => share * 0.2,
            Some(_) => 0.2 + share * 0.8,
        }
    }

    /// Goes on for a step. Gives the report when nothing is left.
    pub fn step(&mut self) -> Option<Report> {
        self.steps.0 += 1;
        if let Some(head) = self.heads.next() {
            self.inner(&head);
            return None;
        }
        let settled = &mut self.settled;
        let witnesses = self.witnesses.get_or_insert_with(|| {
            let all: Vec<Patient> = std::mem::take(settled).into_values().collect();
            self.steps = (0, all.len());
            all.into_iter()
        });
        let Some(witness) = witnesses.next() else {
            return Some(self.end());
        };
        let Self {
            clinic,
            parts,
            samples,
            report,
            seen,
            ..
        } = self;
        each(&parts.free, samples, &witness, &mut |patient| {
            report.run += 1;
            clinic.check_patient(patient, report, seen);
        });
        None
    }

    fn end(&mut self) -> Report {
        let mut report = std::mem::take(&mut self.report);
        self.clinic.check_trays(&self.samples, &mut report);
        report.faults.extend(self.clinic.closed_windows());
        self.clinic.check_reach(&self.seen, &mut report);
        report.faults.sort();
        report.faults.dedup();
        report
    }

    /// Runs the inner and coupled findings that are not fixed yet, and keeps one
    /// patient for each different result.
    fn inner(&mut self, head: &Patient) {
        let Self {
            clinic,
            parts,
            samples,
            report,
            seen,
            settled,
            ..
        } = self;
        let impossible: Vec<Test> = clinic
            .catalogue
            .impossible
            .iter()
            .map(|i| clinic.compile(&i.when))
            .collect();
        let places: Vec<usize> = parts.inner.iter().chain(&parts.coupled).copied().collect();
        let rest = &places[places.len().min(FIXED)..];
        let keep: Vec<usize> = parts
            .coupled
            .iter()
            .chain(&parts.carried)
            .copied()
            .collect();
        let derived: Vec<usize> = clinic.derived_by_rules();
        each(rest, samples, head, &mut |patient| {
            report.run += 1;
            if impossible.iter().any(|t| t.holds(patient) == Some(true)) {
                return;
            }
            let all = clinic.reason(patient);
            seen.fired.extend(all.fired.iter().copied());
            if report.faults.len() > MOST_FAULTS {
                return;
            }
            for (first, second) in &all.contradictions {
                report.faults.push(format!(
                    "rules '{}' and '{}' contradict one another for: {}",
                    clinic.rule(*first).id,
                    clinic.rule(*second).id,
                    clinic.describe(patient)
                ));
            }
            for &place in derived.iter().filter(|&&p| all.patient.at(p).is_none()) {
                report.faults.push(format!(
                    "no rule settles '{}' for: {}",
                    clinic.catalogue.findings[place].id,
                    clinic.describe(patient)
                ));
            }
            let key = keep.iter().map(|&p| all.patient.at(p)).collect();
            settled.entry(key).or_insert_with(|| patient.clone());
        });
    }
}

impl Clinic {
    /// Runs every patient that can be.
    pub fn prove(&self) -> Report {
        let mut sweep = self.sweep();
        loop {
            if let Some(report) = sweep.step() {
                return report;
            }
        }
    }

    /// A run through every patient that can be, in steps.
    pub fn sweep(&self) -> Sweep<'_> {
        Sweep::begin(self)
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

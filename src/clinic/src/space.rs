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

use crate::{
    Clinic,
    engine::Conclusions,
    layers::Stack,
    patient::{Patient, Value},
    standing::Standing,
    test::Test,
};
use catalogue::{
    findings::{Finding, Known, Scale},
    ids::PlanId,
    items::Role,
    procedures::{Procedure, ProcedureKind},
    quantity::Milli,
    rules::{Conclusion, Strength},
};
use std::collections::{BTreeMap, BTreeSet, HashMap, HashSet};

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

/// The findings by what asks for them.
struct Parts {
    inner: Vec<usize>,
    coupled: Vec<usize>,
    free: Vec<usize>,
    /// Derived findings that rules with final conclusions ask for.
    carried: Vec<usize>,
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
        self.check_reach(&seen, &mut report);
        report.faults.sort();
        report.faults.dedup();
        report
    }

    fn parts(&self) -> Parts {
        let mut deriving = BTreeSet::new();
        let mut concluding = BTreeSet::new();
        for (compiled, rule) in self.rules.iter().zip(&self.catalogue.rules) {
            let finds = rule
                .then
                .iter()
                .any(|c| matches!(c, Conclusion::Find { .. }));
            let concludes = rule
                .then
                .iter()
                .any(|c| !matches!(c, Conclusion::Find { .. }));
            if finds {
                deriving.extend(compiled.test.places());
            }
            if concludes {
                concluding.extend(compiled.test.places());
            }
        }
        for impossible in &self.catalogue.impossible {
            deriving.extend(self.compile(&impossible.when).places());
        }
        let known = |p: &usize| self.catalogue.findings[*p].known;
        let given = |p: &usize| matches!(known(p), Known::Chart | Known::Opening);
        Parts {
            inner: deriving
                .difference(&concluding)
                .copied()
                .filter(given)
                .collect(),
            coupled: deriving
                .intersection(&concluding)
                .copied()
                .filter(given)
                .collect(),
            free: concluding
                .difference(&deriving)
                .copied()
                .filter(given)
                .collect(),
            carried: concluding
                .iter()
                .copied()
                .filter(|p| known(p) == Known::Derived)
                .collect(),
        }
    }

    /// The values to run for each finding.
    fn samples(&self) -> Vec<Vec<Value>> {
        let mut tests: Vec<Test> = self.rules.iter().map(|r| r.test.clone()).collect();
        tests.extend(
            self.catalogue
                .impossible
                .iter()
                .map(|i| self.compile(&i.when)),
        );
        for step in self.catalogue.procedures.iter().flat_map(|p| &p.steps) {
            tests.extend(step.when.iter().map(|w| self.compile(w)));
        }
        self.catalogue
            .findings
            .iter()
            .enumerate()
            .map(|(i, f)| values(f, i, &tests))
            .collect()
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

    fn check_plans(&self, all: &Conclusions, fault: &mut impl FnMut(String)) {
        let mut said: BTreeMap<&PlanId, Vec<(Strength, &str)>> = BTreeMap::new();
        for (rule, conclusion) in self.held(all) {
            if let Conclusion::Plan { plan, strength } = conclusion {
                said.entry(plan)
                    .or_default()
                    .push((*strength, rule.id.as_str()));
            }
        }
        for (plan, strengths) in &said {
            let by = |wanted: &[Strength]| {
                strengths
                    .iter()
                    .find(|(s, _)| wanted.contains(s))
                    .map(|(_, r)| *r)
            };
            if let (Some(yes), Some(no)) = (
                by(&[Strength::Must]),
                by(&[Strength::Not, Strength::MustNot]),
            ) {
                fault(format!(
                    "rule '{yes}' says that '{plan}' must be and rule '{no}' that it must not"
                ));
            }
            if let (Some(yes), Some(no)) = (by(&[Strength::May]), by(&[Strength::MustNot])) {
                fault(format!(
                    "rule '{yes}' says that '{plan}' may be and rule '{no}' that it must not"
                ));
            }
        }
        let musts: Vec<_> = said
            .iter()
            .filter(|(_, s)| s.iter().any(|(s, _)| *s == Strength::Must))
            .map(|(p, _)| p)
            .collect();
        if let [first, second, ..] = musts[..] {
            fault(format!("'{first}' and '{second}' are both a must"));
        }
    }

    /// Every role of the plan has an admissible option, and none that the
    /// patient must not meet is admissible.
    fn check_layers(
        &self,
        plan: &PlanId,
        closes: Role,
        all: &Conclusions,
        fault: &mut impl FnMut(String),
    ) {
        let mut stack = Stack::default();
        for role in [closes, Role::Liner, Role::Base] {
            let verdicts = self.layer_verdicts(all, role, &stack);
            for verdict in verdicts
                .iter()
                .filter(|v| v.standing <= Standing::Acceptable)
            {
                let Some(material) = verdict
                    .item
                    .as_ref()
                    .and_then(|id| self.catalogue.material(id))
                else {
                    continue;
                };
                for (substance, _) in self.avoided(all) {
                    if material.contains.contains(&substance) {
                        fault(format!(
                            "'{}' is admitted although it contains {substance}",
                            material.id
                        ));
                    }
                }
            }
            let best = verdicts.into_iter().min_by_key(|v| v.standing);
            match best {
                Some(best) if best.standing <= Standing::Acceptable => match role {
                    Role::Liner => stack.liner = best.item,
                    Role::Base => stack.base = best.item,
                    _ => stack.closing = best.item,
                },
                _ => fault(format!("the plan '{plan}' leaves no material for {role:?}")),
            }
        }
    }

    /// No tray holds what its patient must not meet. The tray of a plan is laid
    /// only for patients whose plan it can be; a booked tray for everybody.
    fn check_trays(&self, samples: &[Vec<Value>], report: &mut Report) {
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
    fn can_be_for(&self, procedure: &Procedure, patient: &Patient) -> bool {
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
    fn asked_for(&self, procedure: &Procedure) -> BTreeSet<usize> {
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

    /// Everything written takes effect for somebody.
    fn check_reach(&self, seen: &Seen, report: &mut Report) {
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

/// What was seen to take effect.
#[derive(Default)]
struct Seen {
    fired: HashSet<usize>,
    plans: HashSet<PlanId>,
    faults: HashSet<String>,
}

/// Every value of a scale that a test can tell from another.
fn values(finding: &Finding, place: usize, tests: &[Test]) -> Vec<Value> {
    match &finding.scale {
        Scale::Words(words) => (0..words.len())
            .filter_map(|i| u8::try_from(i).ok())
            .map(Value::Word)
            .collect(),
        Scale::Flag { .. } => vec![Value::Flag(false), Value::Flag(true)],
        Scale::Number {
            least,
            most,
            step,
            usual,
            ..
        } => {
            let bounds = tests.iter().flat_map(|t| t.bounds(place));
            let around = bounds.flat_map(|b| [Milli(b.0 - step.0), b, Milli(b.0 + step.0)]);
            let all: BTreeSet<Milli> = around
                .chain([*usual])
                .filter(|v| v >= least && v <= most)
                .collect();
            all.into_iter().map(Value::Number).collect()
        }
    }
}

/// Runs `act` on every combination of values at `places`, the rest as in `from`.
fn each(places: &[usize], samples: &[Vec<Value>], from: &Patient, act: &mut dyn FnMut(&Patient)) {
    fn go(
        places: &[usize],
        samples: &[Vec<Value>],
        patient: &mut Patient,
        act: &mut dyn FnMut(&Patient),
    ) {
        let Some((&place, rest)) = places.split_first() else {
            return act(patient);
        };
        let before = patient.values[place];
        for &value in &samples[place] {
            patient.values[place] = Some(value);
            go(rest, samples, patient, act);
        }
        patient.values[place] = before;
    }
    go(places, samples, &mut from.clone(), act);
}

//! The reduction: which findings are inner, coupled and free, and which of
//! their values can be told apart.

use crate::{
    Clinic,
    patient::{Patient, Value},
    test::Test,
};
use catalogue::{
    findings::{Finding, Known, Scale},
    quantity::Milli,
    rules::Conclusion,
};
use std::collections::BTreeSet;

/// The findings by what asks for them.
pub(super) struct Parts {
    pub inner: Vec<usize>,
    pub coupled: Vec<usize>,
    pub free: Vec<usize>,
    /// Derived findings that rules with final conclusions ask for.
    pub carried: Vec<usize>,
}

impl Clinic {
    pub(super) fn parts(&self) -> Parts {
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
    pub(super) fn samples(&self) -> Vec<Vec<Value>> {
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
}

impl Clinic {
    /// What the tooth of a patient may turn out to be once it is open: every
    /// combination that a rule can tell from another, and that can be.
    pub(crate) fn openings(&self, patient: &Patient) -> Vec<Patient> {
        let findings = self.catalogue.findings.iter().enumerate();
        let places: Vec<usize> = findings
            .filter(|(_, f)| f.known == Known::Opening)
            .map(|(place, _)| place)
            .collect();
        let mut all = Vec::new();
        each(&places, &self.samples(), patient, &mut |opened| {
            if self.impossible(opened).is_none() {
                all.push(opened.clone());
            }
        });
        all
    }
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
pub(super) fn each(
    places: &[usize],
    samples: &[Vec<Value>],
    from: &Patient,
    act: &mut dyn FnMut(&Patient),
) {
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

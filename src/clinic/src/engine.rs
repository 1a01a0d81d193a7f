//! Forward chaining: from what is known of a patient to all that follows, with
//! the reasons.
//!
//! Rules that set derived findings feed other rules, so chaining goes on until
//! nothing new follows. A derived finding is set once; a second rule that would
//! set it otherwise is a contradiction and is reported by [`crate::space`].

use crate::{
    Clinic, Reason,
    patient::{Patient, Value},
};
use catalogue::{
    findings::{Known, Scale},
    ids::{FindingId, SubstanceId},
    rules::{Conclusion, Rule},
};

/// All that follows for one patient.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conclusions {
    /// The patient with the derived findings filled in.
    pub patient: Patient,
    /// The places of the rules that hold, in the order in which they came to hold.
    pub fired: Vec<usize>,
    /// Pairs of rules that set one derived finding to different values.
    pub contradictions: Vec<(usize, usize)>,
}

/// A step of an argument: a rule, and what it rests on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Proof {
    /// The reason that the rule gives.
    pub reason: Reason,
    /// What it rests on.
    pub grounds: Vec<Ground>,
}

/// Something that a step of an argument rests on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ground {
    /// The finding.
    pub finding: FindingId,
    /// Its name.
    pub name: String,
    /// What it is for this patient.
    pub says: String,
    /// How it follows in its turn; none where it was found in the patient.
    pub proof: Option<Proof>,
}

impl Clinic {
    /// What follows for a patient.
    pub fn reason(&self, patient: &Patient) -> Conclusions {
        let mut all = Conclusions {
            patient: patient.clone(),
            fired: Vec::new(),
            contradictions: Vec::new(),
        };
        let mut set_by: Vec<Option<usize>> = vec![None; all.patient.values.len()];
        let mut waiting: Vec<usize> = (0..self.rules.len()).collect();
        loop {
            let before = waiting.len();
            waiting.retain(|&rule| {
                let compiled = &self.rules[rule];
                if compiled.test.holds(&all.patient) != Some(true) {
                    return true;
                }
                all.fired.push(rule);
                for &(place, value) in &compiled.finds {
                    match set_by[place] {
                        None => {
                            set_by[place] = Some(rule);
                            all.patient.values[place] = Some(value);
                        }
                        Some(first) if all.patient.values[place] != Some(value) => {
                            all.contradictions.push((first, rule));
                        }
                        Some(_) => {}
                    }
                }
                false
            });
            if waiting.len() == before {
                return all;
            }
        }
    }

    /// The rule at a place.
    pub fn rule(&self, place: usize) -> &Rule {
        &self.catalogue.rules[place]
    }

    /// The rules that hold, with what each concludes.
    pub(crate) fn held<'c>(
        &'c self,
        all: &'c Conclusions,
    ) -> impl Iterator<Item = (&'c Rule, &'c Conclusion)> {
        all.fired.iter().flat_map(|&r| {
            let rule = self.rule(r);
            rule.then.iter().map(move |c| (rule, c))
        })
    }

    /// The substances that nothing on the tray may contain, with the reason for each.
    pub fn avoided(&self, all: &Conclusions) -> Vec<(SubstanceId, Reason)> {
        self.held(all)
            .filter_map(|(rule, conclusion)| match conclusion {
                Conclusion::Avoid { substance } => Some((substance.clone(), Reason::of(rule))),
                _ => None,
            })
            .collect()
    }

    /// The argument for a rule that holds: what it rests on, and how that follows in turn.
    pub fn proof(&self, all: &Conclusions, rule: &Rule) -> Proof {
        let grounds = self
            .compile(&rule.when)
            .places()
            .into_iter()
            .filter_map(|place| self.ground(all, place, rule))
            .fold(Vec::new(), |mut grounds: Vec<Ground>, ground| {
                if !grounds.iter().any(|g| g.finding == ground.finding) {
                    grounds.push(ground);
                }
                grounds
            });
        Proof {
            reason: Reason::of(rule),
            grounds,
        }
    }

    fn ground(&self, all: &Conclusions, place: usize, for_rule: &Rule) -> Option<Ground> {
        let finding = &self.catalogue.findings[place];
        let value = all.patient.at(place)?;
        let remarkable = value != Value::usual(finding)
            || !finding.ordinary
            || finding.known == Known::Derived
            || matches!(finding.scale, Scale::Number { .. })
            || self.compile(&for_rule.when).places().len() == 1;
        let proof = || {
            let rule = all
                .fired
                .iter()
                .map(|&r| (r, self.rule(r)))
                .find(|(r, _)| self.rules[*r].finds.contains(&(place, value)))?;
            Some(self.proof(all, rule.1))
        };
        remarkable.then(|| Ground {
            finding: finding.id.clone(),
            name: finding.name.clone(),
            says: value.says(finding),
            proof: (finding.known == Known::Derived).then(proof).flatten(),
        })
    }
}

impl Reason {
    /// The reason that a rule gives.
    pub fn of(rule: &Rule) -> Self {
        Self {
            because: rule.because.clone(),
            sources: rule.sources.clone(),
            rule: Some(rule.id.clone()),
        }
    }
}

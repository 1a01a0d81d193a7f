//! Reasoning over the catalogue, for one patient at a time.
//!
//! - [`patient`]: what is known of a patient
//! - [`engine`]: what follows from it by the rules, and why
//! - [`plans`], [`layers`], [`recall`]: which plans, materials and return
//!   dates are open, and how good each is
//! - [`tray`]: what lies ready, in which order, for this patient
//! - [`preference`]: what one dentist wants done differently
//! - [`difference`]: what a card changes, as a whole and wish by wish
//! - [`timing`]: when the assistant has to start
//! - [`mixing`]: a mix made by hand, from the first scoop to the hand-over
//! - [`reading`]: what a tray is laid for
//! - [`sequence`]: how well an ordered set-up was laid
//! - [`space`]: proof over every patient that can be
//! - [`case`]: patients drawn from frames, with their decisions
//! - [`numbers`]: doses, teeth, instruments and dates worked out, and exercises in them
//! - [`tooth`]: one tooth in every notation
//!
//! Nothing here knows a clinical fact: all of them come from the catalogue.
//! There is no clock and no chance: a seed comes in as an argument, and the
//! same arguments give the same answer for ever.

pub mod case;
pub mod difference;
pub mod engine;
pub mod layers;
pub mod mixing;
pub mod numbers;
pub mod patient;
pub mod plans;
pub mod preference;
pub mod reading;
pub mod recall;
pub mod sequence;
pub mod space;
pub mod standing;
mod test;
pub mod timing;
pub mod tooth;
pub mod tray;

use catalogue::{
    Catalogue,
    condition::When,
    ids::{FindingId, RuleId, SourceId},
    preference::Card,
    rules::Conclusion,
};
use patient::{Patient, Value};
use std::{collections::HashMap, rc::Rc};
use test::Test;

/// The catalogue made ready for reasoning. Cheap to copy.
#[derive(Clone, Debug)]
pub struct Clinic {
    catalogue: Rc<Catalogue>,
    index: Rc<HashMap<FindingId, usize>>,
    rules: Rc<[Compiled]>,
    card: Option<Rc<Card>>,
}

/// A rule made ready: its test, and the derived findings it sets.
#[derive(Clone, Debug)]
struct Compiled {
    test: Test,
    finds: Vec<(usize, Value)>,
}

/// Why something is so: the words for it, and who says so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reason {
    /// The sentence.
    pub because: String,
    /// Where it is from.
    pub sources: Vec<SourceId>,
    /// The rule that says so; none where a fact of a material or plan does.
    pub rule: Option<RuleId>,
}

impl Clinic {
    /// Makes a catalogue ready. Rules are put in an order in which each comes
    /// after those that derive what it asks for, so that one pass is enough.
    pub fn new(catalogue: Rc<Catalogue>) -> Self {
        let index: HashMap<_, _> = catalogue
            .findings
            .iter()
            .enumerate()
            .map(|(i, f)| (f.id.clone(), i))
            .collect();
        let mut clinic = Self {
            catalogue,
            index: Rc::new(index),
            rules: Rc::default(),
            card: None,
        };
        clinic.rules = clinic
            .catalogue
            .rules
            .iter()
            .map(|rule| Compiled {
                test: clinic.compile(&rule.when),
                finds: rule.then.iter().filter_map(|c| clinic.find(c)).collect(),
            })
            .collect();
        clinic
    }

    /// The catalogue behind.
    pub fn catalogue(&self) -> &Rc<Catalogue> {
        &self.catalogue
    }

    /// The place of a finding in a [`Patient`].
    pub fn position(&self, finding: &str) -> Option<usize> {
        self.index.get(&FindingId::from(finding)).copied()
    }

    /// Whether a condition holds for a patient; none where something it needs is not known yet.
    pub fn holds(&self, when: &When, patient: &Patient) -> Option<bool> {
        self.compile(when).holds(patient)
    }

    /// Whether a condition that may be absent is known to hold; an absent one holds for everybody.
    pub(crate) fn applies(&self, when: Option<&When>, patient: &Patient) -> bool {
        when.is_none_or(|w| self.holds(w, patient) == Some(true))
    }

    pub(crate) fn compile(&self, when: &When) -> Test {
        Test::of(when.expr(), &self.catalogue.findings, &self.index)
    }

    fn find(&self, conclusion: &Conclusion) -> Option<(usize, Value)> {
        let Conclusion::Find { finding, is } = conclusion else {
            return None;
        };
        let at = *self.index.get(finding)?;
        Some((at, Value::worded(&self.catalogue.findings[at], is)?))
    }
}

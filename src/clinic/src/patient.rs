//! What is known of a patient: a value for each finding of the vocabulary, or
//! nothing where it is not known yet.

use crate::Clinic;
use catalogue::{
    findings::{Finding, Known, Scale},
    quantity::Milli,
};

/// A value on a finding's scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Value {
    /// The place of the word on its scale.
    Word(u8),
    /// Set or not set.
    Flag(bool),
    /// A number in thousandths of the finding's unit.
    Number(Milli),
}

impl Value {
    /// The value that a word means on a finding's scale; none if it is not on it.
    pub fn worded(finding: &Finding, word: &str) -> Option<Self> {
        match &finding.scale {
            Scale::Words(words) => {
                let at = words.iter().position(|w| w.id == word)?;
                u8::try_from(at).ok().map(Self::Word)
            }
            Scale::Flag { .. } => match word {
                "yes" => Some(Self::Flag(true)),
                "no" => Some(Self::Flag(false)),
                _ => None,
            },
            Scale::Number { .. } => None,
        }
    }

    /// The usual, unremarkable value of a finding.
    pub fn usual(finding: &Finding) -> Self {
        match &finding.scale {
            Scale::Words(_) => Self::Word(0),
            Scale::Flag { .. } => Self::Flag(false),
            Scale::Number { usual, .. } => Self::Number(*usual),
        }
    }

    /// How a chart says it.
    pub fn says(self, finding: &Finding) -> String {
        match (self, &finding.scale) {
            (Self::Word(at), Scale::Words(words)) => words
                .get(usize::from(at))
                .map_or_else(String::new, |w| w.says.clone()),
            (Self::Flag(true), Scale::Flag { yes, .. }) => yes.clone(),
            (Self::Flag(false), Scale::Flag { no, .. }) => no.clone(),
            (Self::Number(number), Scale::Number { unit, .. }) => format!("{number} {unit}"),
            _ => String::new(),
        }
    }
}

/// One patient, as far as known.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Patient {
    pub(crate) values: Vec<Option<Value>>,
}

impl Patient {
    /// The value of the finding at a place of the vocabulary.
    pub fn at(&self, place: usize) -> Option<Value> {
        self.values.get(place).copied().flatten()
    }
}

impl Clinic {
    /// A patient whose chart holds nothing out of the ordinary, before the tooth is opened.
    pub fn usual_patient(&self) -> Patient {
        let usual = |f: &Finding| (f.known == Known::Chart).then(|| Value::usual(f));
        Patient {
            values: self.catalogue.findings.iter().map(usual).collect(),
        }
    }

    /// The same patient with a finding set to a word (`yes` and `no` for a flag).
    /// A word or finding that the catalogue does not have changes nothing.
    #[must_use]
    pub fn with(&self, patient: &Patient, finding: &str, word: &str) -> Patient {
        let mut patient = patient.clone();
        if let Some(place) = self.position(finding)
            && let Some(value) = Value::worded(&self.catalogue.findings[place], word)
        {
            patient.values[place] = Some(value);
        }
        patient
    }

    /// The same patient with a finding set to a number, in thousandths of its unit.
    #[must_use]
    pub fn with_number(&self, patient: &Patient, finding: &str, number: Milli) -> Patient {
        let mut patient = patient.clone();
        if let Some(place) = self.position(finding) {
            patient.values[place] = Some(Value::Number(number));
        }
        patient
    }

    /// The word that a patient has for a finding; none if it is unknown or a number.
    pub fn word<'c>(&'c self, patient: &Patient, finding: &str) -> Option<&'c str> {
        let place = self.position(finding)?;
        match (patient.at(place)?, &self.catalogue.findings[place].scale) {
            (Value::Word(at), Scale::Words(words)) => {
                words.get(usize::from(at)).map(|w| w.id.as_str())
            }
            (Value::Flag(set), _) => Some(if set { "yes" } else { "no" }),
            _ => None,
        }
    }

    /// Whether a patient cannot be, and why.
    pub fn impossible(&self, patient: &Patient) -> Option<&str> {
        self.catalogue
            .impossible
            .iter()
            .find(|each| self.holds(&each.when, patient) == Some(true))
            .map(|each| each.because.as_str())
    }
}

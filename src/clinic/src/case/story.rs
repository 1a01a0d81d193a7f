//! What the patient says. It is written from the findings: each sentence that
//! states one is a sentence of the value that this patient has, so that story
//! and chart cannot contradict one another. A frame adds only talk that states
//! no finding.

use super::seed::Seed;
use crate::{
    Clinic,
    patient::{Patient, Value},
};
use catalogue::{
    cases::CaseFrame,
    findings::{Finding, Known, Scale},
    ids::FindingId,
};

/// The finding that is told where there is nothing else to tell.
const COMPLAINT: &str = "pain";

/// A sentence of the patient's that states a finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// The finding.
    pub finding: FindingId,
    /// The sentence.
    pub says: String,
}

impl Clinic {
    /// The findings of the chart that the patient speaks of, in the order of the
    /// vocabulary: those out of the ordinary. Where there is none and a tooth is
    /// to be opened, whether it hurts.
    pub(super) fn told(&self, frame: &CaseFrame, chart: &Patient, chance: &mut Seed) -> Vec<Told> {
        let sentence = |place: usize, finding: &Finding, chance: &mut Seed| {
            let says = chance.pick(sentences(finding, chart.at(place)?))?;
            Some(Told {
                finding: finding.id.clone(),
                says: says.clone(),
            })
        };
        let findings = || self.catalogue.findings.iter().enumerate();
        let mut told: Vec<Told> = findings()
            .filter(|(place, f)| f.known == Known::Chart && !self.is_usual(chart, *place))
            .filter_map(|(place, f)| sentence(place, f, chance))
            .collect();
        if told.is_empty() && !frame.opening.is_empty() {
            let complaint = findings().find(|(_, f)| f.id.as_str() == COMPLAINT);
            told.extend(complaint.and_then(|(place, f)| sentence(place, f, chance)));
        }
        told
    }
}

/// What the patient says: talk of the frame, and the findings told.
pub(super) fn words(frame: &CaseFrame, told: &[Told], chance: &mut Seed) -> String {
    let talk = chance.pick(&frame.words).map(String::as_str);
    let told = told.iter().map(|t| t.says.as_str());
    talk.into_iter().chain(told).collect::<Vec<_>>().join(" ")
}

/// The sentences in which a patient may say that a finding has this value.
fn sentences(finding: &Finding, value: Value) -> &[String] {
    match (&finding.scale, value) {
        (Scale::Words(words), Value::Word(word)) => words
            .get(usize::from(word))
            .map_or(&[], |word| word.told.as_slice()),
        (Scale::Flag { told, .. }, Value::Flag(true)) => told,
        _ => &[],
    }
}

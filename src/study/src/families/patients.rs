//! Patients drawn from the findings, for the families about pulp, depth and layers.

use super::{Desk, text::capital};
use catalogue::{
    findings::{Finding, Scale},
    quantity::Milli,
};
use clinic::patient::{Patient, Value};

/// A patient as a fact names it: `pain=none` and so on, as words of the
/// catalogue's own scales.
pub(super) type Signs<'s> = [(&'s str, &'s str)];

/// The usual patient with these findings; nothing where the catalogue has no
/// such word, or such a patient cannot be.
pub(super) fn patient(desk: &Desk, signs: &Signs<'_>) -> Option<Patient> {
    let mut patient = desk.clinic.usual_patient();
    for (finding, word) in signs {
        let known = finding_of(desk, finding)?;
        patient = if let Scale::Number { .. } = &known.scale {
            let number = Milli::parse(word).ok()?;
            desk.clinic.with_number(&patient, finding, number)
        } else {
            Value::worded(known, word)?;
            desk.clinic.with(&patient, finding, word)
        };
    }
    desk.clinic
        .impossible(&patient)
        .is_none()
        .then_some(patient)
}

/// The lines of a chart for these findings.
pub(super) fn chart(desk: &Desk, patient: &Patient, findings: &[&str]) -> Vec<String> {
    findings
        .iter()
        .filter_map(|id| {
            let known = finding_of(desk, id)?;
            let value = patient.at(desk.clinic.position(id)?)?;
            Some(format!("{}: {}.", capital(&known.name), value.says(known)))
        })
        .collect()
}

/// The words of a finding's scale; a flag has `no` and `yes`.
pub(super) fn words<'d>(desk: &'d Desk, finding: &str) -> Vec<&'d str> {
    match finding_of(desk, finding).map(|f| &f.scale) {
        Some(Scale::Words(words)) => words.iter().map(|w| w.id.as_str()).collect(),
        Some(Scale::Flag { .. }) => vec!["no", "yes"],
        _ => Vec::new(),
    }
}

pub(super) fn finding_of<'d>(desk: &'d Desk, id: &str) -> Option<&'d Finding> {
    let at = desk.clinic.position(id)?;
    desk.catalogue().findings.get(at)
}

/// How a derived finding's word is said.
pub(super) fn says<'d>(desk: &'d Desk, finding: &str, word: &str) -> Option<&'d str> {
    match &finding_of(desk, finding)?.scale {
        Scale::Words(words) => words.iter().find(|w| w.id == word).map(|w| w.says.as_str()),
        _ => None,
    }
}

//! Patients written in one line: `cold=lingers; remaining-dentine=0.4; allergy-latex=yes`.

use catalogue::{Catalogue, quantity::Milli};
use clinic::{Clinic, patient::Patient};
use std::{cell::OnceCell, path::Path, rc::Rc};

/// The catalogue as it is taught, ready for reasoning.
pub fn clinic() -> Rc<Clinic> {
    thread_local! {
        static CLINIC: OnceCell<Rc<Clinic>> = const { OnceCell::new() };
    }
    CLINIC.with(|cell| {
        cell.get_or_init(|| Rc::new(Clinic::new(Rc::new(read()))))
            .clone()
    })
}

fn read() -> Catalogue {
    let content = Path::new(env!("CARGO_MANIFEST_DIR")).join("../content");
    catalogue::source::read(&content).unwrap_or_else(|faults| {
        let all: Vec<String> = faults.iter().map(ToString::to_string).collect();
        panic!("content has faults:\n{}", all.join("\n"))
    })
}

/// The usual patient, opened with ample dentine, with these findings changed.
pub fn patient(findings: &str) -> Patient {
    let clinic = clinic();
    let mut patient = clinic.usual_patient();
    patient = clinic.with_number(&patient, "remaining-dentine", Milli(2500));
    for (finding, word) in [("exposure", "none"), ("bleeding", "none")] {
        patient = clinic.with(&patient, finding, word);
    }
    for part in findings.split(';').map(str::trim).filter(|p| !p.is_empty()) {
        let (finding, value) = part.split_once('=').expect("finding=value");
        assert!(
            clinic.position(finding).is_some(),
            "'{finding}' is no finding of the vocabulary"
        );
        patient = if let Ok(number) = Milli::parse(value) {
            clinic.with_number(&patient, finding, number)
        } else {
            let patient = clinic.with(&patient, finding, value);
            assert_eq!(
                clinic.word(&patient, finding),
                Some(value),
                "'{finding}' is never '{value}'"
            );
            patient
        };
    }
    if let Some(why) = clinic.impossible(&patient) {
        panic!("'{findings}' cannot be: {why}");
    }
    patient
}

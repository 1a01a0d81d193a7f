//! Every mix can be started at some moment: not so early that it stiffens
//! before it is in its place, not so late that the dentist waits.

use super::parts::each;
use crate::{Clinic, patient::Patient};
use std::collections::{BTreeSet, HashSet};

impl Clinic {
    /// The mixes that no start would serve, each with a patient whose visit
    /// shows it. Every patient is run whose findings the procedure asks for.
    pub fn closed_windows(&self) -> Vec<String> {
        let samples = self.samples();
        let mut faults = Vec::new();
        for procedure in &self.catalogue.procedures {
            let places: BTreeSet<usize> = self.asked_for(procedure);
            let places: Vec<usize> = places.into_iter().collect();
            let mut told = HashSet::new();
            let mut look = |patient: &Patient| {
                if !self.can_be_for(procedure, patient) {
                    return;
                }
                for window in self.timeline(&procedure.id, patient).windows {
                    if !window.is_open() && told.insert((window.material.clone(), window.place)) {
                        faults.push(format!(
                            "in '{}' no moment is right to start '{}': mixed in {} s it has to be in its place {} s later and can be worked for {} s in all, for: {}",
                            procedure.id,
                            window.material,
                            window.mix.middle(),
                            window.placing,
                            window.work.from,
                            self.describe(patient)
                        ));
                    }
                }
            };
            each(&places, &samples, &self.usual_patient(), &mut look);
        }
        faults
    }
}

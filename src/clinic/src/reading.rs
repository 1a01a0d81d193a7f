//! Reading a tray: what it is laid for.
//!
//! Every treatment of the catalogue is weighed by how well it explains what lies
//! there and what does not: a naive Bayes reading with equal odds beforehand.
//! An item that a treatment always uses lies there with odds [`SURE`]; one that
//! it uses for some patients, or only if called for, with [`SOMETIMES`]; any
//! other item strays onto its tray with [`STRAY`], which is the smoothing that
//! keeps one odd item from ruling a treatment out.

use crate::{Clinic, patient::Patient, tray::Need};
use catalogue::{
    Item,
    ids::{ItemId, ProcedureId},
    items::Place,
    procedures::{Procedure, ProcedureKind, Step},
};
use std::collections::{BTreeMap, BTreeSet};

/// The chance that an item a treatment always uses lies on its tray.
pub const SURE: f64 = 0.95;
/// The chance that an item it uses for some patients lies there.
pub const SOMETIMES: f64 = 0.4;
/// The chance that any other item strays there.
pub const STRAY: f64 = 0.02;

/// How a treatment explains a tray.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// The treatment.
    pub procedure: ProcedureId,
    /// How likely it is among all treatments, from 0 to 1.
    pub likelihood: f64,
    /// What it uses for certain and is not there.
    pub missing: Vec<ItemId>,
    /// What lies there and it never uses.
    pub strange: Vec<ItemId>,
}

/// What one item on a tray says.
#[derive(Clone, Debug, PartialEq)]
pub struct Evidence {
    /// The item.
    pub item: ItemId,
    /// How many times likelier it makes the best reading than the average of
    /// the others; below 1 it speaks against it.
    pub weight: f64,
    /// The treatments that use it.
    pub used_by: Vec<ProcedureId>,
    /// What its presence suggests where the best reading uses it only for some
    /// patients: the step, as it is written.
    pub suggests: Option<String>,
}

/// How a treatment uses its items, over all patients.
struct Profile {
    procedure: ProcedureId,
    uses: BTreeMap<ItemId, f64>,
}

/// What every treatment of the catalogue uses, made ready for reading any
/// number of trays.
pub struct TrayReader<'c> {
    clinic: &'c Clinic,
    profiles: Vec<Profile>,
}

impl TrayReader<'_> {
    /// Ranks the treatments that a whole tray may be for, the likeliest first.
    pub fn read(&self, laid: &[ItemId]) -> Vec<Reading> {
        self.ranked(laid, |profile, laid| {
            profile.presence(laid) + profile.absence(laid)
        })
    }

    /// The same for a tray that is still being laid: what is not there yet says
    /// nothing.
    pub fn read_so_far(&self, laid: &[ItemId]) -> Vec<Reading> {
        self.ranked(laid, Profile::presence)
    }

    fn ranked(
        &self,
        laid: &[ItemId],
        score: impl Fn(&Profile, &BTreeSet<&ItemId>) -> f64,
    ) -> Vec<Reading> {
        let laid: BTreeSet<&ItemId> = laid.iter().collect();
        let profiles = &self.profiles;
        let scores: Vec<f64> = profiles.iter().map(|p| score(p, &laid)).collect();
        let best = scores.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let total: f64 = scores.iter().map(|s| (s - best).exp()).sum();
        let mut readings: Vec<Reading> = profiles
            .iter()
            .zip(&scores)
            .map(|(profile, score)| Reading {
                procedure: profile.procedure.clone(),
                likelihood: (score - best).exp() / total,
                missing: profile
                    .sure()
                    .filter(|i| !laid.contains(i))
                    .cloned()
                    .collect(),
                strange: laid
                    .iter()
                    .filter(|i| !profile.uses.contains_key(**i))
                    .map(|i| (*i).clone())
                    .collect(),
            })
            .collect();
        readings.sort_by(|a, b| {
            b.likelihood
                .total_cmp(&a.likelihood)
                .then_with(|| a.procedure.cmp(&b.procedure))
        });
        readings
    }

    /// What each item says for the best reading.
    pub fn evidence(&self, laid: &[ItemId], best: &ProcedureId) -> Vec<Evidence> {
        let profiles = &self.profiles;
        let (own, others): (Vec<&Profile>, Vec<&Profile>) =
            profiles.iter().partition(|p| p.procedure == *best);
        let Some(own) = own.first() else {
            return Vec::new();
        };
        laid.iter()
            .map(|item| Evidence {
                item: item.clone(),
                weight: own.chance(item) / mean(others.iter().map(|p| p.chance(item))).max(STRAY),
                used_by: profiles
                    .iter()
                    .filter(|p| p.uses.contains_key(item))
                    .map(|p| p.procedure.clone())
                    .collect(),
                suggests: self
                    .clinic
                    .suggestion(best, item)
                    .filter(|_| own.chance(item) < SURE),
            })
            .collect()
    }

    /// Whether a treatment uses an item for some patient.
    pub fn uses(&self, procedure: &ProcedureId, item: &ItemId) -> bool {
        self.profiles
            .iter()
            .any(|p| p.procedure == *procedure && p.uses.contains_key(item))
    }

    /// The treatments.
    pub fn treatments(&self) -> impl Iterator<Item = &ProcedureId> {
        self.profiles.iter().map(|p| &p.procedure)
    }

    /// What a treatment uses for certain, in the order of ids; nothing where
    /// the catalogue has no such treatment.
    pub fn certain(&self, procedure: &ProcedureId) -> Vec<&ItemId> {
        let own = self.profiles.iter().find(|p| p.procedure == *procedure);
        own.map_or_else(Vec::new, |p| p.sure().collect())
    }
}

impl Clinic {
    /// Makes the treatments ready for reading trays.
    pub fn tray_reader(&self) -> TrayReader<'_> {
        let procedures = self.catalogue.procedures.iter();
        TrayReader {
            clinic: self,
            profiles: procedures
                .filter(|p| p.kind == ProcedureKind::Treatment)
                .map(|p| self.profile(p))
                .collect(),
        }
    }

    /// [`TrayReader::read`] for one tray.
    pub fn read_tray(&self, laid: &[ItemId]) -> Vec<Reading> {
        self.tray_reader().read(laid)
    }

    /// [`TrayReader::evidence`] for one tray.
    pub fn tray_evidence(&self, laid: &[ItemId], best: &ProcedureId) -> Vec<Evidence> {
        self.tray_reader().evidence(laid, best)
    }

    /// What a treatment uses: for the usual patient for certain, and for any patient at times.
    fn profile(&self, procedure: &Procedure) -> Profile {
        let mut uses = BTreeMap::new();
        self.all_uses(procedure, &mut uses);
        let usual: Patient = self.reason(&self.usual_patient()).patient;
        for (_, laid) in self.tray(&procedure.id, &usual).items() {
            if laid.need == Need::Needed {
                uses.insert(laid.item.clone(), SURE);
            }
        }
        uses.retain(|item, _| self.catalogue.item(item).map(Item::place) == Some(Place::Tray));
        Profile {
            procedure: procedure.id.clone(),
            uses,
        }
    }

    fn all_uses(&self, procedure: &Procedure, into: &mut BTreeMap<ItemId, f64>) {
        for step in &procedure.steps {
            for each in step.uses.0.iter().chain(&step.at_hand.0) {
                into.entry(each.item.clone()).or_insert(SOMETIMES);
            }
            if let Some(included) = step
                .include
                .as_ref()
                .and_then(|id| self.catalogue.procedure(id))
            {
                self.all_uses(included, into);
            }
        }
        for take in procedure.variations.iter().filter_map(|v| v.take.as_ref()) {
            into.entry(take.clone()).or_insert(SOMETIMES);
        }
    }

    /// What the presence of an item suggests: the reason for it in a step that not every patient has.
    fn suggestion(&self, procedure: &ProcedureId, item: &ItemId) -> Option<String> {
        let procedure = self.catalogue.procedure(procedure)?;
        let reason = |step: &Step| {
            let all = step.uses.0.iter().chain(&step.at_hand.0);
            all.into_iter()
                .find(|u| u.item == *item)
                .map(|u| u.reason.clone())
        };
        let exchanged = procedure
            .variations
            .iter()
            .find(|v| v.take.as_ref() == Some(item));
        exchanged
            .map(|v| v.because.clone())
            .or_else(|| procedure.steps.iter().find_map(reason))
            .or_else(|| {
                procedure
                    .steps
                    .iter()
                    .filter_map(|s| s.include.as_ref())
                    .find_map(|id| self.suggestion(id, item))
            })
    }
}

impl Profile {
    fn chance(&self, item: &ItemId) -> f64 {
        self.uses.get(item).copied().unwrap_or(STRAY)
    }

    fn sure(&self) -> impl Iterator<Item = &ItemId> {
        self.uses
            .iter()
            .filter(|(_, chance)| **chance >= SURE)
            .map(|(item, _)| item)
    }

    /// The log of the chance that all of these lie there.
    fn presence(&self, laid: &BTreeSet<&ItemId>) -> f64 {
        laid.iter().map(|i| self.chance(i).ln()).sum()
    }

    /// The log of the chance that nothing else does. An item that nobody laid
    /// and this treatment does not use says nothing.
    fn absence(&self, laid: &BTreeSet<&ItemId>) -> f64 {
        self.uses
            .iter()
            .filter(|(i, _)| !laid.contains(i))
            .map(|(_, chance)| (1.0 - chance).ln())
            .sum()
    }
}

fn mean(values: impl Iterator<Item = f64>) -> f64 {
    let (sum, count) = values.fold((0.0, 0.0), |(sum, count), v| (sum + v, count + 1.0));
    if count > 0.0 { sum / count } else { 0.0 }
}

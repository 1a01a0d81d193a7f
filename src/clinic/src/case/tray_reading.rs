//! Trays to be read, drawn by a seed: the tray of one treatment with one needed
//! thing taken away and one laid that belongs elsewhere.
//!
//! Nothing is remembered of how a tray was drawn. Its answers are read back
//! from what lies there, as they would be from any tray; a draw that cannot be
//! read in exactly one way is drawn again.

use super::{
    cavity::{lower_first, plain},
    choice::{Choice, Decision, Form},
    seed::Seed,
};
use crate::{
    Clinic,
    reading::{Reading, TrayReader},
    standing::Standing,
};
use catalogue::{
    Item,
    ids::{ItemId, ProcedureId},
    items::Place,
};

/// What stands for these exercises where the record names a case.
pub const CASE: &str = "reading";

/// What they are called in a list of what was done.
pub const TITLE: &str = "A tray to be read";

/// How often a tray is drawn before a seed counts as barren.
const TRIES: usize = 200;

/// How likely the treatment has to be, so that its tray is read in one way.
const PLAIN: f64 = 0.9;

/// How many treatments there are to choose from.
const TREATMENTS: usize = 5;

/// How many things there are to choose the missing one from.
const THINGS: usize = 5;

/// How many of the things that could stray are taken for the nearest.
const NEAREST: usize = 12;

/// How many treatments or things a sentence names.
const NAMED: usize = 3;

/// A drawn tray and what is asked of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TrayReading {
    /// The seed it was drawn by.
    pub seed: u64,
    /// What lies there, in no order that says anything.
    pub laid: Vec<ItemId>,
    /// The treatment it is read as.
    pub procedure: ProcedureId,
    /// The thing that does not belong.
    pub stray: ItemId,
    /// The thing that is missing.
    pub missing: ItemId,
    /// What it is for, what does not belong, what is missing.
    pub decisions: [Decision; 3],
}

impl Clinic {
    /// The exercise of a seed; none where the catalogue has too few treatments
    /// to draw one. The same seed gives the same exercise for ever.
    pub fn tray_reading(&self, seed: u64) -> Option<TrayReading> {
        let reader = self.tray_reader();
        let mut chance = Seed::new(seed);
        (0..TRIES).find_map(|_| self.drawn(&reader, seed, &mut chance))
    }

    fn drawn(&self, reader: &TrayReader, seed: u64, chance: &mut Seed) -> Option<TrayReading> {
        let treatments: Vec<&ProcedureId> = reader.treatments().collect();
        let own = *chance.pick(&treatments)?;
        let mut laid: Vec<ItemId> = reader.certain(own).into_iter().cloned().collect();
        let taken = chance.below(laid.len());
        if laid.len() < THINGS {
            return None;
        }
        laid.remove(taken);
        let strays = self.strays(reader, own);
        laid.push(chance.pick(&strays)?.clone());
        chance.shuffle(&mut laid);
        let readings = reader.read(&laid);
        let best = readings.first().filter(|r| r.likelihood >= PLAIN)?;
        let ([stray], [missing]) = (&best.strange[..], &best.missing[..]) else {
            return None;
        };
        let (stray, missing) = (stray.clone(), missing.clone());
        let mut decisions = [
            self.what_for(reader, &laid, &readings),
            self.what_strays(reader, &laid, best),
            self.what_is_missing(reader, &laid, best, &missing, chance),
        ];
        for decision in &mut decisions {
            // The things on the tray stay where they lie.
            if decision.id != "stray" {
                decision.arrange(chance);
            }
        }
        Some(TrayReading {
            seed,
            procedure: best.procedure.clone(),
            laid,
            stray,
            missing,
            decisions,
        })
    }

    /// What can stray onto the tray of a treatment: things it never uses and
    /// others use for certain, those of the family of something it uses first.
    fn strays(&self, reader: &TrayReader, own: &ProcedureId) -> Vec<ItemId> {
        let families: Vec<&str> = reader
            .certain(own)
            .into_iter()
            .filter_map(|id| self.catalogue.item(id).map(Item::family))
            .collect();
        let mut found: Vec<ItemId> = Vec::new();
        for other in reader.treatments() {
            for item in reader.certain(other) {
                if !reader.uses(own, item) && !found.contains(item) {
                    found.push(item.clone());
                }
            }
        }
        let kin = |id: &ItemId| {
            let family = self.catalogue.item(id).map(Item::family);
            family.is_some_and(|f| families.contains(&f))
        };
        found.sort_by_key(|id| (!kin(id), id.clone()));
        let kindred = found.iter().filter(|id| kin(id)).count();
        found.truncate(kindred.max(NEAREST));
        found
    }

    fn what_for(&self, reader: &TrayReader, laid: &[ItemId], readings: &[Reading]) -> Decision {
        let best = &readings[0].procedure;
        let choices = readings.iter().take(TREATMENTS).map(|reading| {
            let procedure = self.catalogue.procedure(&reading.procedure);
            let name = procedure.map_or("", |p| p.name.as_str());
            let own = reading.procedure == *best;
            let standing = if own {
                Standing::Right
            } else {
                Standing::Wrong
            };
            let because = if own {
                self.says_most(reader, laid, best)
            } else {
                self.speaks_against(reading)
            };
            Choice::new(reading.procedure.as_str(), name, standing).because(plain(because))
        });
        decision(
            "purpose",
            "What is it for?",
            "What is this tray laid for?",
            choices.collect(),
        )
    }

    /// What on the tray points most to a treatment.
    fn says_most(&self, reader: &TrayReader, laid: &[ItemId], best: &ProcedureId) -> String {
        let mut evidence = reader.evidence(laid, best);
        evidence.sort_by(|a, b| b.weight.total_cmp(&a.weight));
        let items: Vec<&ItemId> = evidence.iter().map(|e| &e.item).take(NAMED).collect();
        format!("What points to it most: {}.", self.named(&items))
    }

    /// What a treatment would need and is not there, or leaves unexplained.
    fn speaks_against(&self, reading: &Reading) -> String {
        let some = |items: &[ItemId]| self.named(&items.iter().take(NAMED).collect::<Vec<_>>());
        let needs = (!reading.missing.is_empty()).then(|| {
            format!(
                "It would need what is not there: {}.",
                some(&reading.missing)
            )
        });
        let leaves = (!reading.strange.is_empty())
            .then(|| format!("It has no use for: {}.", some(&reading.strange)));
        let both: Vec<String> = needs.into_iter().chain(leaves).collect();
        both.join(" ")
    }

    fn what_strays(&self, reader: &TrayReader, laid: &[ItemId], best: &Reading) -> Decision {
        let evidence = reader.evidence(laid, &best.procedure);
        let choices = evidence.iter().map(|each| {
            let stray = best.strange.contains(&each.item);
            let because = if stray {
                format!(
                    "Nothing here needs it. It belongs to: {}.",
                    self.treatments(&each.used_by)
                )
            } else {
                "A step of this treatment uses it.".into()
            };
            self.thing(&each.item, stray, because)
        });
        decision(
            "stray",
            "What does not belong?",
            "One thing does not belong. Which?",
            choices.collect(),
        )
    }

    fn what_is_missing(
        &self,
        reader: &TrayReader,
        laid: &[ItemId],
        best: &Reading,
        missing: &ItemId,
        chance: &mut Seed,
    ) -> Decision {
        let mut others: Vec<ItemId> = Vec::new();
        let mut offer = |id: &ItemId| {
            let out = !reader.uses(&best.procedure, id) && !laid.contains(id);
            let tray = self.catalogue.item(id).map(Item::place) == Some(Place::Tray);
            if out && tray && !others.contains(id) {
                others.push(id.clone());
            }
        };
        let like = self.catalogue.item(missing);
        for lookalike in like.iter().flat_map(|i| i.lookalikes()) {
            offer(&lookalike.item);
        }
        let mut strays = self.strays(reader, &best.procedure);
        chance.shuffle(&mut strays);
        strays.iter().for_each(&mut offer);
        others.truncate(THINGS - 1);
        let name = self.treatments(std::slice::from_ref(&best.procedure));
        let mut choices: Vec<Choice> = others
            .iter()
            .map(|id| {
                let purpose = self.catalogue.item(id).map_or("", Item::purpose);
                self.thing(id, false, format!("Nothing in it uses this. {purpose}"))
            })
            .collect();
        let because = self.reason_for(&best.procedure, missing);
        choices.push(self.thing(missing, true, because));
        decision(
            "missing",
            "What is missing?",
            &format!("Say it is laid for: {name}. Which of these is missing?"),
            choices,
        )
    }

    /// Why a treatment needs an item, in its own words.
    fn reason_for(&self, procedure: &ProcedureId, item: &ItemId) -> String {
        let patient = self.reason(&self.usual_patient()).patient;
        let tray = self.tray(procedure, &patient);
        let reason = tray
            .items()
            .find(|(_, i)| i.item == *item)
            .map(|(_, i)| i.reason.clone());
        reason.map_or_else(String::new, |reason| format!("It is needed {reason}."))
    }

    fn thing(&self, id: &ItemId, right: bool, because: String) -> Choice {
        let standing = if right {
            Standing::Right
        } else {
            Standing::Wrong
        };
        Choice::new(id.as_str(), self.catalogue.item_name(id), standing)
            .showing(id)
            .because(plain(because))
    }

    fn named(&self, items: &[&ItemId]) -> String {
        let names: Vec<String> = items
            .iter()
            .map(|id| lower_first(self.catalogue.item_name(id)))
            .collect();
        names.join("; ")
    }

    fn treatments(&self, ids: &[ProcedureId]) -> String {
        let names: Vec<String> = ids
            .iter()
            .filter_map(|id| self.catalogue.procedure(id))
            .map(|p| lower_first(&p.short))
            .collect();
        match names.split_at_checked(NAMED) {
            Some((first, rest)) if !rest.is_empty() => {
                format!("{}; and {} more", first.join("; "), rest.len())
            }
            _ => names.join("; "),
        }
    }
}

fn decision(id: &str, name: &str, question: &str, choices: Vec<Choice>) -> Decision {
    Decision::new(id, name, question, Form::One, choices, "tray-set-ups")
}

//! The catalogue: everything that is taught, as typed data.
//!
//! `content/` holds the facts as TOML and Markdown. With the feature `source`
//! this crate reads and checks those files and reports every fault with its
//! place; without it, as in the page, it only unpacks what was packed at build
//! time. Nothing here reasons: that is the work of `clinic`.

pub mod cases;
pub mod competencies;
pub mod condition;
pub mod findings;
pub mod given;
pub mod glossary;
pub mod ids;
pub mod items;
mod kinds;
pub mod kinetics;
pub mod lesson;
mod lookup;
pub mod numbers;
pub mod outline;
pub mod pack;
pub mod plans;
pub mod preference;
pub mod procedures;
pub mod quantity;
pub mod reading_order;
pub mod rules;
pub mod search;
#[cfg(feature = "source")]
pub mod source;
pub mod sources;
pub mod stops;

use serde::{Deserialize, Serialize};

pub use lookup::Item;
pub use pack::{pack, pack_outline, unpack, unpack_outline};

/// All that is taught. Lists are sorted by id where order means nothing, and
/// stand as written where it does.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Catalogue {
    /// The sources.
    pub sources: Vec<sources::Source>,
    /// The competencies, in the order of the blueprint.
    pub competencies: Vec<competencies::Competency>,
    /// The findings, in the order of a chart.
    pub findings: Vec<findings::Finding>,
    /// Combinations that cannot be.
    pub impossible: Vec<findings::Impossible>,
    /// The instruments, family by family.
    pub instruments: Vec<items::Instrument>,
    /// The materials, family by family.
    pub materials: Vec<items::Material>,
    /// How materials behave while they are mixed.
    pub kinetics: Vec<kinetics::Kinetics>,
    /// The procedures and set-ups.
    pub procedures: Vec<procedures::Procedure>,
    /// The plans.
    pub plans: Vec<plans::Plan>,
    /// What is checked at recall, and signs to come sooner.
    pub checks: Vec<plans::Check>,
    /// The rules.
    pub rules: Vec<rules::Rule>,
    /// Examples of preference cards.
    pub cards: Vec<preference::Card>,
    /// The moments at which the assistant speaks up.
    pub stops: Vec<stops::Stop>,
    /// The case frames.
    pub cases: Vec<cases::CaseFrame>,
    /// The lessons.
    pub lessons: Vec<lesson::Lesson>,
    /// The words of the trade, in the order of the alphabet.
    pub glossary: Vec<glossary::Term>,
    /// The drawings, by the id of the item they show.
    pub drawings: Vec<(ids::ItemId, drawing::Drawing)>,
    /// Figures to work with.
    pub numbers: numbers::Numbers,
}

impl Catalogue {
    /// How many of each kind there are, for a report.
    pub fn counts(&self) -> Vec<(&'static str, usize)> {
        vec![
            ("sources", self.sources.len()),
            ("competencies", self.competencies.len()),
            ("findings", self.findings.len()),
            ("rules", self.rules.len()),
            ("plans", self.plans.len()),
            ("procedures and set-ups", self.procedures.len()),
            ("instruments", self.instruments.len()),
            ("materials", self.materials.len()),
            ("materials mixed step by step", self.kinetics.len()),
            ("drawings", self.drawings.len()),
            ("lessons", self.lessons.len()),
            ("words of the trade", self.glossary.len()),
            ("preference cards", self.cards.len()),
            ("moments to speak up", self.stops.len()),
            ("case frames", self.cases.len()),
            ("anaesthetic solutions", self.numbers.solutions.len()),
            ("sets of maximum doses", self.numbers.dose_rules.len()),
        ]
    }
}

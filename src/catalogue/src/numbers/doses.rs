//! Anaesthetic solutions and how much of them a named rule allows.

use crate::{ids::SourceId, quantity::Milli};
use serde::{Deserialize, Serialize};

/// An anaesthetic solution in a cartridge.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Solution {
    /// Its id.
    pub id: String,
    /// Its name with strength and vasoconstrictor: `lidocaine 2 % with epinephrine 1:100 000`.
    pub name: String,
    /// The drug, as the rules name it.
    pub drug: String,
    /// Strength in per cent: grams in 100 mL.
    pub percent: Milli,
    /// What narrows the vessels; none in a plain solution.
    #[serde(default)]
    pub vasoconstrictor: Option<Vasoconstrictor>,
    /// What its cartridges hold, in mL, as labels print it.
    pub volumes: Vec<Milli>,
    /// Its label advises against it below this age in years.
    #[serde(default)]
    pub not_under_years: Option<u8>,
    /// What else its label says that no sum shows, in a sentence.
    #[serde(default)]
    pub note: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A vasoconstrictor and how thin it is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Vasoconstrictor {
    /// Its name: `epinephrine`.
    pub name: String,
    /// The second number of the ratio: 100000 for 1 g in 100 000 mL.
    pub ratio: u32,
}

/// Whom a set of maximum doses speaks of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Whom {
    /// Children.
    Children,
    /// Adults, and children by weight where nothing stricter is followed.
    Anyone,
}

/// A named set of maximum doses: a label, a guideline, a country's table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct DoseRules {
    /// Its id.
    pub id: String,
    /// Its name: `United States labels`.
    pub name: String,
    /// Whom it speaks of.
    pub whom: Whom,
    /// What to know before using it, in a sentence.
    pub note: String,
    /// Its limits.
    pub limits: Vec<DrugLimit>,
}

/// The most of one drug, by one set of rules.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct DrugLimit {
    /// The drug.
    pub drug: String,
    /// Only for this strength in per cent; for all where absent.
    #[serde(default)]
    pub percent: Option<Milli>,
    /// Only with (`true`) or only without (`false`) a vasoconstrictor; for both where absent.
    #[serde(default)]
    pub vasoconstrictor: Option<bool>,
    /// Milligrams for each kilogram.
    #[serde(default)]
    pub per_kg: Option<Milli>,
    /// Milligrams for each pound, where the source prints that too.
    #[serde(default)]
    pub per_lb: Option<Milli>,
    /// A share of the adult's dose by weight.
    #[serde(default)]
    pub share: Option<Share>,
    /// The most in one sitting, in mg, whatever the weight.
    #[serde(default)]
    pub ceiling: Option<Milli>,
    /// Whether the figure is so unsure that nothing may be graded by it.
    #[serde(default)]
    pub unsure: bool,
    /// What to know of this limit, in a sentence; may be empty.
    #[serde(default)]
    pub note: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A child's dose as the adult's dose times the child's weight over the adult's.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Share {
    /// The adult's dose in mg.
    pub adult_mg: u32,
    /// The adult's weight in pounds.
    pub adult_lb: u32,
}

/// How the heart bears a vasoconstrictor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Heart {
    /// A healthy adult.
    Healthy,
    /// Significant heart disease.
    Diseased,
}

/// The most of a vasoconstrictor in one sitting.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct VasoconstrictorLimit {
    /// The vasoconstrictor.
    pub name: String,
    /// For which heart.
    pub heart: Heart,
    /// The most, in mg.
    pub most: Milli,
    /// What to know of this limit, in a sentence; may be empty.
    #[serde(default)]
    pub note: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

//! Figures that an assistant has to get right: doses, teeth, instruments,
//! sterilising, proportions. Each names its source; what is worked out from
//! them is the affair of `clinic`.

mod doses;
mod instruments;
mod safety;
mod teeth;

pub use doses::{
    DoseRules, DrugLimit, Heart, Share, Solution, Vasoconstrictor, VasoconstrictorLimit, Whom,
};
pub use instruments::{BurCode, BurGroup, BurSeries, FileSize, FormulaExample, NeedleGauge};
pub use safety::{Cycle, Limit};
pub use teeth::{Dentition, Jaw, ToothFacts};

use crate::{
    ids::{ItemId, SourceId},
    quantity::{Milli, Span},
};
use serde::{Deserialize, Serialize};

/// All figures of `content/numbers/`, one file a list.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Numbers {
    /// Anaesthetic solutions as they are bought.
    pub solutions: Vec<Solution>,
    /// Named sets of maximum doses.
    pub dose_rules: Vec<DoseRules>,
    /// How much vasoconstrictor a sitting may bring.
    pub vasoconstrictor_limits: Vec<VasoconstrictorLimit>,
    /// Teeth: when they come and go, and how large their crowns are.
    pub teeth: Vec<ToothFacts>,
    /// Instruments with a formula by Black, as examples.
    pub formulas: Vec<FormulaExample>,
    /// Burs by their short numbers, shape by shape.
    pub burs: Vec<BurSeries>,
    /// Groups of the long bur number.
    pub bur_codes: Vec<BurCode>,
    /// Root canal files.
    pub file_sizes: Vec<FileSize>,
    /// Needles by gauge.
    pub needles: Vec<NeedleGauge>,
    /// Sterilising cycles.
    pub cycles: Vec<Cycle>,
    /// Limits that a reading is held against.
    pub limits: Vec<Limit>,
    /// Powder and liquid.
    pub proportions: Vec<Proportion>,
    /// Single figures, found by their id.
    pub figures: Vec<Figure>,
}

impl Numbers {
    /// The solution with this id.
    pub fn solution(&self, id: &str) -> Option<&Solution> {
        self.solutions.iter().find(|s| s.id == id)
    }

    /// The set of maximum doses with this id.
    pub fn rules(&self, id: &str) -> Option<&DoseRules> {
        self.dose_rules.iter().find(|r| r.id == id)
    }

    /// The single figure with this id.
    pub fn figure(&self, id: &str) -> Option<&Figure> {
        self.figures.iter().find(|f| f.id == id)
    }
}

/// How much liquid goes to how much powder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Proportion {
    /// Its id.
    pub id: String,
    /// What is mixed.
    pub name: String,
    /// The material it is the proportion of, where a patient's visit mixes it.
    #[serde(default)]
    pub material: Option<ItemId>,
    /// So much powder or base.
    pub powder: u32,
    /// Its unit: `g`, `scoop`.
    pub powder_unit: String,
    /// So much liquid or catalyst, least and most.
    pub liquid: Span,
    /// Its unit: `mL`.
    pub liquid_unit: String,
    /// What happens otherwise, in a sentence.
    pub otherwise: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// One figure with its unit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Figure {
    /// Its id.
    pub id: String,
    /// What it says.
    pub says: String,
    /// The figure.
    pub value: Milli,
    /// Its unit.
    pub unit: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// The single figures that reasoning asks for; all of them have to be there.
pub const FIGURES: [&str; 10] = [
    "centigrade",
    "edge-between",
    "contra-angle",
    "binangle",
    "near-axis",
    "file-taper",
    "file-blade",
    "spore-test",
    "fluorine",
    "sodium-fluoride",
];

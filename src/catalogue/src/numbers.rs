//! Figures that an assistant has to get right: doses, teeth, instruments,
//! sterilising, proportions. Each names its source; what is worked out from
//! them is the affair of `clinic`.

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

/// A jaw.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Jaw {
    /// The upper jaw.
    Upper,
    /// The lower jaw.
    Lower,
}

/// A set of teeth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Dentition {
    /// Primary teeth.
    Primary,
    /// Permanent teeth.
    Permanent,
}

/// One tooth of each side of a jaw.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct ToothFacts {
    /// Its jaw.
    pub jaw: Jaw,
    /// Primary or permanent.
    pub dentition: Dentition,
    /// Its place from the midline, from 1.
    pub place: u8,
    /// When it comes: months in primary teeth, years in permanent ones.
    pub erupts: Span,
    /// When a primary tooth is shed, in years.
    #[serde(default)]
    pub sheds: Option<Span>,
    /// What copies of the chart print otherwise, in a sentence; may be empty.
    #[serde(default)]
    pub note: String,
    /// Width of the crown along the row, in mm.
    pub width: Milli,
    /// Depth of the crown from cheek or lip to tongue, in mm.
    pub depth: Milli,
    /// Where the ages are from.
    pub sources: Vec<SourceId>,
    /// Where the size is from.
    pub size_sources: Vec<SourceId>,
}

/// An instrument with its formula.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct FormulaExample {
    /// What it is: `hoe`.
    pub name: String,
    /// Its formula: `15-8-14`.
    pub formula: String,
    /// The instrument of the catalogue with this formula.
    #[serde(default)]
    pub item: Option<ItemId>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// Burs of one shape by their short numbers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct BurSeries {
    /// The shape: `straight fissure, plain`.
    pub shape: String,
    /// Short number and diameter of the head in mm.
    pub sizes: Vec<(String, Milli)>,
    /// What is added to a number of this series for the cross-cut bur of the same size.
    #[serde(default)]
    pub cross_cut: Option<u16>,
    /// Where tables differ, in a sentence; may be empty.
    #[serde(default)]
    pub note: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A place in the long bur number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BurGroup {
    /// What the working part is made of.
    Material,
    /// Shank and length.
    Shank,
    /// Shape of the head.
    Shape,
    /// Grit or toothing.
    Cutting,
}

/// Three digits of the long bur number, and what they say.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct BurCode {
    /// Where they stand.
    pub group: BurGroup,
    /// The digits.
    pub code: String,
    /// What they say.
    pub says: String,
    /// Diameter of the shank in mm, in that group.
    #[serde(default)]
    pub diameter: Option<Milli>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A root canal file by its size.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct FileSize {
    /// The number: hundredths of a millimetre at the tip.
    pub size: u16,
    /// The colour of its handle.
    pub colour: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A needle by its gauge.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct NeedleGauge {
    /// The gauge.
    pub gauge: u8,
    /// Outer diameter in mm.
    pub diameter: Milli,
    /// Its colour by the standard.
    pub colour: String,
    /// The colour that dental packs of one country carry by custom.
    #[serde(default)]
    pub custom_colour: Option<String>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A sterilising cycle.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Cycle {
    /// Its id.
    pub id: String,
    /// How it sterilises: `steam, gravity displacement`.
    pub method: String,
    /// What lies in it: `wrapped instruments`.
    pub load: String,
    /// Temperature in degrees Celsius.
    pub celsius: u16,
    /// Minutes at temperature.
    pub minutes: Span,
    /// Minutes of drying.
    #[serde(default)]
    pub drying: Option<Span>,
    /// What is printed wrongly in circulation, in a sentence; may be empty.
    #[serde(default)]
    pub note: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// A limit that a reading may reach and not pass.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Limit {
    /// Its id.
    pub id: String,
    /// What is measured: limits on the same thing stand side by side.
    pub of: String,
    /// Whose limit it is.
    pub body: String,
    /// The most that is allowed.
    pub most: u32,
    /// Its unit.
    pub unit: String,
    /// What to do above it, in a sentence.
    pub above: String,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// How much liquid goes to how much powder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Proportion {
    /// Its id.
    pub id: String,
    /// What is mixed.
    pub name: String,
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

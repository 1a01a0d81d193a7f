//! Numbers that stand on instruments: formulas, burs, files, needles.

use crate::{
    ids::{ItemId, SourceId},
    quantity::Milli,
};
use serde::{Deserialize, Serialize};

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

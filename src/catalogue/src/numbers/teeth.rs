//! When teeth come and go, and how large they are.

use crate::{
    ids::SourceId,
    quantity::{Milli, Span},
};
use serde::{Deserialize, Serialize};

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

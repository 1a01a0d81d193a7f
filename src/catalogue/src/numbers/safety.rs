//! Sterilising cycles, and limits that a reading is held against.

use crate::{ids::SourceId, quantity::Span};
use serde::{Deserialize, Serialize};

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

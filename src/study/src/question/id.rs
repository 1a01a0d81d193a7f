//! The id of a question: its family and the ids of the fact it asks about.

use serde::{Deserialize, Serialize};
use std::fmt;

/// Names a fact, not a wording: `missing.amalgam-restoration.bur-330`.
///
/// The parts are ids of the catalogue, so a new wording, a new name or another
/// wrong option leaves the id as it is. (A name that comes to give its answer
/// away takes the question off the list; the id still means the same fact.)
/// Where the catalogue gives a fact no id
/// of its own (a slip of a step, a line of advice) its place in its list stands
/// for it, counted from 1: such lists grow at their end.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct QuestionId(pub String);

impl QuestionId {
    /// The id of a family's question about a fact.
    pub fn of(family: &str, fact: &str) -> Self {
        Self(format!("{family}.{fact}"))
    }

    /// The id of its family.
    pub fn family(&self) -> &str {
        self.0.split('.').next().unwrap_or_default()
    }

    /// The parts of the fact.
    pub fn fact(&self) -> Vec<&str> {
        self.0.split('.').skip(1).collect()
    }
}

impl fmt::Display for QuestionId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

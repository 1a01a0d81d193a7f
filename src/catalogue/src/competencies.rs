//! The blueprint: what a student should be able to do, and how much each weighs.

use crate::ids::CompetencyId;
use serde::{Deserialize, Serialize};

/// A competency.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Competency {
    /// Its id.
    pub id: CompetencyId,
    /// Its name: `Tray set-ups`.
    pub name: String,
    /// What a student who has it can do, as the end of 'I can …'.
    pub can: String,
    /// Its weight in whole per cent; all weights add up to 100.
    pub weight: u8,
}

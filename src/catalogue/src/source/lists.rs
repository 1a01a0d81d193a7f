//! Folders of `content/` whose files are lists of tables, and may be several.

/// Where such lists stand, and what their tables are called.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct List {
    /// The folder below `content/`.
    pub folder: &'static str,
    /// The table of each entry.
    pub table: &'static str,
}

const fn list(folder: &'static str, table: &'static str) -> List {
    List { folder, table }
}

/// Case frames.
pub const CASES: List = list("cases", "case");
/// Drawings.
pub const DRAWINGS: List = list("drawings", "drawing");
/// Instruments.
pub const INSTRUMENTS: List = list("instruments", "instrument");
/// How mixes go.
pub const KINETICS: List = list("kinetics", "kinetics");
/// Materials.
pub const MATERIALS: List = list("materials", "material");
/// Plans.
pub const PLANS: List = list("plans", "plan");
/// Preference cards.
pub const PREFERENCE_CARDS: List = list("preference-cards", "card");
/// Rules.
pub const RULES: List = list("rules", "rule");
/// Sources that a pack brings beside those that are there.
pub const SOURCES: List = list("sources", "source");

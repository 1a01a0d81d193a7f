//! What is said of a mix that was handed over.

use super::units::Seconds;
use crate::standing::Standing;
use catalogue::{ids::SourceId, items::Shows};

/// One thing found in a mix.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// How bad it is.
    pub standing: Standing,
    /// The marks it takes, out of 100.
    pub takes: u8,
    /// What is so, and why.
    pub sentence: String,
    /// What of the mix shows it, where content names a fault for it.
    pub shows: Option<Shows>,
    /// Where this is from.
    pub sources: Vec<SourceId>,
}

/// What is said of a mix that was handed over.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Verdict {
    /// Right, acceptable, wrong or unsafe.
    pub standing: Standing,
    /// Out of 100: 90 and more for right, 60 to 89 for acceptable, at most 50 for wrong, 0 for unsafe.
    pub marks: u8,
    /// The cause, in a sentence: that of the worst finding.
    pub cause: String,
    /// What else was found, the worse first.
    pub also: Vec<Finding>,
    /// What to do now; empty where all is right.
    pub mend: String,
    /// A tempting mend that does harm; empty where none is known.
    pub never: String,
    /// What happens next: how it sets.
    pub next: String,
    /// When it will have set once it is in the mouth, in seconds from the start of the mix; none where only light sets it.
    pub sets_after: Option<Seconds>,
    /// What of this is published and what is an illustration.
    pub label: String,
    /// Where the cause is from.
    pub sources: Vec<SourceId>,
}

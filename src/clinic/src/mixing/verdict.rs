//! What is said of a mix that was handed over.

use super::units::Seconds;
use crate::standing::Standing;
use catalogue::{ids::SourceId, items::Shows};

/// A kind of thing that can be found in a mix.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fault {
    /// Its working time is over.
    Past,
    /// Liquid was added to a mix that takes none.
    Thinned,
    /// It is thinner than it should be.
    Thin,
    /// It is thicker than it should be.
    Thick,
    /// The light was held over it on the pad.
    Lit,
    /// It is there before the dentist is ready.
    Early,
    /// The dentist waited for it.
    Late,
    /// Too little working time is left to place it.
    Short,
    /// It is not mixed through.
    Unmixed,
    /// It was worked for far too long.
    Overworked,
    /// The first lot was far too large.
    LargeLot,
    /// It was mixed where water had condensed.
    Wet,
    /// The liquid stood before it was mixed.
    Stood,
}

impl Fault {
    /// All of them.
    pub const ALL: [Self; 13] = [
        Self::Past,
        Self::Thinned,
        Self::Thin,
        Self::Thick,
        Self::Lit,
        Self::Early,
        Self::Late,
        Self::Short,
        Self::Unmixed,
        Self::Overworked,
        Self::LargeLot,
        Self::Wet,
        Self::Stood,
    ];

    /// Its id: the same for ever.
    pub const fn id(self) -> &'static str {
        self.texts().0
    }

    /// What it is, in a few words.
    pub const fn name(self) -> &'static str {
        self.texts().1
    }

    /// What of the mix shows it, where content names faults by that.
    pub(super) const fn shows(self) -> Option<Shows> {
        Some(match self {
            Self::Past | Self::Thinned => Shows::Past,
            Self::Thin => Shows::Thin,
            Self::Thick => Shows::Thick,
            Self::Unmixed => Shows::Unmixed,
            Self::Wet => Shows::Wet,
            _ => return None,
        })
    }

    const fn texts(self) -> (&'static str, &'static str) {
        match self {
            Self::Past => ("past", "Past its working time"),
            Self::Thinned => ("thinned", "Thinned with more liquid"),
            Self::Thin => ("thin", "Too thin"),
            Self::Thick => ("thick", "Too thick"),
            Self::Lit => ("lit", "Hardened by the light on the pad"),
            Self::Early => ("early", "There before the dentist is ready"),
            Self::Late => ("late", "The dentist had to wait"),
            Self::Short => ("short", "Too little time left to place it"),
            Self::Unmixed => ("unmixed", "Not mixed through"),
            Self::Overworked => ("overworked", "Worked for too long"),
            Self::LargeLot => ("large-lot", "Too large a first lot"),
            Self::Wet => ("wet", "Mixed on a wet slab"),
            Self::Stood => ("stood", "The liquid had stood"),
        }
    }
}

/// One thing found in a mix.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// Of what kind it is.
    pub fault: Fault,
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
    /// Of what kind the worst finding is; none where nothing was found.
    pub fault: Option<Fault>,
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

//! Every number tool with its inputs, ready for a screen: what is asked, in
//! which unit and range; what comes out, step by step; or what is wrong, box
//! by box.

mod dose;
mod form;
mod instruments;
mod safety;
mod teeth;

pub use form::{Ask, Entries, Fault, Input};

use super::working::Working;
use catalogue::numbers::Numbers;

/// A number tool.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tool {
    /// Maximum dose and whole cartridges of one solution.
    Maximum,
    /// A second solution in the same sitting.
    Second,
    /// Per cent and ratio to milligrams.
    Contents,
    /// A tooth in three systems.
    Notation,
    /// When a tooth comes.
    Eruption,
    /// Black's formulas.
    Formula,
    /// A bur's short number.
    ShortBur,
    /// A bur's long number.
    LongBur,
    /// Root canal files.
    File,
    /// Needles by gauge.
    Needle,
    /// When a cycle is over.
    Cycle,
    /// Degrees in the other scale.
    Temperature,
    /// What a spore test decides.
    Spores,
    /// A reading against its limits.
    Reading,
    /// Powder and liquid.
    Proportion,
    /// Fluoride in a varnish.
    Fluoride,
    /// The date of a return visit.
    Recall,
}

impl Tool {
    /// All of them, in the order in which they are listed.
    pub const ALL: [Self; 17] = [
        Self::Maximum,
        Self::Second,
        Self::Contents,
        Self::Notation,
        Self::Eruption,
        Self::Formula,
        Self::ShortBur,
        Self::LongBur,
        Self::File,
        Self::Needle,
        Self::Cycle,
        Self::Temperature,
        Self::Spores,
        Self::Reading,
        Self::Proportion,
        Self::Fluoride,
        Self::Recall,
    ];

    /// Its id, for an address.
    pub const fn id(self) -> &'static str {
        self.texts().0
    }

    /// Its name.
    pub const fn name(self) -> &'static str {
        self.texts().1
    }

    /// What it is for, in a sentence.
    pub const fn purpose(self) -> &'static str {
        self.texts().2
    }

    /// The tool with this id.
    pub fn with_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|tool| tool.id() == id)
    }

    const fn texts(self) -> (&'static str, &'static str, &'static str) {
        match self {
            Self::Maximum => (
                "cartridges",
                "Whole cartridges",
                "How many whole cartridges a named rule allows, by the drug and by the vasoconstrictor.",
            ),
            Self::Second => (
                "second-solution",
                "A second solution",
                "How many cartridges are left after another solution.",
            ),
            Self::Contents => (
                "milligrams",
                "Milligrams in a cartridge",
                "From per cent and ratio to milligrams.",
            ),
            Self::Notation => (
                "tooth",
                "A tooth in three systems",
                "FDI, Universal and Palmer, with primary teeth.",
            ),
            Self::Eruption => (
                "eruption",
                "When a tooth comes",
                "An age held against the chart.",
            ),
            Self::Formula => (
                "black",
                "Black's formula",
                "What the three or four numbers on a handle say.",
            ),
            Self::ShortBur => (
                "bur",
                "A bur's short number",
                "Shape and diameter of a bur.",
            ),
            Self::LongBur => (
                "bur-fifteen",
                "A bur's fifteen digits",
                "Material, shank, shape, grit and diameter.",
            ),
            Self::File => (
                "file",
                "A root canal file",
                "Its diameter at the tip and further up, and its colour.",
            ),
            Self::Needle => ("needle", "A needle's gauge", "Its diameter and its colour."),
            Self::Cycle => (
                "cycle",
                "When a cycle is over",
                "From the time the temperature is reached to the end of drying.",
            ),
            Self::Temperature => (
                "degrees",
                "Degrees in the other scale",
                "Celsius and Fahrenheit.",
            ),
            Self::Spores => (
                "spore-test",
                "What a spore test decides",
                "What is done with the load and the steriliser.",
            ),
            Self::Reading => (
                "reading",
                "A reading against its limit",
                "Water of a unit, nitrous oxide in a room.",
            ),
            Self::Proportion => (
                "proportion",
                "Powder and water",
                "How much liquid so much powder takes.",
            ),
            Self::Fluoride => (
                "fluoride",
                "Fluoride in a varnish",
                "From per cent of the salt to parts in a million.",
            ),
            Self::Recall => (
                "recall",
                "The date of a return visit",
                "A date and an interval.",
            ),
        }
    }

    /// What it asks for.
    pub fn inputs(self, numbers: &Numbers) -> Vec<Input> {
        match self {
            Self::Maximum | Self::Second | Self::Contents => dose::inputs(self, numbers),
            Self::Notation | Self::Eruption => teeth::inputs(self),
            Self::Formula | Self::ShortBur | Self::LongBur | Self::File | Self::Needle => {
                instruments::inputs(self, numbers)
            }
            _ => safety::inputs(self, numbers),
        }
    }

    /// What comes out.
    ///
    /// # Errors
    /// What is wrong with each input; nothing is worked out then.
    pub fn work(self, numbers: &Numbers, entries: &Entries) -> Result<Working, Vec<Fault>> {
        match self {
            Self::Maximum | Self::Second | Self::Contents => dose::work(self, numbers, entries),
            Self::Notation | Self::Eruption => teeth::work(self, numbers, entries),
            Self::Formula | Self::ShortBur | Self::LongBur | Self::File | Self::Needle => {
                instruments::work(self, numbers, entries)
            }
            _ => safety::work(self, numbers, entries),
        }
    }
}

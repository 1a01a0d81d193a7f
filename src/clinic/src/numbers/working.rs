//! A number that was worked out: step by step, with its sources, ready to be shown.

use super::{exact::Exact, unit::Quantity};
use catalogue::{Catalogue, ids::SourceId};

/// What stands beside every dose.
pub const DOSE_FRAME: &str = "For checking a student's arithmetic, never a patient's care: the \
     dentist chooses the drug and the dose, and the label of the product in hand comes first.";

/// One step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// What is found: `By weight`.
    pub what: String,
    /// How: `weight × mg for each kg`; empty where nothing is reckoned.
    pub formula: String,
    /// With its numbers and units: `70 kg × 7 mg/kg = 490 mg`.
    pub numbers: String,
    /// Where a figure in it is from.
    pub sources: Vec<SourceId>,
}

/// What another source would say.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Other {
    /// Whose rule: `the Canadian table`.
    pub rule: String,
    /// What it comes to: `8 whole cartridges`.
    pub result: String,
    /// Where it is from.
    pub sources: Vec<SourceId>,
}

/// A number, worked out.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Working {
    /// The steps, in order.
    pub lines: Vec<Line>,
    /// What comes out, in words: `11 whole cartridges`.
    pub result: String,
    /// The same as a quantity, where it is one.
    pub value: Option<Quantity>,
    /// What to heed, in sentences.
    pub cautions: Vec<String>,
    /// Where other named rules come to something else.
    pub others: Vec<Other>,
    /// The frame that has to stand beside it; every dose has one.
    pub frame: Option<&'static str>,
    /// Everything it rests on, each once.
    pub sources: Vec<SourceId>,
}

impl Working {
    /// A dose, with nothing worked out yet.
    pub(super) fn dose() -> Self {
        Self {
            frame: Some(DOSE_FRAME),
            ..Self::default()
        }
    }

    /// Adds a step.
    pub(super) fn line(&mut self, what: &str, formula: &str, numbers: String, from: &[SourceId]) {
        self.rest_on(from);
        self.lines.push(Line {
            what: what.into(),
            formula: formula.into(),
            numbers,
            sources: from.to_vec(),
        });
    }

    /// Adds a step that follows by calculation alone.
    pub(super) fn reckon(&mut self, what: &str, formula: &str, numbers: String) {
        self.line(what, formula, numbers, &[SourceId::from("arithmetic")]);
    }

    /// Adds a caution, once, unless it is empty.
    pub(super) fn heed(&mut self, caution: impl Into<String>) {
        let caution = caution.into();
        if !caution.is_empty() && !self.cautions.contains(&caution) {
            self.cautions.push(caution);
        }
    }

    /// Adds sources, each once.
    pub(super) fn rest_on(&mut self, sources: &[SourceId]) {
        for source in sources {
            if !self.sources.contains(source) {
                self.sources.push(source.clone());
            }
        }
    }

    /// Sets what comes out.
    pub(super) fn comes_to(&mut self, result: impl Into<String>, value: Option<Quantity>) {
        self.result = result.into();
        self.value = value;
    }

    /// Whether a source behind it was given from memory.
    pub fn from_memory(&self, catalogue: &Catalogue) -> bool {
        self.sources.iter().any(|id| {
            catalogue
                .source(id)
                .is_some_and(|s| s.reading == catalogue::sources::Reading::FromMemory)
        })
    }
}

/// `1 whole cartridge`, `11 whole cartridges`.
pub(super) fn whole_cartridges(count: u32) -> String {
    let s = if count == 1 { "" } else { "s" };
    format!("{count} whole cartridge{s}")
}

/// A number and its unit: `0.018 mg`.
pub(super) fn with_unit(value: Exact, unit: &str) -> String {
    format!("{} {unit}", value.text(5))
}

//! Exercises in working numbers out, without end: each drawn from the facts
//! of the catalogue by an index or a seed, answered by the same working that
//! the tools show, graded through the same entries.
//!
//! A family has a fixed number of exercises, and each index is another one.
//! The same index or seed gives the same exercise as long as the facts stay.

mod answer;
mod cartridges;
mod dates;
mod dose;
mod draw;
mod grade;
mod instruments;
mod problem;
mod proportions;
mod safety;
mod teeth;

pub use answer::{Answer, Entered, Slip};
pub use grade::{Grade, grade};
pub use problem::Problem;

use super::working::Working;
use crate::{Clinic, case::Seed};
use catalogue::{ids::CompetencyId, numbers::Numbers};
use draw::Draw;

/// A family of exercises.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Family {
    /// Per cent to milligrams.
    Milligrams,
    /// Ratio to milligrams of vasoconstrictor.
    Vasoconstrictor,
    /// Pounds to kilograms.
    Pounds,
    /// The most of a drug by weight.
    DrugMaximum,
    /// Whole cartridges by both limits.
    Cartridges,
    /// Whole cartridges with heart disease.
    HeartDisease,
    /// Whole cartridges for a child.
    Child,
    /// What is left for a second solution.
    SecondSolution,
    /// A tooth from one system to another.
    Notation,
    /// When a tooth comes.
    Eruption,
    /// Black's formulas.
    Formula,
    /// Short bur numbers.
    ShortBur,
    /// Long bur numbers.
    LongBur,
    /// The diameter of a file.
    File,
    /// Degrees in the other scale.
    Temperature,
    /// When a cycle is over.
    Cycle,
    /// What a spore test decides.
    Spores,
    /// A reading against its limit.
    Reading,
    /// Water to powder.
    Proportion,
    /// The date of a return visit.
    Recall,
}

impl Family {
    /// All of them.
    pub const ALL: [Self; 20] = [
        Self::Milligrams,
        Self::Vasoconstrictor,
        Self::Pounds,
        Self::DrugMaximum,
        Self::Cartridges,
        Self::HeartDisease,
        Self::Child,
        Self::SecondSolution,
        Self::Notation,
        Self::Eruption,
        Self::Formula,
        Self::ShortBur,
        Self::LongBur,
        Self::File,
        Self::Temperature,
        Self::Cycle,
        Self::Spores,
        Self::Reading,
        Self::Proportion,
        Self::Recall,
    ];

    /// Its id, for an address and a record.
    pub const fn id(self) -> &'static str {
        self.texts().0
    }

    /// Its name.
    pub const fn name(self) -> &'static str {
        self.texts().1
    }

    /// The family with this id.
    pub fn with_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|family| family.id() == id)
    }

    /// The competency it shows.
    pub fn competency(self) -> CompetencyId {
        self.texts().2.into()
    }

    const fn texts(self) -> (&'static str, &'static str, &'static str) {
        match self {
            Self::Milligrams => ("milligrams", "Per cent to milligrams", "anaesthesia"),
            Self::Vasoconstrictor => ("vasoconstrictor", "Ratio to milligrams", "anaesthesia"),
            Self::Pounds => ("pounds", "Pounds to kilograms", "anaesthesia"),
            Self::DrugMaximum => ("drug-maximum", "The most of a drug", "anaesthesia"),
            Self::Cartridges => ("cartridges", "Whole cartridges", "anaesthesia"),
            Self::HeartDisease => (
                "heart-disease",
                "Cartridges with heart disease",
                "anaesthesia",
            ),
            Self::Child => ("child", "Cartridges for a child", "anaesthesia"),
            Self::SecondSolution => ("second-solution", "A second solution", "anaesthesia"),
            Self::Notation => ("notation", "A tooth in another system", "chairside"),
            Self::Eruption => ("eruption", "When a tooth comes", "patient-care"),
            Self::Formula => ("formula", "Black's formulas", "tray-set-ups"),
            Self::ShortBur => ("short-bur", "Short bur numbers", "tray-set-ups"),
            Self::LongBur => ("long-bur", "Long bur numbers", "tray-set-ups"),
            Self::File => ("file", "Diameters of files", "tray-set-ups"),
            Self::Temperature => (
                "temperature",
                "Degrees in the other scale",
                "infection-control",
            ),
            Self::Cycle => ("cycle", "When a cycle is over", "infection-control"),
            Self::Spores => ("spores", "What a spore test decides", "infection-control"),
            Self::Reading => ("reading", "Readings and limits", "infection-control"),
            Self::Proportion => ("proportion", "Water to powder", "mixing"),
            Self::Recall => ("recall", "Dates of return visits", "patient-care"),
        }
    }

    fn draft(self, numbers: &Numbers, draw: &mut Draw) -> Option<Draft> {
        match self {
            Self::Milligrams => dose::milligrams(numbers, draw),
            Self::Vasoconstrictor => dose::vasoconstrictor(numbers, draw),
            Self::Pounds => dose::pounds(draw),
            Self::DrugMaximum => dose::drug_maximum(numbers, draw),
            Self::Cartridges => cartridges::cartridges(numbers, draw),
            Self::HeartDisease => cartridges::heart_disease(numbers, draw),
            Self::Child => cartridges::child(numbers, draw),
            Self::SecondSolution => cartridges::second(numbers, draw),
            Self::Notation => teeth::notation(draw),
            Self::Eruption => teeth::eruptions(numbers, draw),
            Self::Formula => instruments::formula(numbers, draw),
            Self::ShortBur => instruments::short_bur(numbers, draw),
            Self::LongBur => instruments::long_bur(numbers, draw),
            Self::File => instruments::file(numbers, draw),
            Self::Temperature => safety::temperature(draw),
            Self::Cycle => safety::cycle(numbers, draw),
            Self::Spores => safety::spores(numbers, draw),
            Self::Reading => safety::reading(numbers, draw),
            Self::Proportion => proportions::powder(numbers, draw),
            Self::Recall => dates::recall(draw),
        }
    }

    /// How many exercises it has with these facts.
    pub fn count(self, clinic: &Clinic) -> u64 {
        let mut draw = Draw::new(0);
        match self.draft(&clinic.catalogue().numbers, &mut draw) {
            Some(_) => draw.size(),
            None => 0,
        }
    }
}

/// What a family makes: an exercise without its address.
struct Draft {
    stem: String,
    answer: Answer,
    working: Working,
    slips: Vec<Slip>,
    /// 1 to 3.
    difficulty: u8,
    seconds: u32,
}

/// An exercise.
#[derive(Clone, Debug, PartialEq)]
pub struct Exercise {
    /// Its family.
    pub family: Family,
    /// Its index in the family.
    pub index: u64,
    /// What is asked, with every figure that is not to be known by heart.
    pub stem: String,
    /// The answer, computed.
    pub answer: Answer,
    /// The way to it, with its sources.
    pub working: Working,
    /// Wrong results that are common, with what causes them.
    pub slips: Vec<Slip>,
    /// The competency it shows.
    pub competency: CompetencyId,
    /// From 1, one step, to 3, several with a trap.
    pub difficulty: u8,
    /// How long it usually takes by hand, in seconds: our own estimate.
    pub seconds: u32,
}

/// The slips that are wrong and differ from one another, in their order.
fn apart(answer: &Answer, from: Vec<Slip>) -> Vec<Slip> {
    let mut slips: Vec<Slip> = Vec::new();
    for slip in from {
        let known = slips
            .iter()
            .any(|known| answer.same(&known.entered, &slip.entered));
        if !known && !answer.accepts(&slip.entered) {
            slips.push(slip);
        }
    }
    slips
}

/// The exercise at an index of its family; indices start again behind the last.
/// None where the facts that the family needs are missing.
pub fn exercise_at(clinic: &Clinic, family: Family, index: u64) -> Option<Exercise> {
    let count = family.count(clinic);
    let index = index.checked_rem(count)?;
    let draft = family.draft(&clinic.catalogue().numbers, &mut Draw::new(index))?;
    let slips = apart(&draft.answer, draft.slips);
    Some(Exercise {
        family,
        index,
        stem: draft.stem,
        answer: draft.answer,
        working: draft.working,
        slips,
        competency: family.competency(),
        difficulty: draft.difficulty,
        seconds: draft.seconds,
    })
}

/// The exercise that a seed draws from a family.
pub fn exercise(clinic: &Clinic, family: Family, seed: u64) -> Option<Exercise> {
    let count = usize::try_from(family.count(clinic)).ok()?;
    let index = Seed::new(seed).below(count);
    exercise_at(clinic, family, index as u64)
}

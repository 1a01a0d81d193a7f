//! What measurement has to know of a question, whoever wrote it: competency,
//! family, difficulty, time, and which questions give each other away.

use crate::numeric::hash;
use std::{
    collections::{BTreeMap, HashMap},
    fmt,
};

/// How demanding a question is by its making, before anyone has answered it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// Known after one reading.
    Basic,
    /// What the work rests on.
    Core,
    /// Puts several facts together.
    Demanding,
}

/// How hard a question is on the Rasch scale, in logits, and how surely that is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Difficulty {
    /// The ability at which half of all students are right.
    pub mean: f64,
    /// The standard deviation of `mean`.
    pub sd: f64,
}

impl Level {
    /// The difficulty that a level stands for until answers are counted:
    /// one logit from level to level, known to 0.7.
    pub fn difficulty(self) -> Difficulty {
        let mean = match self {
            Self::Basic => -1.0,
            Self::Core => 0.0,
            Self::Demanding => 1.0,
        };
        Difficulty { mean, sd: 0.7 }
    }
}

/// A question as measurement sees it.
#[derive(Clone, Debug, PartialEq)]
pub struct Item {
    /// Its id, stable over content edits that leave the fact as it is.
    pub id: String,
    /// The competency it belongs to.
    pub competency: String,
    /// The family it was written by; two of one family in a row make dull reading.
    pub family: String,
    /// How hard it is.
    pub difficulty: Difficulty,
    /// How long an answer usually takes, in seconds.
    pub seconds: u32,
    /// The chance of being right by guessing: one over the number of options
    /// where one is chosen, nothing where a guess hardly helps.
    pub guess: f64,
    /// The procedures it teaches, by id; new matter follows the order in which
    /// procedures are learnt.
    pub procedures: Vec<String>,
    /// Groups of questions that give each other away: same stem, or one clues
    /// the other. No form takes two of one group.
    pub enemies: Vec<String>,
}

/// One competency's part of the blueprint.
#[derive(Clone, Debug, PartialEq)]
pub struct Share {
    /// The id of the competency.
    pub id: String,
    /// Its name, as on screen.
    pub name: String,
    /// Its weight; only proportions matter.
    pub weight: f64,
}

/// The competencies with their weights, in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Blueprint(pub Vec<Share>);

impl Blueprint {
    /// The blueprint of a catalogue.
    pub fn of(competencies: &[catalogue::competencies::Competency]) -> Self {
        let share = |c: &catalogue::competencies::Competency| Share {
            id: c.id.to_string(),
            name: c.name.clone(),
            weight: f64::from(c.weight),
        };
        Self(competencies.iter().map(share).collect())
    }

    /// The weights, in order.
    pub fn weights(&self) -> Vec<f64> {
        self.0.iter().map(|share| share.weight).collect()
    }

    /// Which competency has this id, counted from 0.
    pub fn place(&self, id: &str) -> Option<usize> {
        self.0.iter().position(|share| share.id == id)
    }
}

/// What is wrong with a list of questions.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Flaw {
    /// Two questions have one id.
    Twice {
        /// The id.
        id: String,
    },
    /// A question names a competency that the blueprint does not have.
    NoCompetency {
        /// The id of the question.
        id: String,
        /// What it names.
        competency: String,
    },
}

impl fmt::Display for Flaw {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Twice { id } => write!(
                f,
                "Two questions have the id {id}; the second is left out. Give it an id of its own."
            ),
            Self::NoCompetency { id, competency } => write!(
                f,
                "The question {id} names the competency {competency}, which the blueprint does not \
                 have; the question is left out. Name one of the blueprint's."
            ),
        }
    }
}

/// The difficulties of some questions, each once, with how many have it.
#[derive(Clone, Debug, Default)]
pub(crate) struct Spread(BTreeMap<(u64, u64), usize>);

impl Spread {
    fn add(&mut self, difficulty: Difficulty) {
        let key = (difficulty.mean.to_bits(), difficulty.sd.to_bits());
        *self.0.entry(key).or_default() += 1;
    }

    /// Each difficulty, with how many questions have it.
    pub(crate) fn difficulties(&self) -> impl Iterator<Item = (Difficulty, usize)> {
        self.0.iter().map(|(&(mean, sd), &count)| {
            let (mean, sd) = (f64::from_bits(mean), f64::from_bits(sd));
            (Difficulty { mean, sd }, count)
        })
    }
}

/// All questions, with the blueprint they serve; found by id at once.
#[derive(Clone, Debug, Default)]
pub struct Bank {
    blueprint: Blueprint,
    items: Vec<Item>,
    competency: Vec<usize>,
    hashes: Vec<u64>,
    places: HashMap<String, usize>,
    spreads: Vec<Spread>,
}

impl Bank {
    /// A bank of these questions, and what was left out of it with the reason.
    pub fn new(blueprint: Blueprint, items: impl IntoIterator<Item = Item>) -> (Self, Vec<Flaw>) {
        let mut bank = Self {
            spreads: vec![Spread::default(); blueprint.0.len()],
            blueprint,
            ..Self::default()
        };
        let mut flaws = Vec::new();
        for item in items {
            if let Err(flaw) = bank.add(item) {
                flaws.push(flaw);
            }
        }
        (bank, flaws)
    }

    fn add(&mut self, item: Item) -> Result<(), Flaw> {
        if self.places.contains_key(&item.id) {
            return Err(Flaw::Twice { id: item.id });
        }
        let Some(competency) = self.blueprint.place(&item.competency) else {
            return Err(Flaw::NoCompetency {
                id: item.id,
                competency: item.competency,
            });
        };
        self.places.insert(item.id.clone(), self.items.len());
        self.competency.push(competency);
        self.hashes.push(hash(&item.id));
        self.spreads[competency].add(item.difficulty);
        self.items.push(item);
        Ok(())
    }

    /// The blueprint.
    pub fn blueprint(&self) -> &Blueprint {
        &self.blueprint
    }

    /// The questions; a question's place in this list names it within the bank.
    pub fn items(&self) -> &[Item] {
        &self.items
    }

    /// Where the question with this id is; nothing if its fact has left the catalogue.
    pub fn place(&self, id: &str) -> Option<usize> {
        self.places.get(id).copied()
    }

    /// The competency of the question at `place`, as a place in the blueprint.
    ///
    /// # Panics
    /// If `place` is not from this bank.
    pub fn competency(&self, place: usize) -> usize {
        self.competency[place]
    }

    /// The hash of the id of the question at `place`, see [`hash`].
    ///
    /// # Panics
    /// If `place` is not from this bank.
    pub fn hash(&self, place: usize) -> u64 {
        self.hashes[place]
    }

    /// The difficulties of each competency's questions, in the order of the blueprint.
    pub(crate) fn spreads(&self) -> &[Spread] {
        &self.spreads
    }
}

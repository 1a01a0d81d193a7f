//! What a form is asked to be, what comes of it, and why there may be none.

use std::fmt;

/// What a form is for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Mode {
    /// Travels in a code: knows nothing of the student, and every device builds
    /// the same one. Made alike to other forms.
    Shared,
    /// For one student: what was shown least comes first. Made alike to other forms.
    Personal {
        /// How often each question was shown, by place in the bank.
        showings: Vec<u32>,
        /// The questions of the last two forms, by place; left out if the bank allows.
        recent: Vec<usize>,
    },
    /// The most information at the cut, whatever the seed.
    Sharpest,
    /// What was shown least, then the most information.
    Freshest {
        /// How often each question was shown, by place in the bank.
        showings: Vec<u32>,
    },
}

/// A form that is wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct Request {
    /// How many questions.
    pub size: usize,
    /// The most seconds that all together may usually take; nothing for no limit.
    pub seconds: Option<u32>,
    /// The ability at which it should tell best, in logits.
    pub cut: f64,
    /// The seed.
    pub seed: u64,
    /// What it is for.
    pub mode: Mode,
}

/// A form.
#[derive(Clone, Debug, PartialEq)]
pub struct Form {
    /// Its questions in the order in which they are put, as places in the bank.
    pub places: Vec<usize>,
    /// How many of each competency, in the order of the blueprint.
    pub quotas: Vec<usize>,
    /// How the weights were rounded, in a sentence.
    pub rounding: String,
    /// How long all together usually take, in seconds.
    pub seconds: u32,
    /// The mean difficulty, in logits.
    pub difficulty: f64,
    /// The information at the cut.
    pub information: f64,
    /// Whether it is as hard and tells as well as other forms to this blueprint,
    /// within what makes any two of them parallel.
    pub alike: bool,
    /// What could not be had, in sentences.
    pub remarks: Vec<String>,
}

/// Why there is no such form.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unfit {
    /// Nothing was asked for.
    Empty,
    /// A competency has too few questions.
    TooFew {
        /// Its name.
        competency: String,
        /// How many there are.
        has: usize,
        /// How many are needed.
        needs: usize,
    },
    /// No form without two questions that give each other away was found.
    Clash,
    /// No form within the time was found.
    TooLong {
        /// The seconds that the best one takes.
        takes: u32,
        /// The limit.
        limit: u32,
    },
}

impl fmt::Display for Unfit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str(
                "A form of no questions was asked for, or the blueprint has no weights. Ask for at \
                 least one question.",
            ),
            Self::TooFew {
                competency,
                has,
                needs,
            } => write!(
                f,
                "The form needs {needs} questions on {}, and there are {has}. Ask for a shorter form.",
                competency.to_lowercase()
            ),
            Self::Clash => f.write_str(
                "No form could be put together without two questions that give each other away. \
                 Ask for a shorter form.",
            ),
            Self::TooLong { takes, limit } => write!(
                f,
                "The quickest form found takes {} minutes, and the limit is {}. Allow more time or \
                 ask for a shorter form.",
                takes.div_ceil(60),
                limit / 60
            ),
        }
    }
}

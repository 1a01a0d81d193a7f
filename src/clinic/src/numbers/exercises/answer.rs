//! What is accepted, what was entered, and what goes wrong commonly.

use crate::{
    numbers::{
        civil::Civil,
        entry::Clock,
        exact::Exact,
        teeth::{System, written},
        unit::Unit,
    },
    tooth::Tooth,
};

/// The answer to an exercise.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Answer {
    /// A number.
    Number {
        /// The number, exact.
        value: Exact,
        /// The unit that is asked for; others of its kind are understood.
        unit: Unit,
        /// How far off is still right, in that unit: what rounding may do.
        tolerance: Exact,
    },
    /// Any number from a range, both ends included.
    Between {
        /// The least.
        from: Exact,
        /// The most.
        to: Exact,
        /// The unit that is asked for.
        unit: Unit,
        /// How far outside is still right: what rounding and a measuring cup may do.
        tolerance: Exact,
    },
    /// One of these.
    Choice {
        /// The options, in a fixed order.
        options: Vec<String>,
        /// Which is right.
        right: usize,
    },
    /// A tooth in a system.
    Tooth {
        /// The tooth.
        tooth: Tooth,
        /// The system that is asked for.
        system: System,
    },
    /// A time of day.
    Time(Clock),
    /// A date.
    Date(Civil),
    /// Digits as they are written, such as the last three of a bur number.
    Digits(String),
}

/// An entry, understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Entered {
    /// A number in the unit that is asked for.
    Number(Exact),
    /// An option, by its place.
    Option(usize),
    /// A tooth.
    Tooth(Tooth),
    /// A time of day.
    Time(Clock),
    /// A date.
    Date(Civil),
    /// Digits.
    Digits(String),
}

/// A common wrong result, and what causes it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slip {
    /// The result.
    pub entered: Entered,
    /// What was done: `The ten that turns per cent into mg/mL was forgotten.`
    pub because: String,
}

impl Slip {
    pub(super) fn number(value: Exact, because: &str) -> Self {
        Self {
            entered: Entered::Number(value),
            because: because.into(),
        }
    }
}

impl Answer {
    /// A whole number of cartridges.
    pub(super) fn cartridges(count: u32) -> Self {
        Self::Number {
            value: Exact::from(count),
            unit: Unit::Cartridge,
            tolerance: Exact::ZERO,
        }
    }

    /// Whether an entry is right.
    pub fn accepts(&self, entered: &Entered) -> bool {
        match (self, entered) {
            (
                Self::Number {
                    value, tolerance, ..
                },
                Entered::Number(number),
            ) => (*number - *value).size() <= *tolerance,
            (
                Self::Between {
                    from,
                    to,
                    tolerance,
                    ..
                },
                Entered::Number(number),
            ) => *number >= *from - *tolerance && *number <= *to + *tolerance,
            (Self::Choice { right, .. }, Entered::Option(at)) => at == right,
            (Self::Tooth { tooth, .. }, Entered::Tooth(entered)) => tooth == entered,
            (Self::Time(time), Entered::Time(entered)) => time == entered,
            (Self::Date(date), Entered::Date(entered)) => date == entered,
            (Self::Digits(digits), Entered::Digits(entered)) => digits == entered,
            _ => false,
        }
    }

    /// Whether two entries are the same within what rounding may do.
    pub(super) fn same(&self, one: &Entered, other: &Entered) -> bool {
        match (self, one, other) {
            (Self::Number { tolerance, .. }, Entered::Number(a), Entered::Number(b)) => {
                // A wrong result is rounded like a right one.
                (*a - *b).size() <= (*tolerance).max(a.size() * Exact::of(1, 200))
            }
            (Self::Between { .. }, Entered::Number(a), Entered::Number(b)) => {
                (*a - *b).size() <= Exact::of(1, 20)
            }
            _ => one == other,
        }
    }

    /// The answer in words.
    pub fn words(&self) -> String {
        match self {
            Self::Number {
                value,
                unit: Unit::Cartridge,
                ..
            } => crate::numbers::working::whole_cartridges(value.count()),
            Self::Number {
                value,
                unit,
                tolerance,
            } => {
                let places = if *tolerance > Exact::ZERO { 1 } else { 6 };
                format!("{} {}", value.text(places), unit.sign())
            }
            Self::Between { from, to, unit, .. } if from == to => {
                format!("{} {}", from.text(1), unit.sign())
            }
            Self::Between { from, to, unit, .. } => {
                format!("{} to {} {}", from.text(1), to.text(1), unit.sign())
            }
            Self::Choice { options, right } => options.get(*right).cloned().unwrap_or_default(),
            Self::Tooth { tooth, system } => {
                format!("{} ({})", written(*tooth, *system), tooth.name())
            }
            Self::Time(time) => time.text(),
            Self::Date(date) => date.text(),
            Self::Digits(digits) => digits.clone(),
        }
    }

    /// An entry in words.
    pub(super) fn told(&self, entered: &Entered) -> String {
        match (self, entered) {
            (Self::Number { unit, .. } | Self::Between { unit, .. }, Entered::Number(value)) => {
                format!("{} {}", value.text(8), unit.sign())
            }
            (Self::Choice { options, .. }, Entered::Option(at)) => {
                options.get(*at).cloned().unwrap_or_default()
            }
            (Self::Tooth { system, .. }, Entered::Tooth(tooth)) => {
                format!("{} ({})", written(*tooth, *system), tooth.name())
            }
            (_, Entered::Time(time)) => time.text(),
            (_, Entered::Date(date)) => date.text(),
            (_, Entered::Digits(digits)) => digits.clone(),
            (_, Entered::Number(value)) => value.text(5),
            _ => String::new(),
        }
    }

    /// Units that an entry may carry: shown beside the box; none for choices and texts.
    pub fn unit(&self) -> Option<Unit> {
        match self {
            Self::Number { unit, .. } | Self::Between { unit, .. } => Some(*unit),
            _ => None,
        }
    }
}

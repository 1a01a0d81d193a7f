//! What is worth a look at an item, once a class is large enough to say so.

use super::item::ItemReport;
use crate::task::Way;
use core::fmt;

/// Something about an item.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Flag {
    /// Nearly every seat has it right.
    VeryEasy,
    /// So few have it right that they could have guessed.
    NearChance,
    /// Good seats have it wrong, and take one of the other options.
    CheckFacts(String),
    /// It hardly tells good seats from others.
    LowR,
    /// Hardly anybody takes a wrong option.
    NotWorking(String),
    /// Good seats take a wrong option.
    Ambiguous(String),
    /// Many left it open.
    Blanks,
}

/// The seats from which an option that nobody takes means something.
const SEATS_FOR_OPTIONS: u32 = 40;

impl Flag {
    /// The flags of an item, with the options that compete where one is the whole answer.
    pub fn of(item: &ItemReport) -> Vec<Self> {
        let mut flags = Vec::new();
        if item.p > 0.95 {
            flags.push(Self::VeryEasy);
        }
        if item.p < 0.25 {
            flags.push(Self::NearChance);
        }
        // A kind of outcome was not offered, and is no worse for being rare.
        let compete = item.one && item.way == Way::Options;
        let wrong = || item.options.iter().filter(|o| compete && !o.fits);
        let draws = wrong().find(|o| o.r.is_some_and(|r| r >= 0.15));
        match (item.r, draws) {
            (Some(r), Some(option)) if r < 0.0 => {
                flags.push(Self::CheckFacts(option.label.to_string()));
            }
            (Some(r), _) if r < 0.10 => flags.push(Self::LowR),
            _ => {}
        }
        for option in wrong() {
            if option.share < 0.05 && item.asked >= SEATS_FOR_OPTIONS {
                flags.push(Self::NotWorking(option.label.to_string()));
            }
            if option.r.is_some_and(|r| r > 0.05) {
                flags.push(Self::Ambiguous(option.label.to_string()));
            }
        }
        if f64::from(item.blank) > 0.10 * f64::from(item.asked) {
            flags.push(Self::Blanks);
        }
        flags
    }
}

impl fmt::Display for Flag {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::VeryEasy => {
                f.write_str("Nearly everybody has this right: it tells nobody apart.")
            }
            Self::NearChance => {
                f.write_str("So few have this right that guessing would do as well.")
            }
            Self::CheckFacts(option) => write!(
                f,
                "Seats that do well elsewhere get this wrong and take '{option}'. Check the facts behind it, and how it was taught."
            ),
            Self::LowR => {
                f.write_str("This hardly goes with the other items. Read its wording again.")
            }
            Self::NotWorking(option) => {
                write!(f, "Hardly anybody takes '{option}': it misleads no one.")
            }
            Self::Ambiguous(option) => {
                write!(
                    f,
                    "Seats that do well elsewhere take '{option}': it may be read as right."
                )
            }
            Self::Blanks => {
                f.write_str("Many left this open: too little time, or unclear wording.")
            }
        }
    }
}

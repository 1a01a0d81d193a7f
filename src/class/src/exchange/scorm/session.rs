//! What a running package tells the school's system. The limits of the
//! standard are kept here, as some systems let too much pass and lose it.

use super::interaction::Interaction;
use core::fmt;

/// The most letters of what is kept between two sittings.
pub const MOST_SUSPENDED: usize = 4096;

/// How far the student is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Status {
    /// Begun.
    Incomplete,
    /// Done, with enough right.
    Passed,
    /// Done, with too few right.
    Failed,
}

/// A sitting, as far as the system is told of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Session {
    /// How far the student is.
    pub status: Status,
    /// Whether the system has it as passed already: that stays, and its score.
    pub passed_before: bool,
    /// How many items are right.
    pub right: u32,
    /// Of how many.
    pub asked: u32,
    /// The seconds since the package was opened.
    pub seconds: u64,
    /// What the page needs to go on another time: plain letters.
    pub suspended: String,
    /// The number of interactions that the system has been told of before.
    pub told: usize,
    /// The interactions that are new.
    pub interactions: Vec<Interaction>,
}

/// Why a sitting cannot be told.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ScormError {
    /// What is to be kept is too long, by its letters.
    Suspended(usize),
    /// What is to be kept has a letter that systems lose.
    Letters,
    /// An id is empty, too long, or has letters that no id has.
    Id(String),
    /// An answer does not fit: too many options, or a place beyond the 36 that have a letter.
    Answer(String),
}

impl fmt::Display for ScormError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Suspended(letters) => write!(
                f,
                "The school's system keeps {MOST_SUSPENDED} letters between two sittings; this one has {letters}. Finish it in one sitting."
            ),
            Self::Letters => f.write_str("The school's system keeps plain letters only between two sittings. Finish it in one sitting."),
            Self::Id(id) => write!(f, "The school's system does not take this as the name of a question: {id}"),
            Self::Answer(id) => write!(f, "The school's system has no room for the answer to: {id}"),
        }
    }
}

impl core::error::Error for ScormError {}

impl Session {
    /// The names and values to set, in order.
    ///
    /// # Errors
    /// [`ScormError`] where the standard has no room for something.
    pub fn values(&self) -> Result<Vec<(String, String)>, ScormError> {
        let letters = self.suspended.chars().count();
        if letters > MOST_SUSPENDED {
            return Err(ScormError::Suspended(letters));
        }
        if !self.suspended.bytes().all(|b| (32..127).contains(&b)) {
            return Err(ScormError::Letters);
        }
        let status = match self.status {
            Status::Incomplete => "incomplete",
            Status::Passed => "passed",
            Status::Failed => "failed",
        };
        let exit = if self.status == Status::Incomplete {
            "suspend"
        } else {
            ""
        };
        let mut values = Vec::new();
        let mut set = |name: &str, value: String| values.push((name.to_owned(), value));
        if self.status == Status::Passed || !self.passed_before {
            set("cmi.core.lesson_status", status.to_owned());
            set("cmi.core.score.min", "0".into());
            set("cmi.core.score.max", "100".into());
            set("cmi.core.score.raw", self.score());
        }
        let (name, spent) = time(self.seconds);
        set(name, spent);
        set("cmi.suspend_data", self.suspended.clone());
        set("cmi.core.exit", exit.into());
        for (number, interaction) in (self.told..).zip(&self.interactions) {
            let named = |(part, value): (&str, String)| {
                (format!("cmi.interactions.{number}.{part}"), value)
            };
            values.extend(interaction.values()?.into_iter().map(named));
        }
        Ok(values)
    }

    /// Per cent right, with two digits after the point. What is left over is
    /// given up, so that a score below the pass mark never reads as the mark.
    fn score(&self) -> String {
        let right = u64::from(self.right.min(self.asked));
        let hundredths = (right * 10_000)
            .checked_div(u64::from(self.asked))
            .unwrap_or(0);
        format!("{}.{:02}", hundredths / 100, hundredths % 100)
    }
}

/// The name and value that say how long a sitting took, in seconds.
pub fn time(seconds: u64) -> (&'static str, String) {
    ("cmi.core.session_time", span(seconds))
}

/// `HHHH:MM:SS.SS`, up to the longest span that the form has.
pub(super) fn span(seconds: u64) -> String {
    let seconds = seconds.min(9999 * 3600 + 3599);
    format!(
        "{:04}:{:02}:{:02}.00",
        seconds / 3600,
        seconds / 60 % 60,
        seconds % 60
    )
}

#[cfg(test)]
mod tests;

//! Why a code is not taken: what is wrong with it, and what to do.

use core::fmt;

/// A check that a damaged code fails.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Check {
    /// It has letters that no code has.
    Letters,
    /// It is longer or shorter than it should be.
    Length,
    /// The last letter, which is worked out from the others, is not the one that should be there.
    Symbol,
    /// The checksum is not the one of what is written.
    Checksum,
    /// The checksum is right, and yet what is written makes no sense.
    Sense,
}

/// Why a code is not taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Refusal {
    /// It is damaged.
    Damaged(Check),
    /// It is no code of this kind at all.
    Foreign,
    /// It was made by a newer program, of this version.
    Newer(u8),
    /// It was made for another state of what is taught.
    OtherBank,
    /// It is larger than any such code can be.
    TooLarge,
}

impl Refusal {
    /// One word for it, to sort by.
    pub fn word(self) -> &'static str {
        match self {
            Self::Damaged(_) => "damaged",
            Self::Foreign => "foreign",
            Self::Newer(_) => "newer",
            Self::OtherBank => "other lessons",
            Self::TooLarge => "too large",
        }
    }
}

impl fmt::Display for Check {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Letters => "it has letters that no code has",
            Self::Length => "a part of it is missing, or there is too much of it",
            Self::Symbol => "the last letter does not go with the others",
            Self::Checksum => "its checksum does not go with what is written",
            Self::Sense => "what is written makes no sense",
        })
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Damaged(check) => write!(
                f,
                "This code is damaged: {check}. Copy or type it again, the whole of it."
            ),
            Self::Foreign => f.write_str(
                "This is not a code of this kind. Look whether the right one was copied.",
            ),
            Self::Newer(_) => f.write_str(
                "This code was made by a newer version of this page. Reload the page to get the newest version, then try again.",
            ),
            Self::OtherBank => f.write_str(
                "This code was made for another state of the lessons and cases than the one on this device. Reload both pages to get the newest version, and make the code again.",
            ),
            Self::TooLarge => f.write_str(
                "This is far larger than such a code can be. Look whether the right file was chosen.",
            ),
        }
    }
}

impl core::error::Error for Refusal {}

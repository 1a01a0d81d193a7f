//! The small values that events are made of.

use core::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de::Error};

use crate::event::Writer;

/// One run of study, by 64 random bits that the page draws when it begins.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct SittingId(pub u64);

impl SittingId {
    /// Reads a sitting as [`Display`](fmt::Display) shows it: sixteen
    /// lower-case hexadecimal digits. Anything else gives `None`.
    pub fn parse(text: &str) -> Option<Self> {
        Writer::parse(text).map(|bits| Self(bits.0))
    }
}

impl fmt::Display for SittingId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:016x}", self.0)
    }
}

// Text, not a number: many JSON readers lose the low bits of large numbers.
impl Serialize for SittingId {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for SittingId {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        Self::parse(&text).ok_or_else(|| D::Error::custom("not a sitting"))
    }
}

/// How an answer was judged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Verdict {
    /// The best answer, or one of several equally good.
    Right,
    /// Not the best, but defensible; no harm follows.
    Acceptable,
    /// Does not do the job.
    Wrong,
    /// Could harm the patient or the team.
    Unsafe,
}

impl Verdict {
    /// Every verdict, best first.
    pub const ALL: [Self; 4] = [Self::Right, Self::Acceptable, Self::Wrong, Self::Unsafe];
}

/// A share of full marks: a whole number from 0 to 100.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(transparent)]
pub struct PerCent(u8);

impl PerCent {
    /// Takes a number of hundredths; more than 100 counts as 100.
    pub fn of(hundredths: u8) -> Self {
        Self(hundredths.min(100))
    }

    /// The number, 0 to 100.
    pub fn get(self) -> u8 {
        self.0
    }
}

impl fmt::Display for PerCent {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} %", self.0)
    }
}

impl<'de> Deserialize<'de> for PerCent {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let hundredths = u8::deserialize(deserializer)?;
        if hundredths > 100 {
            return Err(D::Error::custom("more than 100 per cent"));
        }
        Ok(Self(hundredths))
    }
}

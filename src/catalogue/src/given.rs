//! What a case frame says of a finding: one value, a choice among several, or
//! a range to draw from. Written as one short text:
//! `lingers`, `brief | lingers`, `0.4 mm`, `0.6..1.4 mm`, `yes`, `yes | no`.

use crate::quantity::Milli;
use serde::{Deserialize, Serialize};

/// A finding as a frame gives it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub enum Given {
    /// One of these words (`yes` and `no` for a flag), each as likely.
    Words(Vec<String>),
    /// A number from a range, both ends included, in a unit.
    Number {
        /// The least.
        from: Milli,
        /// The most.
        to: Milli,
        /// The unit, such as `mm`.
        unit: String,
    },
}

impl TryFrom<String> for Given {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        if text.starts_with(|c: char| c.is_ascii_digit()) {
            let (range, unit) = text
                .rsplit_once(' ')
                .ok_or_else(|| format!("'{text}' lacks its unit, such as '{text} mm'"))?;
            let (from, to) = range.split_once("..").unwrap_or((range, range));
            let (from, to) = (Milli::parse(from)?, Milli::parse(to)?);
            if from > to {
                return Err(format!("the range '{range}' runs backwards"));
            }
            return Ok(Self::Number {
                from,
                to,
                unit: unit.into(),
            });
        }
        let words: Vec<String> = text.split('|').map(|w| w.trim().into()).collect();
        let plain =
            |w: &String| !w.is_empty() && w.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-');
        if words.iter().all(plain) {
            Ok(Self::Words(words))
        } else {
            Err(format!(
                "'{text}' is neither a word, words parted by '|', nor a number with its unit"
            ))
        }
    }
}

impl From<Given> for String {
    fn from(given: Given) -> Self {
        match given {
            Given::Words(words) => words.join(" | "),
            Given::Number { from, to, unit } if from == to => format!("{from} {unit}"),
            Given::Number { from, to, unit } => format!("{from}..{to} {unit}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_come_back_as_written() {
        for text in ["lingers", "brief | lingers", "0.4 mm", "0.6..1.4 mm", "yes"] {
            assert_eq!(
                String::from(Given::try_from(String::from(text)).unwrap()),
                text
            );
        }
        for text in ["", "a |", "0.4", "2..1 mm", "a b"] {
            assert!(Given::try_from(String::from(text)).is_err(), "{text}");
        }
    }
}

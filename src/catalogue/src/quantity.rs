//! Quantities. A decimal is kept as whole thousandths, so that comparing two
//! of them is exact and a packed catalogue is the same on every machine.

use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;

/// A number in thousandths of its unit: 0.5 mm is `Milli(500)`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Milli(pub i32);

impl Milli {
    /// Reads a plain decimal such as `0.5`, `-3` or `12.25`, with at most three decimals.
    ///
    /// # Errors
    /// A sentence that says what a number looks like.
    pub fn parse(text: &str) -> Result<Self, String> {
        let wrong =
            || format!("'{text}' is not a number like 12 or 0.5 with at most three decimals");
        let (negative, digits) = match text.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, text),
        };
        let (whole, part) = digits.split_once('.').unwrap_or((digits, ""));
        let plain = |s: &str| s.bytes().all(|b| b.is_ascii_digit());
        if whole.is_empty()
            || !plain(whole)
            || !plain(part)
            || part.len() > 3
            || digits.ends_with('.')
        {
            return Err(wrong());
        }
        let whole: i32 = whole.parse().map_err(|_| wrong())?;
        let part: i32 = format!("{part:0<3}").parse().map_err(|_| wrong())?;
        let value = whole
            .checked_mul(1000)
            .and_then(|w| w.checked_add(part))
            .ok_or_else(wrong)?;
        Ok(Self(if negative { -value } else { value }))
    }
}

impl fmt::Display for Milli {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let sign = if self.0 < 0 { "-" } else { "" };
        let whole = self.0.unsigned_abs() / 1000;
        let part = self.0.unsigned_abs() % 1000;
        if part == 0 {
            write!(f, "{sign}{whole}")
        } else {
            let digits = format!("{part:03}");
            write!(f, "{sign}{whole}.{}", digits.trim_end_matches('0'))
        }
    }
}

impl Serialize for Milli {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        if serializer.is_human_readable() {
            serializer.serialize_f64(f64::from(self.0) / 1000.0)
        } else {
            serializer.serialize_i32(self.0)
        }
    }
}

impl<'de> Deserialize<'de> for Milli {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Visitor;
        impl serde::de::Visitor<'_> for Visitor {
            type Value = Milli;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a number")
            }
            fn visit_i64<E: serde::de::Error>(self, v: i64) -> Result<Milli, E> {
                Milli::parse(&v.to_string()).map_err(E::custom)
            }
            fn visit_f64<E: serde::de::Error>(self, v: f64) -> Result<Milli, E> {
                Milli::parse(&v.to_string()).map_err(E::custom)
            }
        }
        if deserializer.is_human_readable() {
            deserializer.deserialize_any(Visitor)
        } else {
            i32::deserialize(deserializer).map(Milli)
        }
    }
}

/// A span of time or quantity with both ends included, written `[60, 90]`.
/// The unit is in the name of the field that holds it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "(u32, u32)", into = "(u32, u32)")]
pub struct Span {
    /// The least.
    pub from: u32,
    /// The most; never less than `from`.
    pub to: u32,
}

impl Span {
    /// Whether `value` lies in the span, ends included.
    pub fn contains(self, value: u32) -> bool {
        (self.from..=self.to).contains(&value)
    }

    /// The middle, rounded down.
    pub fn middle(self) -> u32 {
        self.from.midpoint(self.to)
    }
}

impl TryFrom<(u32, u32)> for Span {
    type Error = String;
    fn try_from((from, to): (u32, u32)) -> Result<Self, String> {
        if from <= to {
            Ok(Self { from, to })
        } else {
            Err(format!(
                "a span runs from the least to the most: [{to}, {from}]"
            ))
        }
    }
}

impl From<Span> for (u32, u32) {
    fn from(span: Span) -> Self {
        (span.from, span.to)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decimals_read_and_print_exactly() {
        for (text, milli) in [
            ("0", 0),
            ("0.5", 500),
            ("-3", -3000),
            ("12.25", 12250),
            ("0.005", 5),
        ] {
            assert_eq!(Milli::parse(text), Ok(Milli(milli)));
            assert_eq!(Milli(milli).to_string(), text);
        }
        for text in ["", ".5", "5.", "1e3", "0.0005", "9999999", "1,5", "--1"] {
            assert!(Milli::parse(text).is_err(), "{text}");
        }
    }

    #[test]
    fn a_span_never_runs_backwards() {
        assert!(Span::try_from((90, 60)).is_err());
        assert_eq!(Span::try_from((60, 90)).map(Span::middle), Ok(75));
    }
}

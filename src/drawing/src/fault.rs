//! What can be wrong with measurements, told as a sentence.

use std::fmt;

/// A measurement that cannot be drawn: which field, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The field, from the outside in: `end 1, tip, width`.
    pub field: String,
    /// What is wrong with it and what would be right.
    pub why: String,
}

impl Fault {
    pub(crate) fn new(field: &str, why: impl Into<String>) -> Self {
        Self {
            field: field.into(),
            why: why.into(),
        }
    }

    /// The same fault seen from the thing that holds the field.
    #[must_use]
    pub(crate) fn inside(self, holder: &str) -> Self {
        Self {
            field: [holder, ", ", &self.field].concat(),
            why: self.why,
        }
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.field)?;
        f.write_str(" ")?;
        f.write_str(&self.why)
    }
}

impl std::error::Error for Fault {}

/// Refuses what is not above 0 and at most `most`; `value` is in `unit`.
fn above_zero(field: &str, value: f32, most: f32, unit: &str) -> Result<(), Fault> {
    if value > 0.0 && value <= most {
        return Ok(());
    }
    Err(out_of_range(field, value, "above 0", most, unit))
}

fn out_of_range(field: &str, value: f32, low: &str, most: f32, unit: &str) -> Fault {
    let is = decimal(value, 100.0);
    let most = decimal(most, 100.0);
    Fault::new(
        field,
        [
            "is ",
            &is,
            unit,
            "; it must be ",
            low,
            " and at most ",
            &most,
            unit,
        ]
        .concat(),
    )
}

/// Refuses a length in millimetres that is not above 0 and at most `most`.
pub(crate) fn length(field: &str, value: f32, most: f32) -> Result<(), Fault> {
    above_zero(field, value, most, " mm")
}

/// Refuses a length in millimetres below 0 or above `most`; 0 means there is none of it.
pub(crate) fn length_or_none(field: &str, value: f32, most: f32) -> Result<(), Fault> {
    if (0.0..=most).contains(&value) {
        return Ok(());
    }
    Err(out_of_range(field, value, "at least 0", most, " mm"))
}

/// Refuses an angle in degrees beyond `most` either way.
pub(crate) fn angle(field: &str, value: f32, most: f32) -> Result<(), Fault> {
    if value.abs() <= most {
        return Ok(());
    }
    Err(out_of_range(
        field,
        value,
        "neither way above",
        most,
        " degrees",
    ))
}

/// A number in the fewest digits, rounded to a part of one (`parts` = 100: hundredths).
///
/// Our own, since the standard float formatting would weigh more than the whole of this file.
#[expect(
    clippy::cast_possible_truncation,
    reason = "clamped to what an i32 holds; not-a-number becomes 0"
)]
pub(crate) fn decimal(value: f32, parts: f32) -> String {
    let all = (value * parts).round().clamp(-2e9, 2e9) as i32;
    let parts = (parts as i32).max(1);
    let (whole, mut rest) = (all.abs() / parts, all.abs() % parts);
    let mut text = String::new();
    if all < 0 {
        text.push('-');
    }
    text.push_str(&whole.to_string());
    let mut unit = parts / 10;
    if rest > 0 {
        text.push('.');
    }
    while rest > 0 && unit > 0 {
        text.push(char::from(b'0' + u8::try_from(rest / unit).unwrap_or(0)));
        rest %= unit;
        unit /= 10;
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_take_the_fewest_digits() {
        for (value, text) in [
            (0.0, "0"),
            (1.5, "1.5"),
            (-0.05, "-0.05"),
            (12.0, "12"),
            (0.999, "1"),
            (165.25, "165.25"),
            (-0.001, "0"),
            (f32::NAN, "0"),
        ] {
            assert_eq!(decimal(value, 100.0), text);
        }
    }

    #[test]
    fn a_fault_names_the_field_and_the_limit() {
        let fault = length("width", -2.0, 8.0).unwrap_err().inside("tip");
        assert_eq!(
            fault.to_string(),
            "tip, width is -2 mm; it must be above 0 and at most 8 mm"
        );
        assert!(length("width", f32::NAN, 8.0).is_err());
        assert!(length_or_none("ball", 0.0, 8.0).is_ok());
    }
}

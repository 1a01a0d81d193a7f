//! Reading the ratio of a vasoconstrictor: one gram in so many millilitres.

use super::{Refusal, number, refuse};
use crate::numbers::exact::Exact;

/// The second number of a ratio: 100 000 for 1:100 000.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Dilution(pub u32);

/// What cartridges can hold, with room at both ends.
const LEAST: u32 = 10_000;
const MOST: u32 = 1_000_000;

impl Dilution {
    /// `1:100 000`.
    pub fn text(self) -> String {
        format!("1:{}", Exact::from(self.0).text(0))
    }

    /// Milligrams in a millilitre: 1000 by the second number.
    pub fn mg_per_ml(self) -> Exact {
        Exact::of(1000, i128::from(self.0))
    }
}

/// Reads a ratio such as `1:100 000`, `1:100,000`, `1/200000` or `1:100k`.
///
/// # Errors
/// A sentence, if it is no ratio, stands the other way round, or is no
/// strength that a cartridge has.
pub fn dilution(text: &str) -> Result<Dilution, Refusal> {
    let text = text.trim();
    let lower = text
        .to_lowercase()
        .replace(" in ", ":")
        .replace(" to ", ":");
    let parts: Vec<&str> = lower.split([':', '/', '∶']).map(str::trim).collect();
    let [first, second] = parts.as_slice() else {
        return refuse(format!(
            "'{text}' is no ratio. Write it as on the label, such as 1:100 000."
        ));
    };
    let (first, second) = (counted(first)?, counted(second)?);
    let one = Exact::whole(1);
    if first <= Exact::ZERO || second <= Exact::ZERO {
        return refuse(format!(
            "'{text}' has nothing on one side. Write it as on the label, such as 1:100 000."
        ));
    }
    if second == one && first > one {
        return refuse(format!(
            "'{text}' stands the other way round: it would be more drug than water. The 1 comes first: 1:{}.",
            first.text(0)
        ));
    }
    if first != one {
        return refuse(format!(
            "'{text}' does not begin with 1. A ratio tells how much holds one gram: 1:100 000."
        ));
    }
    let whole = u32::try_from(second.over())
        .ok()
        .filter(|_| second.under() == 1);
    match whole {
        Some(value) if (LEAST..=MOST).contains(&value) => Ok(Dilution(value)),
        Some(1000) => refuse(
            "1:1000 is the strength of an emergency ampoule, a hundred times that of 1:100 000. No cartridge holds it.",
        ),
        Some(value) if value < LEAST => refuse(format!(
            "1:{} is stronger than anything in a cartridge; they run from 1:20 000 to 1:200 000. Count the noughts.",
            Exact::from(value).text(0)
        )),
        _ => refuse(format!(
            "'{text}' is thinner than anything in a cartridge; they run from 1:20 000 to 1:200 000. Count the noughts."
        )),
    }
}

/// A whole number in a ratio, in which a comma can only part thousands.
fn counted(text: &str) -> Result<Exact, Refusal> {
    let (digits, scale) = match text.strip_suffix('k') {
        Some(rest) => (rest.trim(), 1000),
        None => (text, 1),
    };
    let three = |mark: char| {
        let mut groups = digits.split(mark);
        let first = groups.next().unwrap_or_default();
        digits.contains(mark)
            && (1..=3).contains(&first.len())
            && groups.all(|g| g.len() == 3 && g.bytes().all(|b| b.is_ascii_digit()))
    };
    let value = if three(',') || three('.') {
        number(&digits.replace([',', '.'], ""))?
    } else {
        number(digits)?
    };
    Ok(value * Exact::whole(scale))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ratios_are_understood() {
        for text in [
            "1:100 000",
            "1:100,000",
            "1:100.000",
            "1:100000",
            "1 : 100 000",
            "1/100000",
            "1 in 100 000",
            "1:100k",
            "1 to 100000",
            " 1:100'000 ",
        ] {
            assert_eq!(dilution(text), Ok(Dilution(100_000)), "{text}");
        }
        assert_eq!(Dilution(200_000).text(), "1:200\u{a0}000");
    }

    #[test]
    fn wrong_ratios_are_refused_with_the_reason() {
        for (text, words) in [
            ("100000:1", "other way round"),
            ("100 000:1", "1:100\u{a0}000"),
            ("100000", "no ratio"),
            ("1:1000", "emergency"),
            ("1:100", "stronger"),
            ("1:10 000 000", "thinner"),
            ("2:100000", "begin with 1"),
            ("1:1", "stronger"),
            ("1:0", "nothing on one side"),
            ("1:-5", "nothing on one side"),
            ("1:", "Nothing"),
            ("1:abc", "not a number"),
            ("1:2:3", "no ratio"),
            ("1:100,00", "stronger"),
        ] {
            let refusal = dilution(text).expect_err(text);
            assert!(refusal.0.contains(words), "{text}: {refusal}");
        }
    }
}

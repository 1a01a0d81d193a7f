//! Reading a date. A day and a month that could change places are refused:
//! `03/04/2026` is the third of April to some and the fourth of March to others.

use super::{Refusal, refuse};
use crate::numbers::civil::{Civil, MONTHS};

/// Reads a date such as `2026-03-14`, `14 March 2026`, `March 14, 2026` or `14.3.2026`.
///
/// # Errors
/// A sentence, if it is no date, the day does not exist, or day and month
/// could change places.
pub fn date(text: &str) -> Result<Civil, Refusal> {
    let text = text.trim();
    let parts: Vec<&str> = text
        .split(|c: char| !c.is_alphanumeric())
        .filter(|p| !p.is_empty())
        .collect();
    let [one, two, three] = parts.as_slice() else {
        return refuse(format!(
            "'{text}' is no date. Write it as 14 March 2026 or 2026-03-14."
        ));
    };
    let year_first = one.len() == 4;
    let (year, month, day) = match (month_named(one), month_named(two)) {
        (Some(month), _) => (count(three), Some(month), count(two)),
        (_, Some(month)) if year_first => (count(one), Some(month), count(three)),
        (_, Some(month)) => (count(three), Some(month), count(one)),
        _ if year_first => (count(one), count(two), count(three)),
        _ => {
            let (month, day) = numbered(text, count(one), count(two))?;
            (count(three), month, day)
        }
    };
    let (Some(year), Some(month), Some(day)) = (year, month, day) else {
        return refuse(format!(
            "'{text}' is no date. Write it as 14 March 2026 or 2026-03-14."
        ));
    };
    if year < 100 {
        return refuse(format!("Write the year of '{text}' with four digits."));
    }
    let there = i32::try_from(year)
        .ok()
        .and_then(|year| Civil::new(year, month, day));
    there.ok_or_else(|| Refusal(format!("There is no such day as '{text}'.")))
}

/// Month and day of a date in digits that does not begin with its year. With
/// points between them the day comes first, as where dates are written so.
fn numbered(
    text: &str,
    first: Option<u32>,
    second: Option<u32>,
) -> Result<(Option<u32>, Option<u32>), Refusal> {
    let dots = text.contains('.');
    match (first, second) {
        (Some(one), Some(two)) if one <= 12 && two <= 12 && one != two && !dots => refuse(format!(
            "'{text}' can be read with the day first or the month first. Write the month as a word, or year-month-day."
        )),
        (Some(one), Some(two)) if two > 12 && one <= 12 && !dots => Ok((first, second)),
        _ => Ok((second, first)),
    }
}

fn count(text: &str) -> Option<u32> {
    text.parse().ok()
}

fn month_named(text: &str) -> Option<u32> {
    let lower = text.to_lowercase();
    let at = MONTHS.iter().position(|name| {
        let name = name.to_lowercase();
        lower.len() >= 3 && name.starts_with(&lower)
    })?;
    u32::try_from(at + 1).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_understood() {
        for text in [
            "2026-03-14",
            "14 March 2026",
            "March 14, 2026",
            "14 mar 2026",
            "14.3.2026",
            "14/3/2026",
            "3/14/2026",
            "2026 March 14",
            "14. March 2026",
        ] {
            assert_eq!(date(text), Ok(Civil::new(2026, 3, 14).unwrap()), "{text}");
        }
        assert_eq!(date("3.4.2026"), Ok(Civil::new(2026, 4, 3).unwrap()));
        assert_eq!(date("4/4/2026"), Ok(Civil::new(2026, 4, 4).unwrap()));
    }

    #[test]
    fn the_rest_is_refused_with_the_reason() {
        for (text, words) in [
            ("3/4/2026", "day first or the month first"),
            ("30 February 2026", "no such day"),
            ("2026-13-01", "no such day"),
            ("14 March 26", "four digits"),
            ("next week", "no date"),
            ("", "no date"),
        ] {
            let refusal = date(text).expect_err(text);
            assert!(refusal.0.contains(words), "{text}: {refusal}");
        }
    }
}

//! Reading a number: decimal point or decimal comma, with or without marks
//! between the thousands.
//!
//! A point is always a decimal point unless a comma follows. A comma is a
//! decimal comma, except between groups of three digits. One comma before
//! exactly three digits could be either, and is refused: `1,700`. After a lone
//! nought it can only be a decimal comma: `0,018`.

use super::{Refusal, refuse};
use crate::numbers::exact::Exact;

/// The most digits before the decimal point.
const WHOLE: usize = 9;
/// The most digits after it.
const DECIMALS: usize = 8;

/// Reads a number.
///
/// # Errors
/// A sentence that says what is wrong, or how else to write it.
pub fn number(text: &str) -> Result<Exact, Refusal> {
    let text = text.trim();
    let (negative, body) = match text.strip_prefix(['-', '−', '–']) {
        Some(rest) => (true, rest.trim_start()),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    if body.is_empty() {
        return refuse("Nothing is written here yet. Write a number.");
    }
    if body.contains(['-', '−', '–']) {
        return refuse(format!("'{text}' looks like a range. Write one number."));
    }
    let plain = |c: char| c.is_ascii_digit() || ".,'’".contains(c) || c.is_whitespace();
    if !body.chars().all(plain) {
        return refuse(format!("'{text}' is not a number such as 12 or 0.5."));
    }
    let (whole, decimals) = parted(body)?;
    if whole.is_empty() {
        return refuse(format!(
            "'{text}' has nothing before the decimal point. Write 0{body}, so that the point is not overlooked."
        ));
    }
    let whole = digits_of(&whole, body)?;
    if whole.len() > WHOLE || decimals.len() > DECIMALS {
        return refuse(format!(
            "'{text}' has more digits than anything measured here. Write at most {DECIMALS} decimals."
        ));
    }
    let places = decimals.len();
    let Ok(value) = format!("{whole}{decimals}").parse::<i128>() else {
        return refuse(format!("'{text}' is not a number such as 12 or 0.5."));
    };
    let scale = (0..places).fold(1, |all, _| all * 10);
    Ok(Exact::of(if negative { -value } else { value }, scale))
}

/// What stands before and after the decimal mark.
fn parted(body: &str) -> Result<(String, String), Refusal> {
    let (commas, points) = (body.matches(',').count(), body.matches('.').count());
    let at = |i: usize| (body[..i].to_owned(), body[i + 1..].to_owned());
    let mark = match (commas, points) {
        (0, 1) => body.find('.'),
        (_, 1) if body.rfind(',') < body.find('.') => body.find('.'),
        (1, _) if body.rfind('.') < body.find(',') && points > 0 => body.find(','),
        (1, 0) => comma(body)?,
        // Several commas, or none and no point: none of them is the decimal mark.
        (_, 0) => None,
        _ => {
            return refuse(format!(
                "'{body}' has too many points and commas to be one number."
            ));
        }
    };
    let (whole, decimals) = mark.map_or((body.to_owned(), String::new()), at);
    if mark.is_some() && decimals.is_empty() {
        return refuse(format!(
            "'{body}' ends with its decimal mark. Write the decimals, or leave the mark away."
        ));
    }
    if !decimals.bytes().all(|b| b.is_ascii_digit()) {
        return refuse(format!(
            "'{body}' has something between its decimals. Write them without marks."
        ));
    }
    Ok((whole, decimals))
}

/// Where the one comma of `body` is the decimal mark; none where it parts thousands.
fn comma(body: &str) -> Result<Option<usize>, Refusal> {
    let Some(at) = body.find(',') else {
        return Ok(None);
    };
    let (before, after) = (&body[..at], &body[at + 1..]);
    let spaced = before.contains(|c: char| c.is_whitespace() || c == '\'' || c == '’');
    if after.len() != 3 || before == "0" || spaced {
        return Ok(Some(at));
    }
    if before.is_empty() || before.len() > 3 {
        return Ok(Some(at));
    }
    refuse(format!(
        "'{body}' can be read as {before}.{after} or as {before}{after}. Write {before}.{after} or {before} {after}."
    ))
}

/// The digits of a whole number, whose marks have to stand between groups of three.
fn digits_of(whole: &str, body: &str) -> Result<String, Refusal> {
    let mark = |c: char| !c.is_ascii_digit();
    if !whole.contains(mark) {
        return Ok(whole.to_owned());
    }
    let mut groups = whole.split(mark);
    let first = groups.next().unwrap_or_default();
    let even = (1..=3).contains(&first.len()) && groups.all(|g| g.len() == 3);
    let marks: Vec<char> = whole.chars().filter(|c| mark(*c)).collect();
    let same = marks.windows(2).all(|pair| pair[0] == pair[1]);
    if even && same && first != "0" {
        return Ok(whole.chars().filter(char::is_ascii_digit).collect());
    }
    refuse(format!(
        "The marks in '{body}' do not part it into groups of three. Write the number without them."
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_understood() {
        for (text, over, under) in [
            ("70", 70, 1),
            ("1.7", 17, 10),
            ("1,7", 17, 10),
            ("0,018", 18, 1000),
            ("0.018", 18, 1000),
            ("100 000", 100_000, 1),
            ("100\u{a0}000", 100_000, 1),
            ("1'000", 1000, 1),
            ("1,000,000", 1_000_000, 1),
            ("1,234.5", 12_345, 10),
            ("1.234,5", 12_345, 10),
            ("1 234,5", 12_345, 10),
            ("1 234,567", 1_234_567, 1000),
            ("1.700", 17, 10),
            ("-5", -5, 1),
            ("−40", -40, 1),
            ("+3", 3, 1),
            ("007", 7, 1),
        ] {
            assert_eq!(number(text), Ok(Exact::of(over, under)), "{text}");
        }
    }

    #[test]
    fn what_could_be_read_in_two_ways_is_refused() {
        for (text, words) in [
            ("1,700", "1.700 or as 1700"),
            ("", "Nothing"),
            (".5", "nothing before the decimal"),
            (",5", "nothing before the decimal"),
            ("5.", "ends with its decimal mark"),
            ("1,2,3", "groups of three"),
            ("1 00", "groups of three"),
            ("1,000 000", "between its decimals"),
            ("1.2.3", "too many"),
            ("70-80", "range"),
            ("1e3", "not a number"),
            ("seven", "not a number"),
            ("--5", "range"),
            ("1.234567891", "more digits"),
            ("12345678901", "more digits"),
            ("٧", "not a number"),
        ] {
            let refusal = number(text).expect_err(text);
            assert!(refusal.0.contains(words), "{text}: {refusal}");
        }
    }
}

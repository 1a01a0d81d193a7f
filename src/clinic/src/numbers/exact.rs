//! Exact numbers: a fraction of whole numbers. A dose at a cap is at the cap
//! and not a hair beside it, as it would be in binary decimals.

use catalogue::quantity::Milli;
use std::{
    cmp::Ordering,
    ops::{Add, Div, Mul, Sub},
};

/// A fraction in its lowest terms.
///
/// Entries are read with at most nine digits before the point and eight after
/// it, so that what is worked out from a few of them stays in range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Exact {
    over: i128,
    under: i128,
}

impl Exact {
    /// Nothing.
    pub const ZERO: Self = Self { over: 0, under: 1 };

    /// A whole number.
    pub const fn whole(value: i64) -> Self {
        Self {
            over: value as i128,
            under: 1,
        }
    }

    /// `over` divided by `under`; nothing where `under` is 0.
    pub const fn of(over: i128, under: i128) -> Self {
        if under == 0 {
            return Self::ZERO;
        }
        let common = common(over, under);
        let sign = if under < 0 { -1 } else { 1 };
        Self {
            over: sign * over / common,
            under: sign * under / common,
        }
    }

    /// The number above the fraction line; below zero where the fraction is.
    pub const fn over(self) -> i128 {
        self.over
    }

    /// The number below the fraction line, above 0.
    pub const fn under(self) -> i128 {
        self.under
    }

    /// The largest whole number that is not above it.
    pub const fn floor(self) -> i128 {
        self.over.div_euclid(self.under)
    }

    /// As a count: rounded down to a whole number, and 0 below nothing.
    pub fn count(self) -> u32 {
        u32::try_from(self.floor().max(0)).unwrap_or(u32::MAX)
    }

    /// Rounded down to a half.
    #[must_use]
    pub fn halves(self) -> Self {
        Self::of((self * Self::whole(2)).floor(), 2)
    }

    /// Without its sign.
    #[must_use]
    pub fn size(self) -> Self {
        Self {
            over: self.over.abs(),
            under: self.under,
        }
    }

    /// The nearest number with so many decimals; halves go away from zero.
    #[must_use]
    pub fn rounded(self, places: u32) -> Self {
        let scale = 10_i128.pow(places);
        let twice = 2 * self.over.abs() * scale;
        let whole = (twice + self.under).div_euclid(2 * self.under);
        Self::of(self.over.signum() * whole, scale)
    }

    /// Rounded to so many decimals, as a text: `13.61`, `100 000`.
    pub fn text(self, places: u32) -> String {
        let near = self.rounded(places);
        let scale = 10_i128.pow(places);
        let digits = near.over.abs() * (scale / near.under);
        let (whole, part) = (digits / scale, digits % scale);
        let sign = if near.over < 0 { "-" } else { "" };
        let part = format!("{part:0>width$}", width = places as usize);
        let part = part.trim_end_matches('0');
        let whole = grouped(whole.unsigned_abs());
        if part.is_empty() {
            format!("{sign}{whole}")
        } else {
            format!("{sign}{whole}.{part}")
        }
    }

    /// What stands after a formula: `= 36`, or `≈ 68.04` where it was rounded.
    pub fn shown(self, places: u32) -> String {
        let sign = if self.rounded(places) == self {
            '='
        } else {
            '≈'
        };
        format!("{sign} {}", self.text(places))
    }

    /// Cut off after two decimals, with dots where more would follow: `13.61…`.
    /// For what is rounded down afterwards: 10.999 is shown as no 11.
    pub fn cut(self) -> String {
        let hundred = Self::whole(100);
        let cut = Self::of((self * hundred).floor(), 100);
        let dots = if cut == self { "" } else { "…" };
        format!("{}{dots}", cut.text(2))
    }

    /// As a binary number, for drawing.
    #[expect(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        reason = "a drawing is seen, not reckoned with"
    )]
    pub fn for_drawing(self) -> f32 {
        (self.over as f64 / self.under as f64) as f32
    }
}

/// A whole number in groups of three from 10 000 on, parted by spaces that do not break.
fn grouped(value: u128) -> String {
    let digits = value.to_string();
    if digits.len() < 5 {
        return digits;
    }
    let mut text = String::new();
    for (i, digit) in digits.chars().enumerate() {
        if i > 0 && (digits.len() - i).is_multiple_of(3) {
            text.push('\u{a0}');
        }
        text.push(digit);
    }
    text
}

/// The greatest common divisor, at least 1.
const fn common(a: i128, b: i128) -> i128 {
    let (mut a, mut b) = (a.abs(), b.abs());
    while b != 0 {
        (a, b) = (b, a % b);
    }
    if a == 0 { 1 } else { a }
}

impl Add for Exact {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        let shared = common(self.under, other.under);
        let (mine, its) = (self.under / shared, other.under / shared);
        Self::of(self.over * its + other.over * mine, self.under * its)
    }
}

impl Sub for Exact {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        self + Self {
            over: -other.over,
            under: other.under,
        }
    }
}

impl Mul for Exact {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        let (a, b) = (
            common(self.over, other.under),
            common(other.over, self.under),
        );
        Self {
            over: (self.over / a) * (other.over / b),
            under: (self.under / b) * (other.under / a),
        }
    }
}

/// Dividing by nothing gives nothing; every divisor here is above 0, by the
/// checks of the catalogue or by the range of its field.
impl Div for Exact {
    type Output = Self;
    fn div(self, other: Self) -> Self {
        let upside_down = Self::of(other.under, other.over);
        self.mul(upside_down)
    }
}

impl PartialOrd for Exact {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Exact {
    fn cmp(&self, other: &Self) -> Ordering {
        let shared = common(self.under, other.under);
        (self.over * (other.under / shared)).cmp(&(other.over * (self.under / shared)))
    }
}

impl From<Milli> for Exact {
    fn from(value: Milli) -> Self {
        Self::of(i128::from(value.0), 1000)
    }
}

impl From<u32> for Exact {
    fn from(value: u32) -> Self {
        Self::whole(i64::from(value))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_read_as_a_person_writes_them() {
        for (over, under, places, text) in [
            (490, 36, 2, "13.61"),
            (36, 1, 2, "36"),
            (1, 200, 4, "0.005"),
            (100_000, 1, 0, "100\u{a0}000"),
            (-7, 2, 1, "-3.5"),
            (-1, 8, 2, "-0.13"),
            (1, 8, 2, "0.13"),
            (9999, 1000, 2, "10"),
            (-1, 1000, 2, "0"),
        ] {
            assert_eq!(Exact::of(over, under).text(places), text);
        }
    }

    #[test]
    fn what_is_rounded_down_is_not_shown_rounded_up() {
        assert_eq!(Exact::of(10_999, 1000).cut(), "10.99…");
        assert_eq!(Exact::of(10_999, 1000).count(), 10);
        assert_eq!(Exact::whole(11).cut(), "11");
        assert_eq!(Exact::of(-1, 2).count(), 0);
        assert_eq!(Exact::of(264, 100).halves(), Exact::of(5, 2));
    }
}

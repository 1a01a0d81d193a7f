//! Calendar days, without a clock and without time zones: a day is due as a
//! whole, wherever the student is.

use clinic::numbers::civil::Civil;
use core::fmt;

/// A day, counted from 1 January 1970.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day(pub u16);

impl Day {
    /// The day after.
    #[must_use]
    pub fn next(self) -> Self {
        Self(self.0.saturating_add(1))
    }
}

impl fmt::Display for Day {
    /// `2026-11-25`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        // Days of sixteen bits end in the year 2149, which the calendar holds.
        let date = Civil::from_days(i64::from(self.0)).ok_or(fmt::Error)?;
        f.write_str(&date.iso())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Dates and day numbers as `date -u -d DATE +%s` of GNU coreutils 9 gives them, over 86,400.
    #[test]
    fn days_have_their_dates() {
        for (day, date) in [
            (0, "1970-01-01"),
            (58, "1970-02-28"),
            (59, "1970-03-01"),
            (11_016, "2000-02-29"),
            (11_017, "2000-03-01"),
            (20_782, "2026-11-25"),
            (47_541, "2100-03-01"),
            (u16::MAX, "2149-06-06"),
        ] {
            assert_eq!(Day(day).to_string(), date);
        }
    }
}

//! Calendar days, without a clock and without time zones: a day is due as a
//! whole, wherever the student is.

use core::fmt;

/// A day, counted from 1 January 1970.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day(pub u16);

impl Day {
    /// Year, month and day of the month, in the calendar in use everywhere
    /// since 1582 (the method is that of Hinnant, value from memory).
    pub fn date(self) -> (u16, u8, u8) {
        // Counted from 1 March 0000, leap days come last and years are regular.
        let days = u32::from(self.0) + 719_468;
        let era = days / 146_097;
        let of_era = days % 146_097;
        let year = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
        let of_year = of_era - (365 * year + year / 4 - year / 100);
        let shifted = (5 * of_year + 2) / 153;
        let day = of_year - (153 * shifted + 2) / 5 + 1;
        let month = if shifted < 10 {
            shifted + 3
        } else {
            shifted - 9
        };
        let year = year + era * 400 + u32::from(month <= 2);
        // Days of sixteen bits end in the year 2149.
        (
            u16::try_from(year).unwrap_or(u16::MAX),
            u8::try_from(month).unwrap_or(1),
            u8::try_from(day).unwrap_or(1),
        )
    }

    /// The day after.
    #[must_use]
    pub fn next(self) -> Self {
        Self(self.0.saturating_add(1))
    }
}

impl fmt::Display for Day {
    /// `2026-11-25`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (year, month, day) = self.date();
        write!(f, "{year:04}-{month:02}-{day:02}")
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

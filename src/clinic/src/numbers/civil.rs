//! Dates of the calendar, as far as a recall needs them. A whole library of
//! time would weigh more than the rest of this module; this is the civil
//! calendar alone, after the published algorithms of Howard Hinnant
//! ("chrono-compatible low-level date algorithms": value from memory).

/// A date of the Gregorian calendar that there is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Civil {
    year: i32,
    month: u32,
    day: u32,
}

/// The names of the months.
pub(super) const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

const WEEKDAYS: [&str; 7] = [
    "Monday",
    "Tuesday",
    "Wednesday",
    "Thursday",
    "Friday",
    "Saturday",
    "Sunday",
];

impl Civil {
    /// A date; none where the calendar has no such day, or it lies outside 1900 to 2199.
    pub fn new(year: i32, month: u32, day: u32) -> Option<Self> {
        let there = (1900..=2199).contains(&year)
            && (1..=12).contains(&month)
            && (1..=month_length(year, month)).contains(&day);
        there.then_some(Self { year, month, day })
    }

    /// Days since the first of January 1970.
    pub fn days(self) -> i64 {
        let year = i64::from(self.year) - i64::from(self.month <= 2);
        let era = year.div_euclid(400);
        let of_era = year.rem_euclid(400);
        let month = i64::from((self.month + 9) % 12);
        let of_year = (153 * month + 2) / 5 + i64::from(self.day) - 1;
        era * 146_097 + of_era * 365 + of_era / 4 - of_era / 100 + of_year - 719_468
    }

    /// The date so many days after the first of January 1970; none outside 1900 to 2199.
    pub fn from_days(days: i64) -> Option<Self> {
        let days = days + 719_468;
        let era = days.div_euclid(146_097);
        let of_era = days.rem_euclid(146_097);
        let year = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
        let of_year = of_era - (365 * year + year / 4 - year / 100);
        let month = (5 * of_year + 2) / 153;
        let day = of_year - (153 * month + 2) / 5 + 1;
        let month = if month < 10 { month + 3 } else { month - 9 };
        let year = year + era * 400 + i64::from(month <= 2);
        Self::new(
            i32::try_from(year).ok()?,
            u32::try_from(month).ok()?,
            u32::try_from(day).ok()?,
        )
    }

    /// So many days later.
    pub fn after_days(self, days: u32) -> Option<Self> {
        Self::from_days(self.days() + i64::from(days))
    }

    /// So many calendar months later: the same day of the month, or its last
    /// day where that month is shorter.
    pub fn after_months(self, months: u32) -> Option<Self> {
        let all = self.month - 1 + months;
        let year = self.year + i32::try_from(all / 12).ok()?;
        let month = all % 12 + 1;
        Self::new(year, month, self.day.min(month_length(year, month)))
    }

    /// The day of the week: `Wednesday`.
    pub fn weekday(self) -> &'static str {
        let index = (self.days() + 3).rem_euclid(7);
        usize::try_from(index)
            .ok()
            .and_then(|i| WEEKDAYS.get(i))
            .unwrap_or(&WEEKDAYS[0])
    }

    /// `14 March 2026`.
    pub fn text(self) -> String {
        let month = MONTHS.get(self.month as usize - 1).unwrap_or(&"");
        format!("{} {month} {}", self.day, self.year)
    }

    /// `2026-03-14`.
    pub fn iso(self) -> String {
        format!("{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

fn month_length(year: i32, month: u32) -> u32 {
    match month {
        2 if year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_day_of_three_centuries_comes_back_and_follows_the_last() {
        let first = Civil::new(1900, 1, 1).unwrap();
        let last = Civil::new(2199, 12, 31).unwrap();
        let mut before = None;
        for days in first.days()..=last.days() {
            let date = Civil::from_days(days).unwrap();
            assert_eq!(date.days(), days);
            assert!(before < Some(date));
            before = Some(date);
        }
        assert_eq!(Civil::from_days(first.days() - 1), None);
        assert_eq!(Civil::from_days(last.days() + 1), None);
    }

    #[test]
    fn known_days() {
        let day = |y, m, d| Civil::new(y, m, d).unwrap();
        assert_eq!(day(1970, 1, 1).days(), 0);
        assert_eq!(day(1970, 1, 1).weekday(), "Thursday");
        assert_eq!(day(2000, 3, 1).days(), 11_017);
        assert_eq!(day(2026, 11, 25).weekday(), "Wednesday");
        assert_eq!(day(2026, 1, 31).after_months(1), Civil::new(2026, 2, 28));
        assert_eq!(day(2028, 1, 31).after_months(1), Civil::new(2028, 2, 29));
        assert_eq!(day(2026, 11, 30).after_months(3), Civil::new(2027, 2, 28));
        assert_eq!(
            day(2026, 12, 25).after_days(56).map(Civil::iso).as_deref(),
            Some("2027-02-19")
        );
        assert_eq!(Civil::new(2026, 2, 29), None);
        assert_eq!(Civil::new(2026, 4, 31), None);
    }
}

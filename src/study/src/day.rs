//! Days of study. A day begins at 04:00 by the student's clock, so that an
//! evening that runs past midnight is one day.

use serde::{Deserialize, Serialize};

/// The seconds after midnight at which a day of study begins: 04:00.
pub const BOUNDARY: i64 = 4 * 3600;

/// A day of study: the number of days since 1 January 1970 on the student's calendar.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct Day(pub i32);

impl Day {
    /// Whole days from `earlier` to this day; never negative. A clock that was
    /// moved back makes no time pass.
    pub fn since(self, earlier: Self) -> u32 {
        u32::try_from(i64::from(self.0) - i64::from(earlier.0)).unwrap_or(0)
    }

    /// The day this many days later.
    #[must_use]
    pub fn plus(self, days: u32) -> Self {
        Self(self.0.saturating_add_unsigned(days))
    }

    /// The day this many days earlier.
    #[must_use]
    pub fn minus(self, days: u32) -> Self {
        Self(self.0.saturating_sub_unsigned(days))
    }
}

/// A moment as a device tells it: time in UTC, and how far the local clock is ahead.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Moment {
    /// Seconds since 1 January 1970, UTC.
    pub utc: i64,
    /// Minutes by which the local clock is ahead of UTC; negative to the west.
    pub offset: i16,
}

impl Moment {
    /// The day of study that this moment belongs to.
    pub fn day(self) -> Day {
        let local = self.utc.saturating_add(i64::from(self.offset) * 60);
        let number = local.saturating_sub(BOUNDARY).div_euclid(86_400);
        let far = if number < 0 { i32::MIN } else { i32::MAX };
        Day(i32::try_from(number).unwrap_or(far))
    }

    /// What to tell the student when this moment follows `last` in an unusual
    /// way: the clock went back, leapt ahead, or the time zone changed.
    pub fn unusual_after(self, last: Self) -> Option<String> {
        // A minute of drift is what any clock is set right by.
        if self.utc < last.utc - 60 {
            return Some(
                "The clock of this device was moved back. Nothing is lost: no time counts as \
                 passed until the clock catches up, and your answers stay in the order you gave them."
                    .into(),
            );
        }
        if self.day().since(last.day()) > 366 {
            return Some(
                "More than a year has passed by the clock of this device. If that is wrong, set the \
                 clock right: answers given now would be dated ahead. Nothing is lost either way."
                    .into(),
            );
        }
        (self.offset != last.offset).then(|| {
            "The time zone of this device has changed. Days go by the clock here, from 04:00; a \
             review may fall one day earlier or later than was shown. Nothing is lost."
                .into()
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOON: i64 = 20_000 * 86_400 + 12 * 3600;

    fn at(utc: i64, offset: i16) -> Moment {
        Moment { utc, offset }
    }

    #[test]
    fn a_day_begins_at_four_by_the_local_clock() {
        let four = 20_000 * 86_400 + BOUNDARY;
        let rows = [
            (at(four, 0), 20_000),
            (at(four - 1, 0), 19_999),
            (at(four - 3600, 60), 20_000),
            (at(four + 5 * 3600, -300), 20_000),
            (at(four + 5 * 3600 - 1, -300), 19_999),
            (at(-1, 0), -1),
        ];
        for (moment, wanted) in rows {
            assert_eq!(moment.day(), Day(wanted), "{moment:?}");
        }
    }

    #[test]
    fn time_never_runs_backwards() {
        assert_eq!(Day(5).since(Day(9)), 0);
        assert_eq!(Day(i32::MAX).since(Day(i32::MIN)), u32::MAX);
        assert_eq!(Day(i32::MAX).plus(3), Day(i32::MAX));
    }

    #[test]
    fn an_unusual_clock_is_told_in_words() {
        let last = at(NOON, 60);
        let words = |now: Moment| now.unusual_after(last).unwrap_or_default();
        assert_eq!(words(at(NOON + 3600, 60)), "");
        assert!(words(at(NOON - 86_400, 60)).contains("moved back"));
        assert!(words(at(NOON + 400 * 86_400, 60)).contains("More than a year"));
        assert!(words(at(NOON + 3600, -300)).contains("time zone"));
    }
}

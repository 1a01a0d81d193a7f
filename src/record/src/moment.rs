//! A moment: what the student's clock and calendar said.

/// A time with the offset that was in force where the student was, so that
/// "on Tuesday" stays Tuesday after a journey or a change of clocks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Moment {
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub utc_ms: i64,
    /// Minutes east of UTC (the browser's `getTimezoneOffset` is the negative).
    pub offset_min: i16,
}

impl Moment {
    /// The local calendar day, counted from 1970-01-01 (day 0).
    ///
    /// ```
    /// # use record::Moment;
    /// // 23:30 UTC on the first day is already the next one in Berlin.
    /// let late = 23 * 3_600_000 + 1_800_000;
    /// assert_eq!(Moment { utc_ms: late, offset_min: 0 }.day(), 0);
    /// assert_eq!(Moment { utc_ms: late, offset_min: 60 }.day(), 1);
    /// ```
    pub fn day(self) -> i64 {
        const DAY_MS: i64 = 86_400_000;
        let local_ms = self
            .utc_ms
            .saturating_add(i64::from(self.offset_min) * 60_000);
        local_ms.div_euclid(DAY_MS)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_before_1970_and_extreme_clocks_count_too() {
        let day = |utc_ms, offset_min| Moment { utc_ms, offset_min }.day();
        assert_eq!(day(0, -1), -1);
        assert_eq!(day(-1, 0), -1);
        assert_eq!(day(86_400_000, 0), 1);
        assert!(day(i64::MAX, i16::MAX) > 0);
        assert!(day(i64::MIN, i16::MIN) < 0);
    }
}

//! What a student has set: the examination day, the minutes a day, and the per
//! cent at which the programme passes. Kept as settings of the record.

use super::days;
use record::{Event, folds};
use std::collections::BTreeMap;
use study::{day::Day, memory::Examination};

/// The setting of the examination day: a date, or nothing.
pub const DAY: &str = "examination-day";
/// The setting of the minutes a day.
pub const MINUTES: &str = "daily-minutes";
/// The setting of the programme's pass mark, in per cent.
pub const PASS: &str = "pass-per-cent";

/// What is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Plan {
    /// The examination day, in the past or not.
    pub day: Option<Day>,
    /// The minutes a day, 5 to 180.
    pub minutes: u32,
    /// The per cent that passes, 1 to 100.
    pub pass: u8,
}

impl Default for Plan {
    fn default() -> Self {
        Self {
            day: None,
            minutes: 15,
            pass: 75,
        }
    }
}

impl Plan {
    /// What the record says is set. What cannot be read is as if not set.
    pub fn of(events: &[Event]) -> Self {
        Self::read(&folds::settings(events))
    }

    fn read(settings: &BTreeMap<String, String>) -> Self {
        let text = |key: &str| settings.get(key).map_or("", String::as_str);
        let usual = Self::default();
        Self {
            day: days::parse(text(DAY)),
            minutes: minutes(text(MINUTES)).unwrap_or(usual.minutes),
            pass: pass(text(PASS)).unwrap_or(usual.pass),
        }
    }

    /// The examination.
    pub fn examination(self) -> Option<Examination> {
        self.day.map(Examination)
    }
}

/// Reads minutes a day; none outside 5 to 180.
pub fn minutes(text: &str) -> Option<u32> {
    let minutes = text.trim().parse().ok()?;
    (5..=180).contains(&minutes).then_some(minutes)
}

/// Reads a pass mark; none outside 1 to 100.
pub fn pass(text: &str) -> Option<u8> {
    let pass = text.trim().parse().ok()?;
    (1..=100).contains(&pass).then_some(pass)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_plan_is_read_from_settings_and_borne_where_damaged() {
        let set = |pairs: &[(&str, &str)]| {
            let pairs = pairs.iter().map(|&(k, v)| (k.to_owned(), v.to_owned()));
            Plan::read(&pairs.collect())
        };
        assert_eq!(set(&[]), Plan::default());
        let wrong = [(DAY, "soon"), (MINUTES, "0"), (PASS, "101")];
        assert_eq!(set(&wrong), Plan::default());
        let plan = set(&[(DAY, "2027-03-01"), (MINUTES, "20"), (PASS, "70")]);
        assert_eq!((plan.minutes, plan.pass), (20, 70));
        assert_eq!(plan.day.map(days::iso).as_deref(), Some("2027-03-01"));
    }
}

//! Days of study in words.

use clinic::numbers::civil::Civil;
use record::Moment;
use study::day::Day;

/// The day of study of a moment of the record.
pub fn day(at: Moment) -> Day {
    moment(at).day()
}

/// A moment of the record as study tells it.
pub fn moment(at: Moment) -> study::day::Moment {
    study::day::Moment {
        utc: at.utc_ms.div_euclid(1000),
        offset: at.offset_min,
    }
}

/// A day in words: `25 November 2026`.
pub fn words(day: Day) -> String {
    civil(day).map_or_else(|| format!("day {}", day.0), Civil::text)
}

/// A day in the form of a date field: `2026-11-25`.
pub fn iso(day: Day) -> String {
    civil(day).map_or_else(String::new, Civil::iso)
}

/// The day of the week, short: `Wed`.
pub fn weekday(day: Day) -> &'static str {
    civil(day).map_or("", |civil| &civil.weekday()[..3])
}

/// Reads what [`iso`] writes.
pub fn parse(text: &str) -> Option<Day> {
    let mut parts = text.splitn(3, '-');
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    let civil = Civil::new(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?)?;
    i32::try_from(civil.days()).ok().map(Day)
}

fn civil(day: Day) -> Option<Civil> {
    Civil::from_days(i64::from(day.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_day_comes_back_from_its_text() {
        for number in [0, 59, 20_417, 47_481] {
            assert_eq!(parse(&iso(Day(number))), Some(Day(number)));
        }
        for wrong in [
            "",
            "2026",
            "2026-13-01",
            "2026-02-30",
            "x-y-z",
            "2026-1-1-1",
        ] {
            assert_eq!(parse(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn a_day_is_said_as_it_is_said() {
        let day = parse("2026-11-25").unwrap();
        assert_eq!(words(day), "25 November 2026");
        assert_eq!(weekday(day), "Wed");
    }

    #[test]
    fn past_midnight_is_still_the_evening() {
        let at = |hour: i64| Moment {
            utc_ms: (20_000 * 24 + hour) * 3_600_000,
            offset_min: 0,
        };
        assert_eq!(day(at(3)), Day(19_999));
        assert_eq!(day(at(4)), Day(20_000));
    }
}

//! The date on which a patient comes back.

use super::{
    civil::Civil,
    entry::{Refusal, refuse},
    unit::Unit,
    working::Working,
};
use catalogue::{ids::SourceId, quantity::Span};

/// The date so much later: days, weeks, calendar months or years.
///
/// # Errors
/// A sentence, if the unit is no stretch of the calendar or the date lies too far off.
pub fn after(date: Civil, count: u32, unit: Unit) -> Result<Civil, Refusal> {
    let later = match unit {
        Unit::Day => date.after_days(count),
        Unit::Week => count.checked_mul(7).and_then(|days| date.after_days(days)),
        Unit::Month => date.after_months(count.min(2400)),
        Unit::Year => date.after_months(count.saturating_mul(12).min(2400)),
        _ => return refuse("Write the interval in days, weeks, months or years."),
    };
    later.ok_or_else(|| Refusal("That date lies too far off to be meant.".into()))
}

/// The same step by step.
///
/// # Errors
/// As [`after`].
pub fn working(date: Civil, count: u32, unit: Unit) -> Result<Working, Refusal> {
    let mut working = Working::default();
    let later = after(date, count, unit)?;
    match unit {
        Unit::Week => working.reckon(
            "Weeks to days",
            "weeks × 7",
            format!("{count} weeks × 7 = {} days", count * 7),
        ),
        Unit::Month | Unit::Year => working.line(
            "Calendar months",
            "same day of the month, or its last day",
            "months are counted by the calendar, not as 30 days".into(),
            &[SourceId::from("common-practice")],
        ),
        _ => {}
    }
    working.reckon(
        "Date",
        "date + interval",
        format!(
            "{} + {count} {} = {} {}",
            date.text(),
            unit.sign(),
            later.weekday(),
            later.text()
        ),
    );
    if matches!(later.weekday(), "Saturday" | "Sunday") {
        working.heed("That is a weekend: the nearest day on which the practice is open is agreed with the patient.");
    }
    working.comes_to(later.text(), None);
    Ok(working)
}

/// The first and last date of a span of days from a visit.
///
/// # Errors
/// A sentence, if a date lies too far off.
pub fn window(date: Civil, days: Span) -> Result<(Civil, Civil), Refusal> {
    Ok((
        after(date, days.from, Unit::Day)?,
        after(date, days.to, Unit::Day)?,
    ))
}

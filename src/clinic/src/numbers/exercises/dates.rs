//! Exercises about the date of a return visit.

use super::{Answer, Draft, Entered, Slip, draw::Draw};
use crate::numbers::{civil::Civil, recall_date, unit::Unit};

/// The date of a return visit.
pub(super) fn recall(draw: &mut Draw) -> Option<Draft> {
    let start = Civil::new(2026, 1, 1)?.after_days(draw.span(0, 3 * 365, 3))?;
    let (count, unit) = *draw.pick(&[
        (8, Unit::Week),
        (12, Unit::Week),
        (7, Unit::Day),
        (10, Unit::Day),
        (1, Unit::Month),
        (3, Unit::Month),
        (6, Unit::Month),
        (1, Unit::Year),
    ])?;
    back(start, count, unit)
}

/// The date of a return visit so much later.
pub(super) fn back(start: Civil, count: u32, unit: Unit) -> Option<Draft> {
    let right = recall_date::after(start, count, unit).ok()?;
    let slip = |date: Option<Civil>, because: &str| {
        Some(Slip {
            entered: Entered::Date(date?),
            because: because.into(),
        })
    };
    let mut slips: Vec<Option<Slip>> = vec![
        slip(
            right.after_days(1),
            "It is a day off: the day of the visit itself is not counted.",
        ),
        slip(
            Civil::from_days(right.days() - 1),
            "It is a day off: the day of the visit itself is not counted.",
        ),
    ];
    match unit {
        Unit::Month => slips.push(slip(
            start.after_days(count * 30),
            "Months were counted as 30 days; by the calendar it is the same day of the month.",
        )),
        Unit::Week if count.is_multiple_of(4) => slips.push(slip(
            start.after_months(count / 4),
            "Four weeks were taken for a month; a month is two or three days longer.",
        )),
        _ => {}
    }
    let words = if count == 1 {
        unit.sign().trim_end_matches('s')
    } else {
        unit.sign()
    };
    Some(Draft {
        stem: format!(
            "The visit is on {} {}. The patient is to come back after {count} {words}. On which date is that?",
            start.weekday(),
            start.text()
        ),
        answer: Answer::Date(right),
        working: recall_date::working(start, count, unit).ok()?,
        slips: slips.into_iter().flatten().collect(),
        difficulty: if unit == Unit::Week { 2 } else { 1 },
        seconds: 45,
    })
}

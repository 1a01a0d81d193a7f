//! The student's clock and calendar.

use js_sys::Date;
use record::Moment;
use wasm_bindgen::JsValue;

/// This moment.
pub fn now() -> Moment {
    let date = Date::new_0();
    Moment {
        utc_ms: whole(date.get_time()),
        offset_min: -i16::try_from(whole(date.get_timezone_offset())).unwrap_or(0),
    }
}

/// The day of a moment where the student was then: `25 November 2025`.
pub fn day(moment: Moment) -> String {
    let date = local(moment);
    let month = usize::try_from(date.get_utc_month()).unwrap_or(0);
    let month = MONTHS.get(month).copied().unwrap_or_default();
    format!(
        "{} {month} {}",
        date.get_utc_date(),
        date.get_utc_full_year()
    )
}

/// The day in a form that sorts, for the name of a file: `2025-11-25`.
pub fn iso_day(moment: Moment) -> String {
    let date = local(moment);
    format!(
        "{}-{:02}-{:02}",
        date.get_utc_full_year(),
        date.get_utc_month() + 1,
        date.get_utc_date()
    )
}

const MONTHS: [&str; 12] = [
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

/// A date whose UTC fields are the local ones of then: shifted by the offset,
/// so that a later journey does not move the day.
fn local(moment: Moment) -> Date {
    let local = moment.utc_ms + i64::from(moment.offset_min) * 60_000;
    Date::new(&JsValue::from_f64(float(local)))
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "JavaScript's times are whole numbers below 2^53"
)]
fn whole(number: f64) -> i64 {
    number as i64
}

#[expect(
    clippy::cast_precision_loss,
    reason = "JavaScript's times are whole numbers below 2^53"
)]
fn float(number: i64) -> f64 {
    number as f64
}

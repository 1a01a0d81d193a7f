//! The student's clock and calendar.

use js_sys::{Date, Object, Reflect};
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
    // Shifted by the offset and shown as UTC, so that a later journey does not
    // move the day.
    let local = moment.utc_ms + i64::from(moment.offset_min) * 60_000;
    let date = Date::new(&JsValue::from_f64(float(local)));
    let options = Object::new();
    for (key, value) in [
        ("timeZone", "UTC"),
        ("day", "numeric"),
        ("month", "long"),
        ("year", "numeric"),
    ] {
        // Setting a field of a fresh object cannot fail.
        let _ = Reflect::set(&options, &key.into(), &value.into());
    }
    String::from(date.to_locale_date_string("en-GB", &options))
}

/// The day in a form that sorts, for the name of a file: `2025-11-25`.
pub fn iso_day(moment: Moment) -> String {
    let local = moment.utc_ms + i64::from(moment.offset_min) * 60_000;
    let date = Date::new(&JsValue::from_f64(float(local)));
    String::from(date.to_iso_string())
        .split('T')
        .next()
        .unwrap_or_default()
        .into()
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

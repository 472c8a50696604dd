//! The clock and the calendar of the browser.

use js_sys::Date;
use wasm_bindgen::JsValue;

/// Day, month from 1 and year, here and now.
pub fn today() -> (u32, usize, u32) {
    day_of(&Date::new_0())
}

/// The time of the day, to the second.
pub fn time() -> String {
    Date::new_0().to_locale_time_string("en-GB").into()
}

/// Milliseconds since the year 1970, in plain digits.
pub fn now() -> String {
    Date::now().to_string()
}

/// The day on which so many milliseconds had passed since the year 1970.
pub fn day_at(ms: u64) -> (u32, usize, u32) {
    day_of(&date_at(ms))
}

/// The time of that day, to the minute.
pub fn time_at(ms: u64) -> String {
    String::from(date_at(ms).to_locale_time_string("en-GB")).chars().take(5).collect()
}

fn date_at(ms: u64) -> Date {
    #[expect(clippy::cast_precision_loss, reason = "a time of our days is far below 2^53 ms")]
    let ms = ms as f64;
    Date::new(&JsValue::from_f64(ms))
}

fn day_of(date: &Date) -> (u32, usize, u32) {
    (date.get_date(), date.get_month() as usize + 1, date.get_full_year())
}

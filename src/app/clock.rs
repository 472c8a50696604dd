//! The clock and the calendar of the browser.

use js_sys::{Date, JSON};
use leptos::prelude::window;
use wasm_bindgen::JsValue;

use crate::words::{Language, language};

/// Day, month from 1 and year, here and now.
pub fn today() -> (u32, usize, u32) {
    day_of(&Date::new_0())
}

/// The time of the day, to the second, as the browser writes it.
pub fn time() -> String {
    Date::new_0().to_locale_time_string(&locale()).into()
}

/// Milliseconds since the year 1970, in plain digits.
pub fn now() -> String {
    Date::now().to_string()
}

/// Today, as the browser writes a day.
pub fn today_said() -> String {
    said(&Date::new_0(), DAY)
}

/// The day on which so many milliseconds had passed since the year 1970, as the browser writes it.
pub fn day_at(ms: u64) -> String {
    said(&date_at(ms), DAY)
}

/// The time of that day, to the minute.
pub fn time_at(ms: u64) -> String {
    said(&date_at(ms), r#"{"hour":"numeric","minute":"2-digit"}"#)
}

/// A day with the name of its month.
const DAY: &str = r#"{"day":"numeric","month":"long","year":"numeric"}"#;

fn said(date: &Date, options: &str) -> String {
    let options = JSON::parse(options).unwrap_or(JsValue::UNDEFINED);
    date.to_locale_string(&locale(), &options).into()
}

/// Where days and times are written as in the language of the page: the user's own part of the world, if its language
/// is that of the page.
fn locale() -> String {
    let own = window().navigator().language().unwrap_or_default();
    if Language::of_code(&own) == Some(language()) { own } else { language().code().to_owned() }
}

fn date_at(ms: u64) -> Date {
    #[expect(clippy::cast_precision_loss, reason = "a time of our days is far below 2^53 ms")]
    let ms = ms as f64;
    Date::new(&JsValue::from_f64(ms))
}

fn day_of(date: &Date) -> (u32, usize, u32) {
    (date.get_date(), date.get_month() as usize + 1, date.get_full_year())
}

//! Texts and numbers, drawn: those that can be read, and those that nobody would type.

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;

/// What breaks quotes, tables, markup, addresses, JSON or the direction of writing, where it is not taken care of.
const HOSTILE: [&str; 33] = [
    "\"",
    "\\",
    "\\\"",
    "\\u0022",
    "'",
    "''=",
    "=1+1",
    "+1",
    "-1",
    "@SUM(A1)",
    " '=1 ",
    ",",
    ";;",
    "a\tb",
    "one\r\ntwo",
    "\u{0}\u{7f}\u{1b}",
    "\u{feff}",
    "\u{202e}drawkcab",
    "\u{2028}\u{2029}",
    "\u{200d}\u{200b}",
    "𝄞 🎼 👩‍🔧",
    "e\u{301}",
    "İıſK",
    "</script><img src=x onerror=alert(1)>",
    "&lt;b&gt;&#0;",
    "{}[]:,null",
    "#1.AAAA",
    "https://example.org/#1.abc",
    "[odd + name] [0.5]",
    "]]",
    "NaN",
    "1e308",
    "-0",
];

/// A text of a cell, as odd as they come.
pub fn text() -> BoxedStrategy<String> {
    prop_oneof![
        3 => Just(String::new()),
        4 => "[A-Za-z]{1,8}( [a-z0-9.,]{1,8}){0,3}",
        3 => select(&HOSTILE[..]).prop_map(str::to_owned),
        2 => (select(&HOSTILE[..]), ".{0,12}", select(&HOSTILE[..]))
            .prop_map(|(before, between, behind)| [before, &between, behind].concat()),
        1 => vec(any::<char>(), 0..=60).prop_map(String::from_iter),
        // The longest that a cell may hold, of letters that take one, two and four bytes.
        1 => select(vec!["x", "é", "𝄞", "\""]).prop_map(|letter| letter.repeat(200)),
    ]
    .boxed()
}

/// A decimal number of a range, with up to four decimals, as it would be typed.
pub fn number((least, most): (f64, f64)) -> BoxedStrategy<f64> {
    (any::<u32>(), 0..=4)
        .prop_map(move |(share, places)| {
            let power = 10_f64.powi(places);
            let wide = least + (most - least) * f64::from(share) / f64::from(u32::MAX);
            ((wide * power).round() / power).clamp(least, most)
        })
        .boxed()
}

pub fn note() -> BoxedStrategy<String> {
    let named = "[A-G](#{0,2}|b{1,2})[0-8]".prop_map(|note| note);
    let in_hz = number((20.0, 4_000.0)).prop_map(|hz| format!("{hz} Hz"));
    prop_oneof![8 => named, 2 => in_hz].boxed()
}

pub fn length() -> BoxedStrategy<String> {
    prop_oneof![
        6 => number((40.0, 1_900.0)).prop_map(|mm| mm.to_string()),
        2 => number((4.0, 190.0)).prop_map(|cm| format!("{cm} cm")),
        1 => (2..70_u32, select(vec!["1/2", "1/8", "15/16"])).prop_map(|(whole, part)| format!("{whole} {part} in")),
        1 => number((40.0, 1_900.0)).prop_map(|mm| mm.to_string().replace('.', ",")),
    ].boxed()
}

pub fn size() -> BoxedStrategy<String> {
    prop_oneof![
        5 => number((0.1, 2.5)).prop_map(|mm| mm.to_string()),
        1 => (8..80_u32).prop_map(|thou| format!("{thou} thou")),
        1 => (8..80_u32).prop_map(|thou| format!(".0{thou:02}")),
    ]
    .boxed()
}

pub fn material() -> BoxedStrategy<String> {
    let names = ["nylon", "Gut", "steel", "bronze", "silk", "fluorocarbon", "brass", "own 1"];
    select(names.map(str::to_owned).to_vec()).boxed()
}

/// One of what can be read, or now and then anything.
pub fn or_odd(good: impl Strategy<Value = String> + 'static, odd: u32) -> BoxedStrategy<String> {
    prop_oneof![(20 - odd) => good, odd => text()].boxed()
}

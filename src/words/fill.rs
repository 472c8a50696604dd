//! Fills a message: what stands in place of its signs. `scripts/catalogue` writes them, and says what they are.

use std::fmt::Display;

use super::{LANGUAGE, Words};

/// The text of a message in the language of now, filled.
pub(super) fn fill(words: Words, given: &[&dyn Display]) -> String {
    let given: Vec<String> = given.iter().map(|one| one.to_string()).collect();
    let mut out = String::new();
    put(words.said(), &given, &mut out);
    out
}

fn put(mut text: &str, given: &[String], out: &mut String) {
    while let Some(at) = text.find(['\u{1}', '\u{2}']) {
        out.push_str(&text[..at]);
        let is_choice = text.as_bytes()[at] == 2;
        let letter = text.as_bytes().get(at + 1).copied().unwrap_or_default();
        let one = given.get(usize::from(letter.wrapping_sub(b'a'))).map_or("", String::as_str);
        text = text.get(at + 2..).unwrap_or_default();
        if is_choice {
            text = choose(text, one, given, out);
        } else {
            out.push_str(one);
        }
    }
    out.push_str(text);
}

/// Puts the variant that fits; gives what follows the choice.
fn choose<'a>(mut text: &'a str, by: &str, given: &[String], out: &mut String) -> &'a str {
    let mut is_done = false;
    while !text.starts_with('\u{5}') {
        let Some((key, rest)) = text.split_once('\u{3}') else { return "" };
        let Some(end) = end_of(rest) else { return "" };
        let fits = key == "*" || key == by || (key == "one" && LANGUAGE.get().is_one(by));
        if fits && !is_done {
            put(&rest[..end], given, out);
            is_done = true;
        }
        text = &rest[end + 1..];
    }
    &text[1..]
}

/// Where a variant ends: choices may stand within choices.
fn end_of(text: &str) -> Option<usize> {
    let mut deep = 0_usize;
    for (at, byte) in text.bytes().enumerate() {
        match byte {
            2 => deep += 1,
            5 => deep = deep.checked_sub(1)?,
            4 if deep == 0 => return Some(at),
            _ => {}
        }
    }
    None
}
